import { describe, expect, test, vi } from 'vitest';
import { keyFiles } from '../../tests/support/key-files.ts';
import { type Edit, edited } from '../../tests/support/small-key.ts';
import { BuriedCoupletError, branchingOf } from './branching.ts';
import { printCouplets } from './couplets-file.ts';
import { readKey } from './folder.ts';
import { prepareKey } from './prepared.ts';
import { spreadOf } from './range/index.ts';
import type { Character, Couplet, Key, Lead, Taxon } from './types.ts';

// A busy machine is no fault.
vi.setConfig({ testTimeout: 300_000 });

const streambank = readKey(keyFiles('keys/streambank'));
const bare = (edits: readonly Edit[] = []) => {
  const files = edited(...edits);
  files.delete('couplets.json');
  return readKey(files);
};

/** What plants of a taxon usually show; undefined where that is not known. Read from the traits alone, not the engine. */
function usual(taxon: Taxon, character: Character): ReadonlySet<string> | undefined {
  const trait = taxon.traits.get(character.id);
  if (trait?.kind === 'states') {
    const often = trait.states.filter(({ how }) => how === 'usually');
    return new Set((often.length > 0 ? often : trait.states).map(({ state }) => state));
  }
  if (trait?.kind !== 'range') return undefined;
  const { low, high } = spreadOf(trait.range, character.unit);
  const middle = Math.sqrt(low * high);
  const shown = character.states.find(({ from = 0, to = Number.POSITIVE_INFINITY }) => from <= middle && middle < to);
  return shown && new Set([shown.id]);
}

/** Where one may end who follows every lead that a plant of the taxon may usually seem to fit. */
function endsOf(key: Key, taxon: Taxon): (readonly string[])[] {
  const byNumber = new Map(key.couplets.map((couplet) => [couplet.number, couplet]));
  const characters = new Map(key.characters.map((character) => [character.id, character]));
  const ends: (readonly string[])[] = [];
  const walk = (couplet: Couplet, seen: ReadonlyMap<string, ReadonlySet<string>>): void => {
    for (const { character: id = '', states = [], to } of couplet.leads) {
      const shows = seen.get(id) ?? usual(taxon, characters.get(id) as Character);
      const left = shows && new Set([...shows].filter((state) => states.includes(state)));
      if (left?.size === 0) continue;
      if (typeof to === 'object') ends.push(to);
      else walk(byNumber.get(to) as Couplet, left ? new Map([...seen, [id, left]]) : seen);
    }
  };
  walk(key.couplets[0] as Couplet, new Map());
  return ends;
}

describe('the couplets of the streambank key', () => {
  test.each(streambank.taxa.map((taxon) => [taxon.id, taxon] as const))(
    'lead %s to its name by whatever it usually shows',
    (id, taxon) => {
      const ends = endsOf(streambank, taxon);
      // When the traits have changed: leadwort couplets keys/streambank -o keys/streambank/couplets.json
      expect(ends.length).toBeGreaterThan(0);
      for (const end of ends) expect(end).toContain(id);
    },
  );

  test('ask nobody to dig, nor for what is not asked', () => {
    const characters = new Map(streambank.characters.map((character) => [character.id, character]));
    const used = streambank.couplets.flatMap(({ leads }) =>
      leads.flatMap(({ character, also }) => [character ?? '', ...also.map((said) => said.character)]),
    );
    for (const id of used) {
      const { asked, effort } = characters.get(id) as Character;
      expect({ id, asked, dig: effort === 'dig' }).toEqual({ id, asked: true, dig: false });
    }
  });

  test('name no more than six states in a lead, and stand in the order in which they are read', () => {
    streambank.couplets.forEach(({ number, leads }, i) => {
      expect(number).toBe(i + 1);
      for (const { states = [], to } of leads) {
        expect(states.length).toBeLessThanOrEqual(6);
        if (typeof to === 'number') expect(to).toBeGreaterThan(number);
      }
    });
  });

  test('name no state that none of the plants still in question is known to show', () => {
    const byNumber = new Map(streambank.couplets.map((couplet) => [couplet.number, couplet]));
    const below = ({ leads }: Couplet): Set<string> =>
      new Set(leads.flatMap(({ to }) => (typeof to === 'object' ? [...to] : [...below(byNumber.get(to) as Couplet)])));
    for (const couplet of streambank.couplets) {
      const here = below(couplet);
      const known = (character: string) =>
        streambank.taxa.flatMap(({ id, traits }) => {
          const trait = traits.get(character);
          return here.has(id) && trait?.kind === 'states' ? trait.states.map(({ state }) => state) : [];
        });
      for (const { character = '', states = [] } of couplet.leads) {
        if (streambank.characters.find(({ id }) => id === character)?.kind === 'measure') continue;
        const shown = known(character);
        // Where no plant is known to show any of them, a lead still has to say something.
        if (states.some((state) => shown.includes(state))) for (const state of states) expect(shown).toContain(state);
      }
    }
  });

  test('begin with the kind of plant', () => {
    expect(streambank.couplets[0]?.leads.map(({ character }) => character)).toEqual(['growth-form', 'growth-form']);
  });
});

