import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import type { Character, Drawing, Key, Month, Taxon, Trait } from '../../key/index.ts';
import { parseRange } from '../../key/index.ts';
import { type Figure, portraitOf, sharedScale } from './index.ts';
import { boundsOf } from './pad.ts';
import { beside, besideOf } from './place.ts';

const { key } = streambank();
const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;
const LASTING =
  'plume thin-plume open-spray fingers flat-oats one-sided broom narrow-spike brush cob brown-tufts'.split(' ');
const named = (id: string): Taxon => {
  const taxon = key.taxa.find((one) => one.id === id);
  if (taxon === undefined) throw new Error(`no ${id}`);
  return taxon;
};
const drawn = (taxon: Taxon, month: Month = 8, more = {}) => portraitOf(key, taxon, { month, ...more });
const flowers = (figure: Figure) => figure.parts.filter(({ group }) => group === 'flower');

/** Left, top, right and bottom of some groups, moved as the figure says. */
function bounds({ parts }: Figure, groups: readonly string[]): [number, number, number, number] {
  const all = parts
    .filter(({ group }) => groups.includes(group))
    .map(({ at, marks }): [number, number, number, number] => {
      const [x = 0, y = 0, size = 1] = (at?.match(/-?[\d.]+/g) ?? []).map(Number);
      const [left, top, right, bottom] = boundsOf(marks.map(([, path]) => path));
      return [x + left * size, y + top * size, x + right * size, y + bottom * size];
    });
  const column = (i: 0 | 1 | 2 | 3) => all.map((one) => one[i]);
  return [Math.min(...column(0)), Math.min(...column(1)), Math.max(...column(2)), Math.max(...column(3))];
}

describe.each(key.taxa.map((taxon) => [taxon.id, taxon] as const))('%s', (_, taxon) => {
  test('lies inside its box in every month, and as other plants of its kind', () => {
    const figures = [
      ...([1, 5, 8] as const).map((month) => drawn(taxon, month)),
      ...[1, 2].map((seed) => drawn(taxon, 8, { varied: true, seed })),
    ];
    for (const figure of figures) {
      const [left, top, right, bottom] = bounds(figure, [...new Set(figure.parts.map(({ group }) => group))]);
      const [width, height] = figure.box;
      expect([left >= 0, top >= 0, right <= width, bottom <= height], [left, top, right, bottom].join(' ')).toEqual([
        true,
        true,
        true,
        true,
      ]);
    }
  });

  test('is as tall against what stands beside it as the key says', () => {
    const month = MONTHS.find((one) => drawn(taxon, one).flowering) ?? 7;
    const figure = drawn(taxon, month);
    // Where there is neither stem nor stalk, the length of the leaves says how high it stands.
    if (figure.parts.every(({ group }) => group !== 'stem')) return;
    const [, top] = bounds(figure, ['leaf', 'stem', 'flower']);
    const shown = (figure.ground - top) / figure.metre;
    const size = figure.parts.filter(({ group }) => group === 'size').flatMap(({ marks }) => marks);
    expect(size).toEqual([['scale', besideOf(figure.height as number, figure.metre).path]]);
    expect(shown / (figure.height as number)).toBeGreaterThan(0.95);
    expect(shown / (figure.height as number)).toBeLessThan(1.05);
  });

  test('flowers in its months and in no others', () => {
    const trait = taxon.traits.get('flowering-month');
    const kind = taxon.traits.get('flower-cluster');
    if (kind?.kind !== 'states') return;
    for (const month of [1, 4, 6, 9] as const) {
      const figure = drawn(taxon, month);
      if (trait?.kind !== 'states') {
        expect(figure.flowering).toBeUndefined();
        continue;
      }
      const id = key.characters.find((one) => one.id === 'flowering-month')?.states[month - 1]?.id;
      const usual = trait.states.some(({ state, how }) => state === id && how === 'usually');
      expect(figure.flowering).toBe(usual);
      expect(flowers(figure).length > 0).toBe(usual || figure.inSeed);
    }
  });

  test('keeps dry heads after its flowers, if they are of a kind that lasts, until none are looked for', () => {
    const kind = taxon.traits.get('flower-cluster');
    const trait = taxon.traits.get('flowering-month');
    if (kind?.kind !== 'states' || trait?.kind !== 'states') return;
    const cluster = (kind.states.find(({ how }) => how === 'usually') ?? kind.states[0])?.state ?? '';
    // Heads of grasses, sedges, and cattails: common practice, no source.
    const lasts = LASTING.includes(cluster);
    const usual = trait.states.filter(({ how }) => how === 'usually').map(({ state }) => state);
    const months = key.characters.find(({ id }) => id === 'flowering-month')?.states.map(({ id }) => id) ?? [];
    const last = Math.max(...usual.map((state) => months.indexOf(state) + 1));
    for (const month of MONTHS) {
      const figure = drawn(taxon, month);
      if (month > last) expect(figure.inSeed, String(month)).toBe(lasts && last > 0);
      if (month < 3 || figure.flowering) expect(figure.inSeed, String(month)).toBe(false);
      const hues = flowers(figure).flatMap(({ marks }) => marks.map(([pen]) => pen).filter((pen) => /^wash/.test(pen)));
      if (figure.inSeed) expect(new Set(hues)).toEqual(new Set(['wash-tan']));
    }
  });

  test('is the same whenever it is drawn, and another one for another seed', () => {
    expect(drawn(taxon)).toEqual(drawn(taxon));
    expect(drawn(taxon, 8, { seed: 9 })).toEqual(drawn(taxon, 8, { seed: 1 }));
    const varied = (seed: number) => JSON.stringify(drawn(taxon, 8, { varied: true, seed }).parts);
    expect(varied(4)).toBe(varied(4));
    expect(new Set([1, 2, 3, 4].map(varied)).size).toBeGreaterThan(2);
  });

  test('says of every character whether it is shown, told beside it, or unknown', () => {
    const figure = drawn(taxon);
    const told = new Set([...figure.shown, ...figure.details.map(({ character }) => character.id)]);
    for (const character of key.characters) {
      const trait = taxon.traits.get(character.id);
      if (trait && trait.kind !== 'not-applicable') expect(told, character.id).toContain(character.id);
      else expect(told, character.id).not.toContain(character.id);
      if (trait) expect(figure.unknown).not.toContain(character);
    }
  });
});

