// What the key may learn from practice: the readings whose answer is known.
import { expect, test } from 'vitest';
import { attempt, idOf, record } from '../../../tests/support/attempts.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { learnRates } from '../../engine/learn/index.ts';
import { shownBy } from '../specimen/specimen.ts';
import type { Attempt } from '../types.ts';
import { readingsOfRecords } from './readings.ts';

const prepared = streambank();
const form = prepared.characterIndex.get('growth-form') as number;
const states = prepared.key.characters[form]?.states.map(({ id }) => id) ?? [];

const read = (n: number, said: string, more: Partial<Attempt> = {}): Attempt =>
  attempt(n, 'panicum-virgatum', {
    kind: 'read',
    item: 'character:growth-form',
    character: 'growth-form',
    options: ['tall-cane', 'grass'],
    truth: 'grass',
    said,
    right: said === 'grass',
    ...more,
  });

test('a reading carries what was shown, what was said, and how surely', () => {
  const readings = readingsOfRecords(prepared, [
    record([read(1, 'grass', { sureness: 'sure' }), read(2, 'tall-cane', { sureness: 'guess' })]),
  ]);
  const one = { taxon: prepared.taxonIndex.get('panicum-virgatum'), times: 1, shown: states.indexOf('grass') };
  expect(readings).toEqual([
    { ...one, answer: { character: form, states: [states.indexOf('grass')], sureness: 'sure' } },
    { ...one, answer: { character: form, states: [states.indexOf('tall-cane')], sureness: 'guess' } },
  ]);
});

test('the way of a run counts, each answer with its own sureness, but what was skipped or measured', () => {
  const specimen = { taxon: 'panicum-virgatum', month: 8, seed: 3 } as const;
  expect(shownBy(prepared.key, specimen).has('growth-form')).toBe(true);
  const run = attempt(1, 'panicum-virgatum', {
    ...{ kind: 'run', options: [], specimen, sureness: 'sure' },
    trail: [
      { character: 'growth-form', states: ['tall-cane'], sureness: 'guess' },
      { character: 'height', value: 1, unit: 'm', sureness: 'sure' },
      { character: 'habitat', skipped: true },
    ],
  });
  const readings = readingsOfRecords(prepared, [record([run])]);
  expect(readings.map(({ answer }) => answer)).toEqual([
    { character: form, states: [states.indexOf('tall-cane')], sureness: 'guess' },
  ]);
});

test('a file given twice counts once, and one of another key not at all', () => {
  const file = record([read(1, 'grass'), read(2, 'tall-cane')]);
  const twice = readingsOfRecords(prepared, [
    file,
    file,
    record([read(3, 'grass')], { id: idOf(0xb), key: 'another' }),
  ]);
  expect(twice).toEqual(readingsOfRecords(prepared, [file]));
});

test('what was said of plants, characters and states that the key no longer has is left out', () => {
  const gone = [
    read(1, 'gone'),
    read(2, 'grass', { truth: 'gone', right: false }),
    read(3, 'grass', { character: 'gone' }),
    read(4, 'grass', { specimen: { taxon: 'gone', month: 8, seed: 1 } }),
    read(5, 'unsure'),
  ];
  expect(readingsOfRecords(prepared, [record(gone)])).toEqual([]);
});

// By hand: 20 readings at the key's own rate of 0.08, and of four seen ones one misread, by people who slip as the key says:
// (20 · 0.08 + 1) / (20 + 4) = 2.6 / 24.
test('the rate that is learned is that of the counts', () => {
  const sure = ['grass', 'grass', 'tall-cane', 'grass'].map((said, n) => read(n + 1, said, { sureness: 'sure' }));
  const [rate] = learnRates(prepared.matrix, readingsOfRecords(prepared, [record(sure)]));
  expect(rate?.before).toBe(0.08);
  expect(rate?.mean).toBeCloseTo(2.6 / 24, 9);
});
