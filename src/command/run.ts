// One run of the command: words in, exit code out. Nothing is thrown.
import { VERSION } from '../version.ts';
import { COMMANDS } from './commands.ts';
import { Refusal, UsageError } from './errors.ts';
import { readGiven } from './given.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { painter } from './paint.ts';
import { helpFor, helpForAll, synopsis } from './print/help.ts';

/** `words` is the command line after the name of the command. */
export async function run(words: readonly string[], io: Io): Promise<ExitCode> {
  try {
    return await dispatch(words, io);
  } catch (error) {
    const [code, lines] = lastWords(error);
    const stop = painter(io.colour.stderr)('stop', 'leadwort:');
    io.stderr(`${stop} ${lines.join('\n')}\n`);
    return code;
  }
}

async function dispatch([first, ...rest]: readonly string[], io: Io): Promise<ExitCode> {
  if (first === undefined) throw new UsageError('which command?');
  if (first === '--version' || first === '-v') return print(io, `${VERSION}\n`);
  if (first === '--help' || first === '-h') return print(io, helpForAll(COMMANDS, VERSION));
  if (first === 'help') {
    const [topic, extra] = rest;
    if (extra !== undefined) throw new UsageError(`"${extra}" is one word too many.`);
    return print(io, topic === undefined ? helpForAll(COMMANDS, VERSION) : helpFor(commandNamed(topic)));
  }
  const command = commandNamed(first);
  const given = readGiven(command, rest);
  return given === 'help' ? print(io, helpFor(command)) : command.run(given, io);
}

function print(io: Io, text: string): ExitCode {
  io.stdout(text);
  return EXIT.done;
}

function commandNamed(name: string) {
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) throw new UsageError(`"${name}" is not a command.`);
  return command;
}

function lastWords(error: unknown): [ExitCode, string[]] {
  if (error instanceof UsageError) {
    const uses = COMMANDS.filter(({ name }) => error.command === undefined || error.command === name);
    const more = error.command === undefined ? 'leadwort --help' : `leadwort help ${error.command}`;
    return [EXIT.usage, [error.message, ...uses.map((one) => `  ${synopsis(one)}`), `${more} tells more.`]];
  }
  if (error instanceof Refusal) {
    return [EXIT.content, [error.message]];
  }
  return [
    EXIT.ours,
    ['a fault of its own; please report it.', error instanceof Error ? `${error.stack}` : String(error)],
  ];
}
