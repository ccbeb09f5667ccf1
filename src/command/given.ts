// From words on the command line to what a subcommand was given, or a UsageError that says what to mend.
import { parseArgs } from 'node:util';
import type { Command, Given } from './command.ts';
import { UsageError } from './errors.ts';

const HELP = { type: 'boolean', short: 'h' } as const;

/** `'help'` when help was asked for, whatever else stands there. */
export function readGiven({ name, operands, options }: Command, words: readonly string[]): Given | 'help' {
  const { values, positionals } = parse(name, options, words);
  if (values.help === true) return 'help';
  const missing = operands[positionals.length];
  if (missing !== undefined) throw new UsageError(`${missing.name} is missing: ${missing.help}.`, name);
  if (positionals.length > operands.length && operands.at(-1)?.many !== true) {
    throw new UsageError(`"${positionals[operands.length]}" is one word too many.`, name);
  }
  if (positionals.includes('')) throw new UsageError('an empty word stands where a path is needed.', name);
  for (const [option, { required, value, help }] of Object.entries(options)) {
    if (required && !values[option]) throw new UsageError(`--${option} ${value} is missing: ${help}.`, name);
  }
  const entries = Object.entries(values);
  return {
    operands: positionals,
    text: new Map(entries.filter((entry): entry is [string, string] => typeof entry[1] === 'string')),
    on: new Set(entries.filter(([, value]) => value === true).map(([option]) => option)),
  };
}

function parse(
  name: string,
  options: Command['options'],
  words: readonly string[],
): { values: Readonly<Record<string, unknown>>; positionals: readonly string[] } {
  const known = Object.entries(options).map(([option, { type, short }]) => [
    option,
    short ? { type, short } : { type },
  ]);
  try {
    return parseArgs({
      args: [...words],
      options: { ...Object.fromEntries(known), help: HELP },
      allowPositionals: true,
      strict: true,
    });
  } catch (error) {
    if (error instanceof TypeError && String((error as NodeJS.ErrnoException).code).startsWith('ERR_PARSE_ARGS')) {
      throw new UsageError(/^.*?[.](?=\s|$)/s.exec(`${error.message}.`)?.[0] ?? error.message, name);
    }
    throw error;
  }
}
