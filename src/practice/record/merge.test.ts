// Files put together: each attempt once, in whatever order and grouping, and what differs named.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attempt, idOf, record } from '../../../tests/support/attempts.ts';
import type { PracticeRecord } from '../types.ts';
import { conflictsOf, MergeError, mergeRecords, peopleIn } from './merge.ts';

const reed = (n: number, more = {}) => attempt(n, 'arundo-donax', more);

describe('two files of one person', () => {
  test('hold together every attempt once, oldest first', () => {
    const merged = mergeRecords(record([reed(1), reed(3)]), record([reed(2), reed(3)]));
    expect(merged.attempts).toEqual([reed(1), reed(2), reed(3)]);
  });

  test('are refused for two people, and for two keys', () => {
    expect(() => mergeRecords(record([]), record([], { id: idOf(0xb) }))).toThrow(MergeError);
    expect(() => mergeRecords(record([]), record([], { key: 'another' }))).toThrow(
      'one is of the key streambank, one of another',
    );
  });

  test('have the version of the key of the file whose last attempt is later, though its number be lower', () => {
    const [early, late] = [record([reed(1)], { version: '0.10.0' }), record([reed(2)], { version: '0.9.0' })];
    expect(mergeRecords(early, late).key.version).toBe('0.9.0');
    expect(mergeRecords(late, early).key.version).toBe('0.9.0');
  });

  test('that end with the same attempt have the higher version, by number and not by letter', () => {
    const [one, other] = [record([reed(1)], { version: '0.10.0' }), record([reed(1)], { version: '0.9.0' })];
    expect(mergeRecords(one, other).key.version).toBe('0.10.0');
    expect(mergeRecords(other, one).key.version).toBe('0.10.0');
  });
});

describe('two attempts with one id', () => {
  const first = reed(1, { seconds: 5 });
  const second = reed(1, { seconds: 7 });
  const later = reed(1, { day: 1, seconds: 1 });

  test('that differ are named, and the same one stands whichever file comes first', () => {
    const [one, other] = [record([first, reed(2)]), record([second, reed(2)])];
    expect(conflictsOf(one, other)).toEqual([idOf(1)]);
    expect(conflictsOf(other, one)).toEqual([idOf(1)]);
    expect(mergeRecords(one, other)).toEqual(mergeRecords(other, one));
  });

  test('of two times the later stands', () => {
    expect(mergeRecords(record([later]), record([second])).attempts).toEqual([later]);
    expect(mergeRecords(record([second]), record([later])).attempts).toEqual([later]);
  });

  test('of two clocks the later stands by the moment, not by what the clock showed', () => {
    const [west, east] = [reed(1, { at: '2026-05-04T08:00:00-05:00' }), reed(1, { at: '2026-05-04T12:30:00Z' })];
    expect(mergeRecords(record([west]), record([east])).attempts).toEqual([west]);
  });

  test('that say the same in another order of fields are no conflict', () => {
    const turned = Object.fromEntries(Object.entries(first).reverse()) as unknown as typeof first;
    expect(conflictsOf(record([first]), record([turned]))).toEqual([]);
  });
});

test('any number of files of anybody come to the same, in any order', () => {
  const files: readonly PracticeRecord[] = [
    record([reed(1), reed(2)], { version: '0.1.0' }),
    record([reed(2, { seconds: 3 }), reed(4)], { version: '0.2.0', name: 'Later' }),
    record([reed(2, { day: 2 })], { version: '0.1.5' }),
    record([], { version: '0.9.0' }),
    record([reed(7)], { id: idOf(0xb) }),
    record([reed(7, { said: 'unsure' })], { id: idOf(0xb) }),
    record([reed(9)], { key: 'another' }),
  ];
  const once = peopleIn('streambank', files);
  expect(once.people.map(({ attempts }) => attempts.length)).toEqual([3, 1]);
  expect(once.people[0]?.key.version).toBe('0.1.5');
  expect(once.conflicts).toEqual([idOf(2), idOf(7)]);
  expect(once.otherKey).toEqual([6]);
  fc.assert(
    fc.property(fc.shuffledSubarray([...files], { minLength: files.length }), (shuffled) => {
      const { people, conflicts, otherKey } = peopleIn('streambank', shuffled);
      expect({ people, conflicts }).toEqual({ people: once.people, conflicts: once.conflicts });
      expect(otherKey.map((i) => shuffled[i]?.key.id)).toEqual(['another']);
    }),
    { numRuns: 100, seed: 3 },
  );
  const [a, b, c] = files as [PracticeRecord, PracticeRecord, PracticeRecord];
  expect(mergeRecords(mergeRecords(a, b), c)).toEqual(mergeRecords(a, mergeRecords(b, c)));
  expect(mergeRecords(a, a)).toEqual(a);
});