test('a person is 1.7 m tall and a hand 18 cm long beside the plant', () => {
  // Sources of both measures stand beside them in figures.ts.
  expect(beside(3)).toMatchObject({ thing: 'person', metres: 1.7 });
  expect(beside(0.4)).toMatchObject({ thing: 'hand', metres: 0.18 });
  const [, top, , sole] = boundsOf([besideOf(0.4, 500).path]);
  expect(Math.abs(sole - top - 90)).toBeLessThan(1);
});

describe('two plants that differ in one trait', () => {
  const source = ['memory'];
  const usual = (state: string): Trait => ({ kind: 'states', states: [{ state, how: 'usually' }], source });
  /** A size in the middle of a class. */
  const sized = ({ unit }: Character, { from = 0, to }: { from?: number; to?: number }): Trait => ({
    kind: 'range',
    range: parseRange(`${Math.max(from, (to ?? from * 1.6) * 0.4) * 1.06}-${(to ?? from * 1.6) * 0.97} ${unit}`),
    source,
  });
  const traitsFor = (character: Character): Trait[] =>
    character.states.map((state) => (character.kind === 'measure' ? sized(character, state) : usual(state.id)));
  /** Everything of a figure that has to do with a character. */
  const seen = (figure: Figure, character: Character) =>
    JSON.stringify([
      figure.shown.includes(character.id) ? figure.parts : [],
      figure.details.filter((one) => one.character === character),
    ]);

  const builds = ['arundo-donax', 'colocasia-esculenta', 'alternanthera-philoxeroides', 'pontederia-crassipes'];
  describe.each(builds)('built like %s', (id) => {
    test.each(key.characters.map((character) => [character.id, character] as const))(
      'look otherwise in %s',
      (_, character) => {
        const base = named(id);
        const looks = traitsFor(character).map((trait) =>
          seen(
            portraitOf(key, { ...base, traits: new Map([...base.traits, [character.id, trait]]) }, { month: 9 }),
            character,
          ),
        );
        expect(new Set(looks).size).toBe(character.states.length);
      },
    );
  });
});

