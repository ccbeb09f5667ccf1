import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import built from '../../keys/streambank/couplets.json' with { type: 'json' };
import { fiveCouplets, joinedCouplets, NARROW, WIDE } from '../../tests/support/five-couplets.ts';
import { answersOf, streambankWith } from '../../tests/support/streambank.ts';
import type { Character, KeyAnswer, Lead, PreparedKey } from '../key/index.ts';
import { type Fork, type Forks, forkAt, forksOf, weights } from './forks.ts';
import type { Snapshot } from './state.ts';
import { SessionStore } from './store.ts';

const key: PreparedKey = streambankWith(fiveCouplets);
const start = (trail: readonly KeyAnswer[] = []) => new SessionStore(key, { month: 9, trail });
const p = ({ identification }: Snapshot) => {
  const of = new Float64Array(key.key.taxa.length);
  for (const { taxon, probability } of identification.standing) of[key.taxonIndex.get(taxon) as number] = probability;
  return of;
};
const way = ({ walk }: Snapshot) =>
  walk?.path.map(({ fork, lead, open }) => `${fork.number}${open ? '?' : '.'}${lead}`);
const at = ({ walk }: Snapshot) => walk?.at?.number;
const sure = (character: string, ...states: string[]): KeyAnswer => ({ character, states, sureness: 'sure' });

describe('the way through the couplets', () => {
  test('starts at the first couplet, and is the way of every key that has couplets', () => {
    const { snapshot } = start();
    expect(snapshot.way).toBe('couplets');
    expect([way(snapshot), at(snapshot)]).toEqual([[], 1]);
    expect(snapshot.asked).toMatchObject({ number: 1, reason: 'proposed', fork: { number: 1 } });
  });

  test('a lead that is taken is an answer on the trail, of its character with its states', () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 0, sureness: 'think' });
    expect(store.snapshot.trail).toEqual([{ character: 'leaf-shape', states: NARROW, sureness: 'think' }]);
    const { standing } = new SessionStore(key, { month: 9, trail: store.snapshot.trail }).snapshot.identification;
    expect(store.snapshot.identification.standing).toEqual(standing);
    expect([way(store.snapshot), at(store.snapshot)]).toEqual([['1.0'], 2]);
  });

  test('an answer given elsewhere leads through the couplets that ask the same', () => {
    const { snapshot } = start([sure('growth-form', 'tall-cane'), sure('leaf-shape', 'linear')]);
    expect([way(snapshot), at(snapshot)]).toEqual([['1.0', '2.0'], 3]);
    expect(snapshot.asked?.number).toBe(3);
  });

  test('deeper over the same character, the answer is narrowed and the number goes on', () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 1, sureness: 'sure' });
    expect(at(store.snapshot)).toBe(4);
    store.request('lead', { couplet: 4, lead: 1, sureness: 'guess' });
    expect(store.snapshot.trail).toEqual([
      { character: 'leaf-shape', states: ['lance', 'oval', 'arrowhead'], sureness: 'guess' },
    ]);
    expect([way(store.snapshot), at(store.snapshot)]).toEqual([['1.1', '4.1'], 5]);
    expect(store.snapshot.asked?.number).toBe(3);
  });

  test('who cannot tell deeper over the same character keeps what was said before', () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 1, sureness: 'sure' });
    store.request('pass', { couplet: 4 });
    expect(store.snapshot.trail).toEqual([sure('leaf-shape', ...WIDE)]);
    expect(way(store.snapshot)?.[1]).toMatch(/^4\?/);
  });

  test('who cannot tell goes on where more of the weight flows, and both branches stay', () => {
    const store = start();
    store.request('pass', { couplet: 1 });
    const [step] = store.snapshot.walk?.path ?? [];
    expect(step).toMatchObject({ open: true });
    expect(step?.weights[step.lead]).toBe(Math.max(...(step?.weights ?? [])));
    // What is seen later may lead over to the other branch, without a word.
    store.request('answer', { answer: sure('leaf-veins', 'feather') });
    store.request('answer', { answer: sure('growth-form', 'leafy-herb') });
    expect(way(store.snapshot)?.[0]).toBe('1?1');
    expect(store.snapshot.wrong?.parts).not.toBe(1);
  });

  test('an answer that fits both leads keeps both alive', () => {
    const { snapshot } = start([sure('leaf-shape', 'strap', 'lance')]);
    expect(way(snapshot)?.[0]).toMatch(/^1\?/);
  });

  test('a number that was typed chooses the lead that has its class of size', () => {
    const prepared = streambankWith([
      {
        number: 1,
        leads: [
          { character: 'height', states: ['ankle', 'knee', 'waist', 'head'], to: 'typha-latifolia' },
          { character: 'height', states: ['reach', 'above'], to: 'arundo-donax' },
        ],
      },
    ]);
    const store = new SessionStore(prepared, {
      month: 9,
      trail: [{ character: 'height', value: 15, unit: 'ft', sureness: 'sure' }],
    });
    expect(store.snapshot.walk).toMatchObject({ taxa: ['arundo-donax'], at: undefined });
  });

  test('a lead without a character is remembered, and a new plant forgets it', () => {
    const store = start([sure('growth-form', 'tall-cane'), sure('leaf-shape', 'linear')]);
    store.request('lead', { couplet: 3, lead: 1, sureness: 'sure' });
    expect(store.snapshot.walk?.taxa).toHaveLength(2);
    expect(store.snapshot.trail).toHaveLength(2);
    store.request('restart', {});
    expect(store.snapshot).toMatchObject({ turns: [], trail: [] });
    expect(at(store.snapshot)).toBe(1);
  });

  test('an answer taken back brings its couplet back', () => {
    const store = start([sure('leaf-shape', 'linear'), sure('growth-form', 'tall-cane')]);
    store.request('withdraw', { character: 'leaf-shape' });
    expect(at(store.snapshot)).toBe(1);
  });

  test('a character of the way that is asked for is looked at again at its couplet, and what is said then holds', () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 1, sureness: 'sure' });
    store.request('lead', { couplet: 4, lead: 1, sureness: 'sure' });
    store.request('ask', { character: 'leaf-shape' });
    expect(store.snapshot.asked).toMatchObject({ reason: 'changing', number: 1, lead: 1, fork: { number: 1 } });
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    expect(store.snapshot.trail).toEqual([sure('leaf-shape', ...NARROW)]);
    expect([at(store.snapshot), store.snapshot.turns]).toEqual([2, []]);
  });

  test('a character that no couplet of the way asks is asked as a question', () => {
    const store = start();
    store.request('ask', { character: 'sap' });
    expect(store.snapshot.asked).toBeUndefined();
    expect(store.snapshot.question).toMatchObject({ character: 'sap', reason: 'chosen' });
  });

  test('either way can be taken at any time, and no answer is lost', () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    store.request('way', { way: 'free' });
    expect(store.snapshot.asked).toBeUndefined();
    expect(store.snapshot.question).toBeDefined();
    store.request('answer', { answer: sure('growth-form', 'tall-cane') });
    store.request('way', { way: 'couplets' });
    expect(store.snapshot.trail).toHaveLength(2);
    expect(at(store.snapshot)).toBe(3);
  });

  test('a settled verdict ends it, and a person may go on', () => {
    const trail = answersOf('giant-reed').snapshot.trail.filter(({ character }) => character !== 'leaf-shape');
    const store = start(trail);
    expect(store.snapshot.identification.verdict.kind).toBe('settled');
    expect([at(store.snapshot), store.snapshot.asked]).toEqual([1, undefined]);
    store.request('onward', {});
    expect(store.snapshot.asked).toMatchObject({ fork: { number: 1 } });
  });

  test('what is not there is refused, and the session stays as it was', () => {
    const store = start();
    const before = store.snapshot;
    expect(() => store.request('lead', { couplet: 99, lead: 0, sureness: 'sure' })).toThrow('no couplet 99');
    expect(() => store.request('lead', { couplet: 1, lead: 7, sureness: 'sure' })).toThrow('no lead 7');
    expect(() => store.request('pass', { couplet: 0 })).toThrow('no couplet 0');
    expect(() => store.request('walk-from', { couplet: 12 })).toThrow('no couplet 12');
    const without = new SessionStore(streambankWith([]), { month: 9 });
    expect(without.snapshot.way).toBe('free');
    expect(() => without.request('way', { way: 'couplets' })).toThrow('no couplet');
    expect(store.snapshot).toBe(before);
  });
});

