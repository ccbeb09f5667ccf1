// What a subcommand is: how it is called, what its help says, what it does.
import type { ExitCode, Io } from './io.ts';

/** A word on the command line that stands for itself, such as FOLDER. */
export interface Operand {
  readonly name: string;
  readonly help: string;
  /** One or more of them; only the last may be. */
  readonly many?: true;
}

export interface Option {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
  /** What follows it, such as FILE. */
  readonly value?: string;
  readonly help: string;
  readonly required?: boolean;
}

/** What was given, already held against the operands and options: all required ones are there. */
export interface Given {
  readonly operands: readonly string[];
  readonly text: ReadonlyMap<string, string>;
  readonly on: ReadonlySet<string>;
}

export interface Command {
  readonly name: string;
  readonly summary: string;
  /** Paragraphs below the summary. */
  readonly more: readonly string[];
  readonly operands: readonly Operand[];
  readonly options: Readonly<Record<string, Option>>;
  readonly run: (given: Given, io: Io) => Promise<ExitCode>;
}