describe('what is not known', () => {
  const without = (id: string, ...characters: string[]): Taxon => ({
    ...named(id),
    traits: new Map([...named(id).traits].filter(([character]) => !characters.includes(character))),
  });
  const labels = (figure: Figure) => figure.unknown.map((one) => one.id);
  const unsure = (figure: Figure) => figure.parts.filter((part) => part.unsure).map(({ group }) => group);

  test('of the leaves, is drawn in broken lines and named', () => {
    const figure = drawn(without('colocasia-esculenta', 'leaf-shape'));
    expect(labels(figure)).toEqual(['leaf-shape']);
    expect(figure.broken).toBe(true);
    expect(new Set(unsure(figure))).toEqual(new Set(['leaf']));
    expect(unsure(drawn(named('colocasia-esculenta')))).toEqual([]);
  });

  test('of what is below the ground, leaves the place empty', () => {
    const picture = {
      drawing: [
        ['ground', 'M0 18L96 18'],
        ['mark', 'M40 18L56 18L48 60Z'],
      ] as Drawing,
      alt: new Map(),
    };
    const album = { states: new Map([['underground/corm', picture]]) };
    const below = (figure: Figure) =>
      figure.parts.filter(({ group }) => group === 'below').flatMap(({ marks }) => marks);
    expect(below(drawn(named('colocasia-esculenta'), 8, { album }))).toEqual([
      ['face', 'M40 18L56 18L48 60Z'],
      ['wash-tan', 'M40 18L56 18L48 60Z'],
    ]);
    const figure = drawn(without('colocasia-esculenta', 'underground'), 8, { album });
    expect(below(figure)).toEqual([]);
    expect(labels(figure)).toEqual(['underground']);
    // Without a drawing of it, it is told in words.
    const told = drawn(named('colocasia-esculenta')).details.map(({ character }) => character.id);
    expect(told).toContain('underground');
  });

  test('of its build, leaves nothing to draw', () => {
    const figure = drawn(without('arundo-donax', 'growth-form', 'leaf-arrangement'));
    expect(figure.parts).toEqual([]);
    expect(figure.details.length).toBeGreaterThan(20);
  });

  test('of when it flowers, is a broken outline', () => {
    const figure = drawn(without('arundo-donax', 'flowering-month'));
    expect(figure.flowering).toBeUndefined();
    expect(flowers(figure).length).toBeGreaterThan(0);
    expect(new Set(unsure(figure))).toEqual(new Set(['flower']));
  });

  test('a character that means nothing for the plant is not called unknown', () => {
    expect(labels(drawn(without('colocasia-esculenta', 'ligule', 'cane-joints')))).toEqual([]);
  });
});

test('a key whose characters have no roles is told in words alone', () => {
  const bare: Key = { ...key, characters: key.characters.map(({ draws: _, ...rest }) => rest) };
  const figure = portraitOf(bare, named('arundo-donax'), { month: 8 });
  expect(figure.parts).toEqual([]);
  expect(figure.shown).toEqual([]);
  const known = [...named('arundo-donax').traits.values()].filter(({ kind }) => kind !== 'not-applicable');
  expect(figure.details).toHaveLength(known.length);
});

test('a form may have another name than the state', () => {
  const characters = key.characters.map((character) =>
    character.id === 'leaf-shape'
      ? { ...character, states: character.states.map((state) => ({ ...state, id: `x-${state.id}`, form: state.id })) }
      : character,
  );
  const taxon = named('colocasia-esculenta');
  const traits = new Map([
    ...taxon.traits,
    ['leaf-shape', { kind: 'states', states: [{ state: 'x-heart', how: 'usually' }], source: ['memory'] } as Trait],
  ]);
  expect(portraitOf({ ...key, characters }, { ...taxon, traits }, { month: 8 }).parts).toEqual(drawn(taxon).parts);
});

describe('plants beside each other', () => {
  test.each(key.lookalikes.map(({ taxa }) => taxa))('%s and %s are drawn at one scale, and find room', (...ids) => {
    const taxa = ids.map((id) => key.taxa.find((one) => one.id === id) as Taxon);
    const scale = sharedScale(key, taxa, { month: 8 });
    const figures = taxa.map((taxon) => portraitOf(key, taxon, { month: 8, scale }));
    const [one, other] = figures.map(({ metre }) => metre);
    expect(one).toBeCloseTo(other ?? 0, 6);
    expect(new Set(figures.map(({ beside }) => beside)).size).toBe(1);
  });
});
