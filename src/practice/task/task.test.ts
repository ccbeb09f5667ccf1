// Whether what is put to a learner is fair: the truth can be seen, and nothing else that can be said is as right.
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { streambank } from '../../../tests/support/streambank.ts';
import { Random } from '../../engine/trial/random.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import { isTold } from '../judge/telling.ts';
import { shownBy } from '../specimen/specimen.ts';
import type { ItemId, Task } from '../types.ts';
import { charactersOf, itemsOf, kindsOf, parseItem } from './items.ts';
import { alike, nearest } from './near.ts';
import { taskOf } from './task.ts';

const prepared = streambank();
const { key } = prepared;
const statusOf = (id: string) => key.taxa.find((one) => one.id === id)?.status;
// The last course is of all plants of the key; reading the folder fills them in.
const all = key.taxa.map(({ id }) => id);
const list = courses.courses.map((one) => strictCourse({ taxa: all, ...one } as LooseCourse));

describe.each(list.map((course) => [course.id, course] as const))('the course %s', (_, course) => {
  const made: Task[] = [];
  for (const item of itemsOf(prepared, course))
    for (const kind of kindsOf(course, item))
      for (const test of [false, true])
        for (let seed = 1; seed <= 3; seed++) {
          const task = taskOf(prepared, course, item, kind, new Random(seed), test);
          if (task) {
            made.push(task);
            // Odd seeds are for practice, even ones for tests.
            expect(task.specimen.seed % 2).toBe(test ? 0 : 1);
          }
        }

  test('makes tasks of every kind it asks for', () => {
    expect(new Set(made.map(({ kind }) => kind))).toEqual(new Set(course.kinds));
  });

  test('offers what is right, nothing twice, and meets its specimens in its months', () => {
    for (const { kind, options, truth, specimen } of made) {
      if (kind !== 'run') expect(options).toContain(truth);
      expect(new Set(options).size).toBe(options.length);
      expect(course.months).toContain(specimen.month);
      expect(course.taxa).toContain(specimen.taxon);
    }
  });

  test('asks to read only what can be seen of the specimen', () => {
    const readings = made.filter(({ kind }) => kind === 'read');
    expect(readings.length).toBeGreaterThan(0);
    for (const { character = '', truth, specimen, options } of readings) {
      expect(shownBy(key, specimen).get(character)).toBe(truth);
      expect(options.length).toBeLessThanOrEqual(8);
    }
  });

  test('offers two to four plants, and what is seen tells the specimen from every other of them', () => {
    for (const { kind, options, truth, specimen } of made) {
      if (kind !== 'name' && kind !== 'pair') continue;
      expect(truth).toBe(specimen.taxon);
      expect(options.length).toBeGreaterThan(1);
      expect(options.length).toBeLessThanOrEqual(kind === 'pair' ? 2 : 4);
      const shows = shownBy(key, specimen);
      for (const other of options)
        if (other !== truth) expect(isTold(prepared, shows, truth, other), `${truth}, ${other}`).toBe(true);
    }
  });

  test('asks native or not only where no plant of another standing could show the same', () => {
    for (const { kind, truth, specimen } of made) {
      if (kind !== 'standing') continue;
      expect(truth).toBe(statusOf(specimen.taxon));
      const shows = shownBy(key, specimen);
      for (const other of course.taxa)
        if (statusOf(other) !== truth)
          expect(isTold(prepared, shows, specimen.taxon, other), `${specimen.taxon}, ${other}`).toBe(true);
    }
  });
});

describe('items', () => {
  const [reed] = list;
  if (reed === undefined) throw new Error('no course');

  test('begin with a pair of a native and an invasive, hardest mistakes first', () => {
    const [first] = itemsOf(prepared, reed).filter((item) => item.startsWith('pair:'));
    const parsed = parseItem(first ?? '');
    const standings = parsed?.of === 'pair' ? parsed.pair.map(statusOf) : [];
    expect(new Set(standings)).toEqual(new Set(['native', 'invasive']));
  });

  test('are each named once, and every plant of the course is among them', () => {
    for (const course of list) {
      const items = itemsOf(prepared, course);
      expect(new Set(items).size).toBe(items.length);
      for (const taxon of course.taxa) expect(items).toContain(`taxon:${taxon}`);
      for (const item of items) expect(kindsOf(course, item).length, item).toBeGreaterThan(0);
    }
  });

  test('take the characters that a course names, and never one that is not asked for', () => {
    expect(
      charactersOf(prepared, {
        ...reed,
        characters: ['height', 'underground'],
      }),
    ).toEqual(['height']);
  });

  test('are read back from their text, and anything else is none', () => {
    expect(parseItem('pair:a+b')).toEqual({ of: 'pair', pair: ['a', 'b'] });
    for (const odd of ['', 'pair:a', 'pair:a+b+c', 'plant:a', 'taxon:']) expect(parseItem(odd)).toBeUndefined();
  });

  test('of a plant, a state or a pair that the key does not have make no task', () => {
    const items: readonly (readonly [ItemId, 'name' | 'pair' | 'read'])[] = [
      ['taxon:none', 'name'],
      ['character:none', 'read'],
    ];
    for (const [item, kind] of items) expect(taskOf(prepared, reed, item, kind, new Random(1)), item).toBeUndefined();
  });
});

describe('twins', () => {
  test('are asked as a pair only by specimens that show what tells them apart', () => {
    const course = {
      ...(list[2] as (typeof list)[0]),
      taxa: ['echinodorus-cordifolius', 'echinodorus-berteroi'],
    };
    const item: ItemId = 'pair:echinodorus-berteroi+echinodorus-cordifolius';
    for (let seed = 0; seed < 40; seed++) {
      const task = taskOf(prepared, course, item, 'pair', new Random(seed));
      if (task === undefined) continue;
      const other = task.options.find((one) => one !== task.truth) as string;
      expect(isTold(prepared, shownBy(key, task.specimen), task.truth, other)).toBe(true);
    }
  });

  test('that nothing tells apart are never asked: a plant cannot be told from itself', () => {
    const shows = shownBy(key, { taxon: 'arundo-donax', month: 8, seed: 1 });
    expect(isTold(prepared, shows, 'arundo-donax', 'arundo-donax')).toBe(false);
  });
});

test('nearest plants begin with the look-alikes that the key names, then go from more to less alike', () => {
  const near = nearest(prepared, 'colocasia-esculenta', all);
  const named = new Set(
    key.lookalikes.filter(({ taxa }) => taxa.includes('colocasia-esculenta')).flatMap(({ taxa }) => [...taxa]),
  );
  named.delete('colocasia-esculenta');
  expect(new Set(near.slice(0, named.size))).toEqual(named);
  const rest = near.slice(named.size).map((id) => alike(prepared, 'colocasia-esculenta', id));
  expect(rest).toEqual([...rest].sort((a, b) => b - a));
});
