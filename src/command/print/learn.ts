// What was learned from reviewed finds, for people who read a terminal.
import type { Key } from '../../key/index.ts';
import type { Learned, NotCounted } from '../../report/learn/index.ts';
import { count, percent, table } from './table.ts';

const WHY: Readonly<Record<NotCounted, string>> = {
  unreviewed: 'nobody reviewed it',
  'photo-wanted': 'a photograph is still wanted',
  outside: 'the plant is none of the key',
  'not-detected': 'no plant was seen',
  'other-key': 'it was made with another key',
  'unknown-taxon': 'the key does not have the plant',
  'unknown-observer': 'the key does not have the kind of observer',
  'older-copy': 'the same find came with a later review',
};

/** What the files of learners came to. */
export interface Practised {
  readonly learners: number;
  readonly readings: number;
  readonly notCounted: readonly { readonly name: string; readonly why: NotCounted }[];
  /** Ids of attempts that two files tell differently. */
  readonly conflicts: readonly string[];
}

export function learnReport(key: Key, learned: Learned, written: string | undefined, practice: Practised): string {
  const { finds, answers, notCounted, answersNotCounted, characters, mixups, weight } = learned;
  const label = (id: string) => key.characters.find((one) => one.id === id)?.label ?? id;
  const lines = [`${key.id} ${key.version}: ${count(finds, 'find')} counted, ${count(answers, 'answer')}`];
  if (practice.learners > 0)
    lines.push(`  and ${count(practice.readings, 'reading')} of ${count(practice.learners, 'learner')} in practice`);
  if (practice.conflicts.length > 0)
    lines.push(`  told differently by two files of one learner, each counted once: ${practice.conflicts.join(', ')}`);
  for (const { name, why } of [...notCounted, ...practice.notCounted])
    lines.push(`  not counted: ${name}: ${WHY[why]}`);
  for (const { name, character, expected } of answersNotCounted)
    lines.push(`  answer not counted: ${name}, ${character}: expected ${expected}`);
  if (characters.length > 0) {
    const rows = characters.map((one) => [
      label(one.character),
      String(one.readings),
      one.misread.toFixed(1),
      percent(one.rate),
      percent(one.proposed),
      `${percent(one.low)} to ${percent(one.high)}`,
    ]);
    const head = ['character', 'read', 'misread', 'key', 'proposed', '95 %'];
    lines.push('', ...table([head, ...rows]), '', `The key's own rates weigh as ${count(weight, 'reading')} each.`);
  }
  if (mixups.length > 0)
    lines.push(
      '',
      'Taken for each other (expected number):',
      ...mixups
        .slice(0, 20)
        .map((one) => `  ${one.count.toFixed(1)}  ${label(one.character)}: ${one.shown} read as ${one.said}`),
    );
  lines.push(
    '',
    written === undefined ? 'No file was changed.' : `Proposal written to ${written}; the key was not changed.`,
  );
  return `${lines.join('\n')}\n`;
}
