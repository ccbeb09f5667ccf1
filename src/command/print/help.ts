// The help texts, from the table of commands.
import type { Command } from '../command.ts';
import { table } from './table.ts';

/** `leadwort bundle FOLDER -o FILE` */
export function synopsis({ name: command, operands, options }: Command): string {
  const parts = Object.entries(options).map(([option, { short, value, required }]) => {
    const text = [short === undefined ? `--${option}` : `-${short}`, ...(value === undefined ? [] : [value])].join(' ');
    return required ? text : `[${text}]`;
  });
  return ['leadwort', command, ...operands.map(({ name, many }) => (many ? `${name}...` : name)), ...parts].join(' ');
}

const EXIT_CODES = [
  ['0', 'done; warnings may have been printed'],
  ['1', 'a file cannot be read, used or written, or a key has errors'],
  ['2', 'the command line is not right'],
  ['3', 'the command itself is at fault: please report it'],
];

const indent = (lines: readonly string[]) => lines.map((line) => `  ${line}`);

/** Help for the whole command. */
export function helpForAll(commands: readonly Command[], version: string): string {
  const rows = commands.map((command) => [synopsis(command), command.summary]);
  return `${[
    `leadwort ${version}: for the people who keep a plant identification key`,
    '',
    ...indent(
      table([
        ...rows,
        ['leadwort help COMMAND', 'tells more of one command'],
        ['leadwort --version', 'prints the version alone'],
        ['leadwort --help', 'prints this'],
      ]),
    ),
    '',
    'Exit codes:',
    ...indent(table(EXIT_CODES)),
    '',
    'Colour appears on a terminal only; NO_COLOR=1 turns it off, FORCE_COLOR=1 turns it on.',
  ].join('\n')}\n`;
}

/** Help for one subcommand. */
export function helpFor(command: Command): string {
  const options = Object.entries(command.options).map(([option, { short, value, help }]) => [
    `${short === undefined ? '' : `-${short}, `}--${option}${value === undefined ? '' : ` ${value}`}`,
    help,
  ]);
  return `${[
    synopsis(command),
    '',
    `${command.summary[0]?.toUpperCase()}${command.summary.slice(1)}.`,
    ...command.more,
    '',
    ...indent(
      table([...command.operands.map(({ name, help }) => [name, help]), ...options, ['-h, --help', 'prints this']]),
    ),
  ].join('\n')}\n`;
}
