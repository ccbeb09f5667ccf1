// The small key of tests/fixtures, whole or with a fault in it.
import { readFileSync } from 'node:fs';
import { readKey } from '../../src/key/folder.ts';
import { KeyContentError, type Problem } from '../../src/key/problem.ts';
import { keyFiles } from './key-files.ts';

export const smallKey = () => keyFiles('tests/fixtures/small-key');

/** The small key's content in one object, as a bundle has it. */
export function smallContent(): Record<string, unknown> {
  const parts = [...smallKey()].map(([name, text]) => [name.replace('.json', ''), JSON.parse(text)] as const);
  const { 'text/es': es, ...rest } = Object.fromEntries(parts);
  return { format: 1, ...rest, text: { es } };
}

/** What is wrong with the files; nothing for a key. Anything thrown but a KeyContentError is thrown on. */
export function problemsOf(files: ReadonlyMap<string, string>): readonly Problem[] {
  try {
    readKey(files);
    return [];
  } catch (error) {
    if (error instanceof KeyContentError) return error.problems;
    throw error;
  }
}

/** File, place (`taxa[0].traits.height`) and the value to set there; undefined takes the field out. */
export type Edit = readonly [file: string, place: string, value: unknown];

type Json = Record<string, unknown>;

export function edited(...edits: readonly Edit[]): Map<string, string> {
  const files = smallKey();
  for (const [file, place, value] of edits) {
    const content = JSON.parse(files.get(file) ?? '{}');
    const steps = place.split(/[.[\]]+/).filter((step) => step !== '');
    const holder = steps.slice(0, -1).reduce<Json>((inner, step) => inner[step] as Json, content);
    const last = steps.at(-1) ?? '';
    if (value === undefined) delete holder[last];
    else holder[last] = value;
    files.set(file, JSON.stringify(content, null, 2));
  }
  return files;
}

export interface Fault {
  readonly edit: Edit;
  readonly code: string;
  readonly path: string;
  readonly expected: string;
  readonly found: string;
}

/** The rows of tests/fixtures/small-key-faults.md. */
export function faultTable(): Fault[] {
  const text = readFileSync(new URL('../fixtures/small-key-faults.md', import.meta.url), 'utf8');
  const rows = text.split('\n').filter((line) => /^\| [a-z/]+\.json +\|/.test(line));
  return rows.map((row) => {
    const [file = '', place = '', json = '', code = '', path = '', expected = '', found = ''] = row
      .split('|')
      .slice(1)
      .map((cell) => cell.trim());
    const value = json === '(none)' ? undefined : JSON.parse(json);
    // What no table can show stands there as an escape.
    const shown = found.replaceAll('\\u00a0', '\u00A0');
    return { edit: [file, place, value], code, path: path === '=' ? place : path, expected, found: shown };
  });
}