describe('the weight of a lead', () => {
  test('is what can be reached below it, a taxon in several places split evenly over them', () => {
    const forks = forksOf(key);
    const four = forkAt(forks, 4);
    const of = p(start().snapshot);
    const one = (id: string) => of[key.taxonIndex.get(id) as number] as number;
    const [left, right] = weights(four, of);
    const twice = one('colocasia-esculenta');
    expect(left).toBeCloseTo(twice / 2, 12);
    expect(right).toBeCloseTo(twice / 2 + one('peltandra-virginica') + one('sagittaria-latifolia'), 12);
  });

  test('is shared where several leads lead to one couplet', () => {
    const joined = forksOf(streambankWith(joinedCouplets));
    const of = new Float64Array(key.key.taxa.length).fill(0.1);
    expect(weights(forkAt(joined, 2), of)).toEqual([0.1, 0.1]);
    expect(weights(forkAt(joined, 1), of)).toEqual([0.1, 0.1]);
  });
});

describe('a wrong turn', () => {
  /** Taken for narrow-leaved at the first couplet; all that is seen later speaks for a plant of the other branch. */
  const astray = () => {
    const store = start();
    store.request('lead', { couplet: 1, lead: 0, sureness: 'think' });
    for (const answer of [
      sure('growth-form', 'leafy-herb'),
      sure('leaf-stalk', 'at-edge'),
      sure('leaf-veins', 'feather'),
      sure('leaf-base', 'pointed-lobes'),
    ])
      store.request('answer', { answer });
    return store;
  };

  test('is told when the branch keeps less than a third or so, with where the ways part and what to look at again', () => {
    const { wrong, walk } = astray().snapshot;
    expect(way(astray().snapshot)?.[0]).toBe('1.0');
    expect(wrong).toMatchObject({ parts: 1, second: 'leaf-shape' });
    expect(walk?.path[0]?.weights[1]).toBeGreaterThan(walk?.path[0]?.weights[0] as number);
    expect(key.key.taxa[wrong?.taxa[0] as number]?.id).toBe('peltandra-virginica');
  });

  test('to carry on from there keeps the answers and walks where the weight is', () => {
    const store = astray();
    const { trail, wrong } = store.snapshot;
    store.request('walk-from', wrong?.on ?? { couplet: 0 });
    expect(store.snapshot.trail).toEqual(trail);
    expect(way(store.snapshot)?.[0]).toBe('1.1');
    expect(store.snapshot.wrong).toBeUndefined();
  });

  test('an answer that is put right leads by itself', () => {
    const store = astray();
    store.request('ask', { character: 'leaf-shape' });
    store.request('lead', { couplet: 1, lead: 1, sureness: 'sure' });
    expect(store.snapshot.wrong).toBeUndefined();
    expect(way(store.snapshot)?.[0]).toBe('1.1');
  });

  test('is not told of a free choice of characters, nor while the branch holds', () => {
    const store = astray();
    store.request('way', { way: 'free' });
    expect(store.snapshot.wrong).toBeUndefined();
    expect(start([sure('leaf-shape', 'linear')]).snapshot.wrong).toBeUndefined();
  });
});

