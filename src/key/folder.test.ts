import { describe, expect, test } from 'vitest';
import { edited, smallKey } from '../../tests/support/small-key.ts';
import { readKey } from './folder.ts';

const key = readKey(smallKey());
const character = (id: string) => key.characters.find((one) => one.id === id);

describe('a key that is read', () => {
  test('has its files in one strict shape', () => {
    expect(key).toMatchObject({ id: 'small-key', languages: ['en', 'es'], units: 'us', outsidePrior: 0.05 });
    expect(key.taxa.map(({ id }) => id)).toEqual([
      'arundo-donax',
      'phragmites-australis-subsp-americanus',
      'arundinaria-gigantea',
    ]);
    expect(key.observers).toEqual(
      new Map([
        ['novice', 1],
        ['technician', 0.5],
      ]),
    );
    expect(key.text.get('es')?.get('Height')).toBe('Altura');
    expect(key.couplets[0]?.leads.map(({ to }) => to)).toEqual([['arundo-donax'], 2]);
    expect(key.hash).toBeUndefined();
  });

  test('has what the files leave out', () => {
    expect(character('growth-form')).toMatchObject({ asked: true, months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] });
    expect(character('habitat')?.mixups).toEqual([]);
    expect(key.taxa[0]?.synonyms).toEqual([]);
    const bare = readKey(
      edited(
        ['key.json', 'thresholds', { settled: 0.8 }],
        ['key.json', 'outsidePrior', undefined],
        ['key.json', 'observers', undefined],
        ['taxa.json', 'lookalikes', undefined],
        ['taxa.json', 'taxa[0].common.es', []],
      ),
    );
    expect(bare.thresholds).toEqual({
      settled: 0.8,
      leaning: 0.6,
      outside: 0.5,
      nativesSettled: 0.01,
      nativesLeaning: 0.2,
      telling: 3,
    });
    expect(bare.outsidePrior).toBe(0.05);
    expect([...bare.observers.keys()]).toEqual(['novice', 'technician', 'botanist']);
    expect(bare.lookalikes).toEqual([]);
    expect(bare.taxa[0]?.common.has('es')).toBe(false);
  });

  test('may do without couplets and translations', () => {
    const files = smallKey();
    files.delete('couplets.json');
    files.delete('text/es.json');
    const bare = readKey(files);
    expect(bare.couplets).toEqual([]);
    expect(bare.text).toEqual(new Map());
  });

  test('has size classes that begin where the one before ends', () => {
    expect(character('height')?.states.map(({ id, from, to }) => [id, from, to])).toEqual([
      ['head', 0, 1.8],
      ['reach', 1.8, 3.6],
      ['above', 3.6, undefined],
    ]);
  });

  test('has traits in order of frequency, ranges parsed, and what does not apply apart from what is unknown', () => {
    const [arundo, phragmites, arundinaria] = key.taxa;
    expect(arundo?.traits.get('growth-form')).toMatchObject({
      kind: 'states',
      states: [
        { state: 'tall-cane', how: 'usually' },
        { state: 'grass', how: 'rarely' },
      ],
    });
    expect(arundo?.traits.get('height')).toMatchObject({
      kind: 'range',
      range: { form: 'span', min: 2, low: 3, high: 10, unit: 'm' },
    });
    // Written in millimetres, asked in centimetres: the range keeps its unit.
    expect(arundinaria?.traits.get('leaf-width')).toMatchObject({ range: { low: 8, high: 13, unit: 'mm' } });
    expect(arundinaria?.traits.get('sheaths')).toMatchObject({ kind: 'not-applicable', source: ['memory'] });
    expect(phragmites?.traits.has('height')).toBe(false);
  });

  test.each<[unknown, number[]]>([
    ['3-11', [3, 4, 5, 6, 7, 8, 9, 10, 11]],
    ['11-2', [1, 2, 11, 12]],
    ['5', [5]],
    ['12-12', [12]],
    ['1-12', [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]],
    [
      [9, 4, 4],
      [4, 9],
    ],
  ])('has months %j as %j', (months, expected) => {
    const read = readKey(
      edited(
        ['characters.json', 'characters[4].months', months],
        ['guidance.json', 'entries[0].statements[1].months', months],
      ),
    );
    expect(read.characters[4]?.months).toEqual(expected);
    expect(read.guidance.get('arundo-donax')?.statements[1]?.months).toEqual(expected);
  });

  test('is frozen all the way down, Maps included', () => {
    const thawed: string[] = [];
    const walk = (value: unknown, place: string): void => {
      if (typeof value !== 'object' || value === null) return;
      if (!Object.isFrozen(value)) thawed.push(place);
      if (value instanceof Map) {
        expect(() => value.set('x', 1)).toThrow(TypeError);
        expect(() => value.delete('x')).toThrow(TypeError);
        expect(() => value.clear()).toThrow(TypeError);
        for (const [name, inner] of value) walk(inner, `${place}/${name}`);
      } else for (const [name, inner] of Object.entries(value)) walk(inner, `${place}/${name}`);
    };
    walk(key, 'key');
    expect(thawed).toEqual([]);
  });

  test('survives being sent to a worker', () => {
    expect(structuredClone(key).taxa[0]?.traits.get('height')).toEqual(key.taxa[0]?.traits.get('height'));
  });

  test.each(['<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '&lt;b&gt;'])(
    'keeps %s as the plain text it is',
    (label) => {
      const read = readKey(
        edited(['characters.json', 'characters[0].states[0].label', label], ['text/es.json', 'text.Height', label]),
      );
      expect(read.characters[0]?.states[0]?.label).toBe(label);
      expect(read.text.get('es')?.get('Height')).toBe(label);
    },
  );
});
