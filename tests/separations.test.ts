// Published separations of look-alikes: a plant described as one source describes it comes out first. The sources and
// what each says are in tests/fixtures/separations.json. The key was made from most of these sources too, so that the
// first group of tests shows that nothing was lost on the way; the second takes the source out of the key.
import { describe, expect, test } from 'vitest';
import {
  type Identification,
  identify,
  type KeyAnswer,
  type PreparedKey,
  prepareKey,
  readInquiry,
  readKey,
} from '../src/key/index.ts';
import separations from './fixtures/separations.json' with { type: 'json' };
import { keyFiles } from './support/key-files.ts';

type Case = (typeof separations.cases)[number];

const { cases } = separations;
const whole = prepareKey(readKey(keyFiles('keys/streambank')));
const title = ({ plant, from, source }: Case) => `${plant} from ${from.join(', ')}, by ${source}`;

const seen = (key: PreparedKey, month: number, answers: readonly object[]): Identification =>
  identify(key, readInquiry(key, { month, answers }));

/** The key without the traits that rest on this source alone, or on it and memory. */
function without(source: string): PreparedKey {
  const files = keyFiles('keys/streambank');
  const content = JSON.parse(files.get('taxa.json') ?? '') as {
    taxa: { traits: Record<string, { source: string[] }> }[];
  };
  for (const taxon of content.taxa) {
    taxon.traits = Object.fromEntries(
      Object.entries(taxon.traits).filter(
        ([, trait]) => !trait.source.includes(source) || trait.source.some((id) => id !== source && id !== 'memory'),
      ),
    );
  }
  return prepareKey(readKey(files.set('taxa.json', JSON.stringify(content))));
}

describe('described as the source describes it, a plant comes out first', () => {
  test.each(cases.map((one) => [title(one), one] as const))('%s', (_, { plant, from, month, answers }) => {
    const { standing, outside, verdict } = seen(whole, month, answers);
    expect(standing[0]?.taxon).toBe(plant);
    expect(standing[0]?.probability).toBeGreaterThan(outside);
    expect(verdict.taxa[0]).toBe(plant);
    for (const rival of from) {
      const chance = standing.find(({ taxon }) => taxon === rival)?.probability;
      expect(chance, rival).toBeLessThan((standing[0]?.probability ?? 0) / 2);
    }
  });

  test('in two dozen plants and more, by as many sources, with little of our own in the answers', () => {
    expect(new Set(cases.map(({ plant }) => plant)).size).toBeGreaterThanOrEqual(24);
    expect(new Set(cases.map(({ sourceId }) => sourceId)).size).toBeGreaterThanOrEqual(24);
    for (const { ours, answers } of cases) {
      for (const id of ours) expect(['growth-form', 'flower-cluster']).toContain(id);
      expect(answers.length).toBeGreaterThan(ours.length);
    }
  });
});

describe('described by a source that the key does without', () => {
  test.each(cases.filter(({ heldOut }) => heldOut).map((one) => [title(one), one] as const))(
    'a plant still comes out first: %s',
    (_, { plant, sourceId, month, answers }) => {
      expect(seen(without(sourceId), month, answers).standing[0]?.taxon).toBe(plant);
    },
  );

  test.each(cases.map((one) => [title(one), one] as const))(
    'no plant is settled as an invader that it is not: %s',
    (_, { plant, sourceId, month, answers }) => {
      const { verdict } = seen(without(sourceId), month, answers);
      const invaders = whole.key.taxa.filter(({ id, status }) => status === 'invasive' && id !== plant);
      if (verdict.kind === 'settled') expect(invaders.map(({ id }) => id)).not.toContain(verdict.taxa[0]);
    },
  );
});

// Facts of the trade: common practice, no source.
describe('what everybody in the trade knows puts the plant first', () => {
  test.each<[string, string, object[]]>([
    [
      'giant reed: 10 to 20 ft tall, hollow jointed canes',
      'arundo-donax',
      [
        { character: 'growth-form', states: ['tall-cane'] },
        { character: 'height', value: 15, unit: 'ft' },
        { character: 'stem-form', states: ['hollow-jointed'] },
      ],
    ],
    [
      'elephant ear: heart-shaped leaves on thick stalks, bulb-like corms, moist shade',
      'colocasia-esculenta',
      [
        { character: 'leaf-shape', states: ['heart'] },
        { character: 'underground', states: ['corm', 'bulb'] },
        { character: 'habitat', states: ['moist-bank'] },
        { character: 'light', states: ['part-shade', 'deep-shade'] },
      ],
    ],
  ])('%s', (_, plant, answers) => {
    const { standing, outside, verdict } = seen(whole, 8, answers);
    expect(standing[0]?.taxon).toBe(plant);
    expect(outside).toBeLessThan(standing[0]?.probability ?? 0);
    // So little is not enough to say so.
    expect(verdict.kind).toBe('open');
  });

  test('and the key says so itself', () => {
    const reed = whole.key.taxa.find(({ id }) => id === 'arundo-donax');
    const height = reed?.traits.get('height');
    if (height?.kind !== 'range' || height.range.form !== 'span') throw new Error('a span was expected');
    // 10 and 20 ft in metres.
    expect(height.range.min ?? height.range.low).toBeLessThanOrEqual(10 * 0.3048);
    expect(height.range.max ?? height.range.high).toBeGreaterThanOrEqual(20 * 0.3048);
    expect(reed?.traits.get('stem-form')).toMatchObject({ states: [{ state: 'hollow-jointed', how: 'usually' }] });
    const ear = whole.key.taxa.find(({ id }) => id === 'colocasia-esculenta');
    for (const [character, state] of [
      ['leaf-shape', 'heart'],
      ['underground', 'corm'],
    ] as const) {
      expect(ear?.traits.get(character)).toMatchObject({ states: expect.arrayContaining([{ state, how: 'usually' }]) });
    }
  });
});

// Two conventions of measuring the ligule stand in the literature, and sources ask for three or four characters together:
// Minnesota Aquatic Invasive Species Research Center; Allen (2017), Royal BC Museum.
describe('no kind of common reed is settled by its ligule', () => {
  /** What the three kinds share, so that a reed it is. */
  const reed: KeyAnswer[] = [
    { character: 'growth-form', states: ['tall-cane'], sureness: 'sure' },
    { character: 'habitat', states: ['waterline'], sureness: 'sure' },
    { character: 'height', value: 3, unit: 'm', sureness: 'sure' },
    { character: 'leaf-length', value: 35, unit: 'cm', sureness: 'sure' },
    { character: 'leaf-width', value: 2.5, unit: 'cm', sureness: 'sure' },
    { character: 'leaf-base-mark', states: ['none'], sureness: 'sure' },
    { character: 'stem-form', states: ['hollow-jointed'], sureness: 'sure' },
    { character: 'flower-cluster', states: ['plume'], sureness: 'sure' },
    { character: 'ligule', states: ['fringed'], sureness: 'sure' },
  ];
  const kinds = whole.key.taxa.filter(({ name }) => name.startsWith('Phragmites australis')).map(({ id }) => id);

  test.each([0.1, 0.2, 0.4, 0.7, 1, 1.5])('of %d mm, however well all else fits', (value) => {
    const { standing, verdict } = seen(whole, 9, [...reed, { character: 'ligule-length', value, unit: 'mm' }]);
    expect(kinds).toHaveLength(3);
    expect(kinds).toContain(standing[0]?.taxon);
    expect(verdict.kind).not.toBe('settled');
  });
});