describe('building', () => {
  const prepared = prepareKey(bare());

  test('of a small key is exact, the same every time, and never under its bound', () => {
    const built = branchingOf(prepared);
    expect(branchingOf(prepared)).toEqual(built);
    expect(built).toMatchObject({ exact: true, couplets: 2, depth: 2, together: [] });
    expect(built.gap).toBeCloseTo(0, 9);
    expect(built.bound).toBeLessThanOrEqual(built.effort);
    expect(
      built.key.flatMap(({ leads }) => leads.flatMap(({ to }) => (typeof to === 'object' ? to : []))).sort(),
    ).toEqual(['arundinaria-gigantea', 'arundo-donax', 'phragmites-australis-subsp-americanus']);
  });

  test('gives couplets that are read again as they were', () => {
    const { key } = branchingOf(prepared);
    const files = edited();
    files.set('couplets.json', printCouplets(key, { $comment: 'built' }));
    expect(readKey(files).couplets).toEqual(key);
  });

  test('for people who misread less expects less effort', () => {
    const effort = (observer: string) => branchingOf(prepared, { observer }).effort;
    const [first, ...others] = [...prepared.key.observers].sort((a, b) => b[1] - a[1]).map(([id]) => effort(id));
    for (const other of others) expect(other).toBeLessThanOrEqual((first as number) + 1e-9);
  });

  test('for a month leaves out what is not there', () => {
    const key = bare([['characters.json', 'characters[0].months', [6]]]);
    const used = (month: 1 | 6) =>
      branchingOf(prepareKey(key), { month }).key.flatMap(({ leads }) => leads.map(({ character }) => character));
    expect(used(1)).not.toContain(key.characters[0]?.id);
  });
});

describe('beneath couplets by hand', () => {
  const lead = (text: string | undefined, state: string, to: Lead['to']): Lead => ({
    ...(text === undefined ? {} : { text }),
    character: 'growth-form',
    states: [state],
    also: [],
    to,
  });
  const canes = ['arundo-donax', 'arundinaria-gigantea'];
  const reed = ['phragmites-australis-subsp-americanus'];
  const under = (...couplets: Couplet[]) => prepareKey({ ...bare(), couplets });
  const top = (to: Lead['to']): Couplet => ({
    number: 7,
    leads: [lead('A cane like a fence', 'tall-cane', to), lead('A grass', 'grass', reed)],
  });

  test('a lead that ends with several taxa goes on to what was built, and the words stay', () => {
    const { key, effort, couplets } = branchingOf(under(top(canes)));
    expect(key[0]?.leads.map(({ text }) => text)).toEqual(['A cane like a fence', 'A grass']);
    expect(key[0]?.leads[1]?.to).toEqual(reed);
    expect(key[0]?.leads[0]?.to).toBe(key[1]?.number);
    expect(key[1]?.number).toBeGreaterThan(7);
    expect(couplets).toBe(key.length);
    expect(effort).toBeGreaterThan(0);
    const ends = key.slice(1).flatMap(({ leads }) => leads.flatMap(({ to }) => (typeof to === 'object' ? to : [])));
    expect(ends).toEqual(expect.arrayContaining(canes));
  });

  test('what was built before is built anew: doing it twice changes nothing', () => {
    const once = branchingOf(under(top(canes)));
    const twice = branchingOf(under(...once.key));
    expect(twice.key).toEqual(once.key);
  });

  test('a key that is all by hand stays as it is', () => {
    const couplets = readKey(edited()).couplets;
    expect(branchingOf(under(...couplets))).toMatchObject({ key: couplets, effort: 0, bound: 0, gap: 0, exact: true });
  });

  test('one by hand below a built one is never lost without a word', () => {
    const built: Couplet = {
      number: 1,
      leads: [lead(undefined, 'tall-cane', 7), lead(undefined, 'grass', reed)],
    };
    const buried = under(built, { ...top(canes), number: 7 });
    expect(() => branchingOf(buried)).toThrow(BuriedCoupletError);
    expect(() => branchingOf(buried)).toThrow('7');
  });
});
