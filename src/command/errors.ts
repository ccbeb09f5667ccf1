// The two ways in which a run ends early. Their messages are shown as they stand, without a stack.

/** The command line is not one that the command takes. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
  /** The subcommand whose help would tell, if it got so far. */
  readonly command: string | undefined;

  constructor(message: string, command?: string) {
    super(message);
    this.command = command;
  }
}

/** What was named on the command line cannot be read, used or written. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
}
