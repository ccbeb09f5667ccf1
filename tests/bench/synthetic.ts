// A made-up matrix of any size, the same on every run and in every engine, as codes that another program can read.
import type { Answer, MatrixSpec, RateSpec, TraitSpec } from '../../src/engine/index.ts';
import { drawing } from '../support/drawing.ts';

/** How often a character is misread, whichever it is. */
export const MISREAD = 0.05;
const ASKED = 10;

/** T taxa and C characters; a cell lies at taxon x C + character. */
export interface Synthetic {
  readonly taxa: number;
  readonly characters: number;
  /** Number of states of each character: 2 to 6, 4 on average. */
  readonly states: readonly number[];
  /** The state shown, or the first of two; -1 where nothing is known (a tenth of the cells). */
  readonly first: Int8Array;
  /** The other state of what shows two (a tenth of the cells); else -1. */
  readonly second: Int8Array;
  /** How often the first state is shown: 1, or of two 0.7 or 0.5. */
  readonly share: Float64Array;
  /** Ten characters, and the state that was reported of each for a plant of one of the taxa. */
  readonly asked: readonly number[];
  readonly said: readonly number[];
}

/** Spread of the numbers of states: one in each place is as likely as the next. */
const NUMBERS = [2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 4, 4, 5, 5, 5, 5, 6, 6, 6];

export function synthetic(taxa: number, characters: number, seed = 1): Synthetic {
  const draw = drawing(seed);
  const below = (n: number) => Math.floor(draw() * n);
  const states = Array.from({ length: characters }, () => NUMBERS[below(NUMBERS.length)] as number);
  const first = new Int8Array(taxa * characters);
  const second = new Int8Array(taxa * characters).fill(-1);
  const share = new Float64Array(taxa * characters).fill(1);
  for (let t = 0; t < taxa; t++)
    for (let c = 0; c < characters; c++) {
      const i = t * characters + c;
      const S = states[c] as number;
      const kind = draw();
      first[i] = kind < 0.1 ? -1 : below(S);
      if (kind < 0.9) continue;
      second[i] = ((first[i] as number) + 1 + below(S - 1)) % S;
      share[i] = draw() < 0.5 ? 0.7 : 0.5;
    }
  const asked: number[] = [];
  while (asked.length < Math.min(ASKED, characters)) {
    const c = below(characters);
    if (!asked.includes(c)) asked.push(c);
  }
  const plant = below(taxa);
  const said = asked.map((c) => {
    const S = states[c] as number;
    const i = plant * characters + c;
    const known = first[i] === -1 ? below(S) : ((draw() < (share[i] as number) ? first[i] : second[i]) as number);
    return draw() < MISREAD ? (known + 1 + below(S - 1)) % S : known;
  });
  return { taxa, characters, states, first, second, share, asked, said };
}

/** The same as the engine is given it, without `not in this key` unless told otherwise. */
export function specOf(made: Synthetic, rates: readonly RateSpec[], more: Partial<MatrixSpec> = {}): MatrixSpec {
  const trait = (t: number, c: number): TraitSpec | undefined => {
    const i = t * made.characters + c;
    const first = made.first[i] as number;
    if (first === -1) return undefined;
    const share = made.share[i] as number;
    const p = new Array<number>(made.states[c] as number).fill(0);
    p[first] = share;
    if (made.second[i] !== -1) p[made.second[i] as number] = 1 - share;
    return { kind: 'states', p };
  };
  return {
    taxa: Array.from({ length: made.taxa }, (_, t) => ({ id: `t${t}`, weight: 1, native: true, concern: false })),
    characters: made.states.map((S, c) => ({
      id: `c${c}`,
      kind: 'choice',
      states: Array.from({ length: S }, (_, s) => `s${s}`),
      misread: MISREAD,
      cost: 1,
      proposed: true,
      traits: Array.from({ length: made.taxa }, (_, t) => trait(t, c)),
    })),
    pairs: [],
    outsidePrior: 0,
    rates,
    ...more,
  };
}

/** The same with every fourth character a size of which each taxon has a range of its own, so that no two are alike. */
export function withSizes(spec: MatrixSpec, seed = 2): MatrixSpec {
  const draw = drawing(seed);
  const range = (): TraitSpec => {
    const low = 1 + 40 * draw();
    return { kind: 'range', low, high: low * (1.2 + 2 * draw()) };
  };
  const characters = spec.characters.map((one, c) =>
    c % 4 > 0
      ? one
      : {
          ...one,
          kind: 'measure' as const,
          bounds: one.states.slice(1).map((_, b) => 10 * (b + 1)),
          traits: one.traits.map(range),
        },
  );
  return { ...spec, characters };
}

export const answersOf = ({ asked, said }: Synthetic): Answer[] =>
  asked.map((character, k) => ({ character, states: [said[k] as number], sureness: 'sure' }));

/** The ones to ask next: all that were not. */
export const unasked = ({ characters, asked }: Synthetic): number[] =>
  Array.from({ length: characters }, (_, c) => c).filter((c) => !asked.includes(c));
