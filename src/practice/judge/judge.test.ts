// What is told after a reply: whether it was right, what decided it, and where a run went wrong.
import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import type { KeyAnswer } from '../../key/index.ts';
import { shownBy } from '../specimen/specimen.ts';
import type { Attempt, Reply, Task } from '../types.ts';
import { bearsOut, isAlarm, itemsTouched, judge, OUTSIDE, pairItem, UNSURE } from './judge.ts';
import { decidingOf, isTold, ratioOf, usualState } from './telling.ts';

const prepared = streambank();
const { key } = prepared;
const reed = { taxon: 'arundo-donax', month: 9, seed: 1 } as const;
const arum = { taxon: 'peltandra-virginica', month: 9, seed: 1 } as const;
const naming: Task = {
  kind: 'name',
  item: 'taxon:peltandra-virginica',
  specimen: arum,
  options: ['colocasia-esculenta', 'peltandra-virginica', 'sagittaria-latifolia'],
  truth: 'peltandra-virginica',
};
const running: Task = { kind: 'run', item: 'taxon:arundo-donax', specimen: reed, options: [], truth: 'arundo-donax' };
const reply = (said: string, more: Partial<Reply> = {}): Reply => ({ said, seconds: 8, sureness: 'sure', ...more });
const kept = (task: Task, said: string, more: Partial<Reply> = {}): Attempt => ({
  ...task,
  ...reply(said, more),
  id: '00000000-0000-4000-8000-000000000001',
  at: '2026-05-04T08:00:00Z',
  course: 'all',
  right: said === task.truth,
});

describe('what decided', () => {
  test('speaks for the plant against what was said, and both states are told', () => {
    const { right, decided } = judge(prepared, naming, reply('colocasia-esculenta'));
    expect(right).toBe(false);
    const { character, shown, instead } = decided ?? expect.fail('nothing decided');
    expect(shownBy(key, arum).get(character)).toBe(shown);
    expect(ratioOf(prepared, character, shown, arum.taxon, 'colocasia-esculenta')).toBeGreaterThanOrEqual(3);
    expect(instead).toBe(usualState(prepared, character, 'colocasia-esculenta'));
    expect(instead).not.toBe(shown);
  });

  test('is of those that the key names for the two, where one of them tells', () => {
    for (const { taxa, separate } of key.lookalikes)
      for (const [truth, other] of [taxa, [taxa[1], taxa[0]] as const])
        for (const seed of [1, 2, 3]) {
          const shows = shownBy(key, { taxon: truth, month: 9, seed });
          const named = separate.map(({ character }) => character);
          const ratio = (one: string) => ratioOf(prepared, one, shows.get(one) ?? '', truth, other);
          const decided = decidingOf(prepared, shows, truth, other)?.character;
          const telling = named.filter((one) => shows.has(one) && ratio(one) >= 3);
          if (telling.length === 0) continue;
          expect(telling, `${truth}, ${other}, seed ${seed}`).toContain(decided);
          // And of those the one that says most.
          for (const one of telling) expect(ratio(decided as string)).toBeGreaterThanOrEqual(ratio(one));
        }
  });

  test('is nothing where nothing seen tells, and a plant the key knows nothing of is told by nothing', () => {
    expect(decidingOf(prepared, new Map(), 'arundo-donax', 'panicum-virgatum')).toBeUndefined();
    expect(ratioOf(prepared, 'height', 'no-such-state', 'arundo-donax', 'panicum-virgatum')).toBe(1);
  });

  test('the share of a state among two plants is the other way round for the other', () => {
    const shows = shownBy(key, arum);
    for (const [character, state] of shows) {
      const there = ratioOf(prepared, character, state, arum.taxon, 'sagittaria-latifolia');
      const back = ratioOf(prepared, character, state, 'sagittaria-latifolia', arum.taxon);
      expect(there * back).toBeCloseTo(1, 9);
    }
    const [one, other] = [arum.taxon, 'sagittaria-latifolia'];
    expect(isTold(prepared, shows, one, other) && isTold(prepared, shows, other, one)).toBe(false);
  });

  test('of a reading are the state shown and the one said; who cannot tell is told only the first', () => {
    const [character, truth] = [...shownBy(key, arum)][0] as [string, string];
    const task: Task = {
      kind: 'read',
      item: `character:${character}`,
      specimen: arum,
      character,
      truth,
      options: [truth, 'x'],
    };
    expect(judge(prepared, task, reply('x'))).toEqual({
      right: false,
      said: 'x',
      truth,
      decided: { character, shown: truth, instead: 'x' },
    });
    expect(judge(prepared, task, reply(UNSURE)).decided).toEqual({ character, shown: truth });
  });
});