describe('the demonstration’s own couplets', () => {
  const streambank = streambankWith(built.couplets);
  const forks = forksOf(streambank) as Forks;

  test('lead every plant to its own name when it is read as it usually is', () => {
    for (const taxon of streambank.key.taxa) {
      const store = new SessionStore(streambank, { month: 9 });
      store.request('onward', {});
      const usually = (lead: Lead) => {
        const trait = taxon.traits.get(lead.character ?? '');
        const shown = trait?.kind === 'states' ? trait.states.filter(({ how }) => how === 'usually') : [];
        return shown.some(({ state }) => lead.states?.includes(state));
      };
      const index = streambank.taxonIndex.get(taxon.id) as number;
      for (let at = store.snapshot.walk?.at; at; at = store.snapshot.walk?.at) {
        // Where the plant is read either way, or its trait is a size or unknown: any branch below which it comes out.
        const out = at.branches.map(({ places }) => places.has(index));
        const usual = at.branches.findIndex(({ lead }, i) => out[i] && usually(lead));
        const lead = usual >= 0 ? usual : out.indexOf(true);
        expect(lead, `${taxon.id} at couplet ${at.number}`).toBeGreaterThanOrEqual(0);
        store.request('lead', { couplet: at.number, lead, sureness: 'sure' });
      }
      expect(store.snapshot.walk?.taxa, taxon.id).toContain(taxon.id);
    }
  });

  test('are walked from the first on without a gap, whatever is said in whatever way, and no answer is lost', () => {
    const step = fc.record({
      kind: fc.constantFrom('lead', 'pass', 'answer', 'skip', 'way', 'on'),
      n: fc.nat(1000),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 14 }), (steps) => {
        const store = new SessionStore(streambank, { month: 6 });
        for (const { kind, n } of steps) {
          const before = store.snapshot;
          const { asked } = before;
          const couplet = asked?.fork.number ?? 1;
          const character = streambank.key.characters[n % streambank.key.characters.length] as Character;
          const state = character.states[n % character.states.length]?.id ?? '';
          if (kind === 'lead' && asked)
            store.request('lead', { couplet, lead: n % asked.fork.branches.length, sureness: 'think' });
          if (kind === 'pass' && asked) store.request('pass', { couplet });
          if (kind === 'answer') store.request('answer', { answer: sure(character.id, state) });
          if (kind === 'skip') store.request('answer', { answer: { character: character.id, skipped: true } });
          if (kind === 'way') store.request('way', { way: n % 2 === 0 ? 'free' : 'couplets' });
          if (kind === 'on') store.request('walk-from', before.wrong?.on ?? { couplet });
          const { trail, walk } = store.snapshot;
          for (const said of before.trail) expect(trail.map((one) => one.character)).toContain(said.character);
          let next: Fork | undefined = forks.first;
          for (const { fork, lead } of walk?.path ?? []) {
            expect(fork).toBe(next);
            next = fork.branches[lead]?.to;
          }
          expect(walk?.at).toBe(next);
          expect(walk?.at === undefined).toBe((walk?.taxa.length ?? 0) > 0);
        }
      }),
      { numRuns: 60 },
    );
  });
});