describe('a run', () => {
  const shows = shownBy(key, reed);
  const good: KeyAnswer[] = [...shows].slice(0, 3).map(([character, state]) => ({
    character,
    states: [state],
    sureness: 'sure',
  }));
  const wrongOf = (trail: readonly KeyAnswer[]) => judge(prepared, running, reply('arundo-donax', { trail })).wrong;
  const other = (id: string): string =>
    key.characters.find((one) => one.id === id)?.states.find((one) => one.id !== shows.get(id))?.id as string;

  test('that its specimen bears out has no wrong step', () => {
    expect(wrongOf(good)).toBeUndefined();
    expect(judge(prepared, running, reply('arundo-donax', { trail: good })).right).toBe(true);
  });

  test('names the first step that went wrong, even where the name came out right', () => {
    const [a, b, c] = good as [KeyAnswer, KeyAnswer, KeyAnswer];
    const off = (one: KeyAnswer): KeyAnswer => ({
      character: one.character,
      states: [other(one.character)],
      sureness: 'sure',
    });
    expect(wrongOf([a, off(b), off(c)])).toEqual({
      step: 1,
      character: b.character,
      said: [other(b.character)],
      shown: shows.get(b.character),
    });
  });

  test('bears out several states ticked when the one shown is among them, and never faults what was skipped', () => {
    const [{ character }] = good as [KeyAnswer];
    const both = [other(character), shows.get(character) as string];
    expect(wrongOf([{ character, states: both, sureness: 'think' }])).toBeUndefined();
    expect(wrongOf([{ character, skipped: true }])).toBeUndefined();
  });

  test('faults an answer to what cannot be seen on the specimen', () => {
    const state = key.characters.find((one) => one.id === 'underground')?.states[0]?.id as string;
    expect(wrongOf([{ character: 'underground', states: [state], sureness: 'sure' }])).toEqual({
      step: 0,
      character: 'underground',
      said: [state],
    });
  });

  test('bears out a size within an eye of what is shown or of the range of the plant, whatever its unit', () => {
    const height = key.characters.find((one) => one.id === 'height');
    const shown = height?.states.find((one) => one.id === shows.get('height'));
    expect(height?.unit).toBe('m');
    const fits = (value: number, unit: 'm' | 'cm', { taxon } = reed as { taxon: string }, seen = shows) =>
      bearsOut(prepared, taxon, seen, { character: 'height', value, unit, sureness: 'sure' });
    expect(fits((shown?.from ?? 0) + 0.01, 'm')).toBe(true);
    expect(fits(((shown?.from ?? 0) + 0.01) * 100, 'cm')).toBe(true);
    expect(fits(0.05, 'm')).toBe(false);
    // Arrow arum never stands as tall as a cane.
    expect(fits(5, 'm', arum, shownBy(key, arum))).toBe(false);
  });
});

describe('what an attempt teaches of', () => {
  test('is the item alone when it was right', () => {
    expect(itemsTouched(prepared, kept(naming, naming.truth))).toEqual([{ item: naming.item, right: true }]);
  });

  test('is the plant and the pair when another was named, and only the plant when nobody could tell', () => {
    expect(itemsTouched(prepared, kept(naming, 'colocasia-esculenta'))).toEqual([
      { item: naming.item, right: false },
      { item: 'pair:colocasia-esculenta+peltandra-virginica', right: false },
    ]);
    expect(itemsTouched(prepared, kept(naming, UNSURE))).toEqual([{ item: naming.item, right: false }]);
  });

  test('is every character that was answered in a run', () => {
    const shows = shownBy(key, reed);
    const state = key.characters
      .find((one) => one.id === 'height')
      ?.states.find((one) => one.id !== shows.get('height'));
    const habitat = shows.get('habitat') as string;
    const trail: KeyAnswer[] = [
      { character: 'height', states: [state?.id as string], sureness: 'sure' },
      { character: 'habitat', states: [habitat], sureness: 'sure' },
    ];
    expect(itemsTouched(prepared, kept(running, OUTSIDE, { trail }))).toEqual([
      { item: 'taxon:arundo-donax', right: false },
      { item: 'character:height', right: false },
      { item: 'character:habitat', right: true },
    ]);
  });

  test('names a pair the same way round whichever was meant', () => {
    expect(pairItem('b', 'a')).toBe(pairItem('a', 'b'));
  });
});

describe('a native called an invasive', () => {
  const standing: Task = { ...naming, kind: 'standing', options: ['native', 'invasive'], truth: 'native' };
  test.each([
    ['by its name', kept(naming, 'colocasia-esculenta'), true],
    ['by its standing', kept(standing, 'invasive'), true],
    ['is not one taken for another native', kept(naming, 'sagittaria-latifolia'), false],
    ['is not one that nobody could tell', kept(naming, UNSURE), false],
    ['is not an invasive taken for a native', kept(running, 'panicum-virgatum'), false],
  ])('%s', (_, one, expected) => {
    expect(isAlarm(prepared, one)).toBe(expected);
  });
});
