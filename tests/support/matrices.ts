// Made-up matrices and answers for property tests: every kind of character, trait, mix-up and answer the engine takes.
import fc from 'fast-check';
import {
  type Answer,
  type CharacterSpec,
  type MatrixSpec,
  type TraitSpec,
  USUAL_RATES,
} from '../../src/engine/index.ts';

export interface Answered {
  readonly spec: MatrixSpec;
  readonly answers: readonly Answer[];
  /** How many times a novice's slips the observer makes. */
  readonly observer: number;
}

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((x) => x / 100);
export const sureness = () => fc.constantFrom('sure' as const, 'think' as const, 'guess' as const);
export const observer = () => fc.constantFrom(0.25, 0.5, 1, 2, 3);
/** Sizes from a hundredth to ten thousand, evenly on the logarithm. */
export const size = () => fc.integer({ min: -460, max: 920 }).map((x) => Math.exp(x / 100));

/** Shares of states, zeros among them, summing to 1. */
export const shares = (states: number): fc.Arbitrary<number[]> =>
  fc
    .array(fc.integer({ min: 0, max: 4 }), { minLength: states, maxLength: states })
    .filter((parts) => parts.some((x) => x > 0))
    .map((parts) => parts.map((x) => x / parts.reduce((a, b) => a + b, 0)));

const range = (): fc.Arbitrary<TraitSpec> =>
  fc
    .record({
      low: size(),
      width: hundredths(100, 800),
      less: fc.option(hundredths(100, 300), { nil: undefined }),
      more: fc.option(hundredths(100, 300), { nil: undefined }),
    })
    .map(({ low, width, less, more }) => ({
      kind: 'range' as const,
      low,
      high: low * width,
      ...(less === undefined ? {} : { min: low / less }),
      ...(more === undefined ? {} : { max: low * width * more }),
    }));

/** Named mix-ups such that none of a state's shares add up to more than 1. */
export const mixups = (states: number): fc.Arbitrary<{ a: number; b: number; share: number }[]> => {
  const pairs = Array.from({ length: states }, (_, a) => Array.from({ length: a }, (_, b) => ({ a, b }))).flat();
  return fc.array(fc.tuple(fc.constantFrom(...pairs), hundredths(5, 100)), { maxLength: 4 }).map((wanted) => {
    const left = new Array<number>(states).fill(1);
    const made = new Map<string, { a: number; b: number; share: number }>();
    for (const [{ a, b }, wish] of wanted) {
      const share = Math.min(wish, left[a] as number, left[b] as number);
      if (share <= 0 || made.has(`${a} ${b}`)) continue;
      left[a] = (left[a] as number) - share;
      left[b] = (left[b] as number) - share;
      made.set(`${a} ${b}`, { a, b, share });
    }
    return [...made.values()];
  });
};

/** One character of `taxa` taxa; `unknown` and `absent` traits among the others. */
export const character = (
  taxa: number,
  kinds: readonly CharacterSpec['kind'][] = ['choice', 'scale', 'measure'],
): fc.Arbitrary<CharacterSpec> =>
  fc.tuple(fc.constantFrom(...kinds), fc.integer({ min: 2, max: 5 })).chain(([kind, states]) => {
    const known: fc.Arbitrary<TraitSpec> =
      kind === 'measure' ? range() : shares(states).map((p) => ({ kind: 'states' as const, p }));
    const trait = fc.oneof(
      { weight: 8, arbitrary: known },
      { weight: 1, arbitrary: fc.constant({ kind: 'absent' as const }) },
      { weight: 1, arbitrary: fc.constant(undefined) },
    );
    return fc
      .record({
        misread: hundredths(1, 40),
        mixups: mixups(states),
        cost: fc.integer({ min: 1, max: 6 }),
        first: size(),
        steps: fc.array(hundredths(120, 400), { minLength: states - 2, maxLength: states - 2 }),
        traits: fc.array(trait, { minLength: taxa, maxLength: taxa }),
      })
      .map(({ first, steps, ...rest }) => ({
        ...rest,
        id: kind,
        kind,
        states: Array.from({ length: states }, (_, s) => `s${s}`),
        ...(kind === 'measure'
          ? { bounds: [1, ...steps].map((_, b) => steps.slice(0, b).reduce((bound, step) => bound * step, first)) }
          : {}),
        proposed: true,
      }));
  });

/** A matrix with everything in it: natives, plants of concern, look-alikes, several rates, `not in this key` with and without kin. */
export const matrix = (kinds?: readonly CharacterSpec['kind'][]): fc.Arbitrary<MatrixSpec> =>
  fc.integer({ min: 2, max: 6 }).chain((T) =>
    fc
      .record({
        taxa: fc.array(fc.record({ weight: fc.integer({ min: 1, max: 9 }), native: fc.boolean() }), {
          minLength: T,
          maxLength: T,
        }),
        characters: fc.array(character(T, kinds), { minLength: 1, maxLength: 5 }),
        pairs: fc.uniqueArray(
          fc
            .tuple(fc.nat({ max: T - 1 }), fc.nat({ max: T - 1 }), fc.integer({ min: 1, max: 2 }))
            .filter(([a, b]) => a < b)
            .map(([a, b, needs]) => ({ a, b, needs })),
          { maxLength: 2, selector: ({ a, b }) => `${a} ${b}` },
        ),
        outsidePrior: fc.constantFrom(0, 0.02, 0.2),
        kin: fc.constantFrom(undefined, { share: 0.4, differs: 0.35 }, { share: 1, differs: 0.1 }),
      })
      .map(({ taxa, characters, kin, ...rest }) => ({
        ...rest,
        ...(kin ? { kin } : {}),
        taxa: taxa.map((taxon, t) => ({ ...taxon, id: `t${t}`, concern: !taxon.native })),
        characters: characters.map((one, c) => ({ ...one, id: `${one.kind} ${c}` })),
        rates: USUAL_RATES,
      })),
  );

/** What somebody may say of character number `c`. */
export const answer = (character: number, of: CharacterSpec): fc.Arbitrary<Answer> => {
  const ticked = fc.record({
    character: fc.constant(character),
    states: fc.subarray(
      of.states.map((_, s) => s),
      { minLength: 1 },
    ),
    sureness: sureness(),
  });
  if (of.kind !== 'measure') return ticked;
  return fc.oneof(ticked, fc.record({ character: fc.constant(character), value: size(), sureness: sureness() }));
};

/** A matrix, and answers to some of its characters in any order. */
export const answered = (kinds?: readonly CharacterSpec['kind'][]): fc.Arbitrary<Answered> =>
  matrix(kinds).chain((spec) =>
    fc.record({
      spec: fc.constant(spec),
      answers: fc
        .tuple(...spec.characters.map((one, c) => fc.option(answer(c, one), { nil: undefined })))
        .map((all) => all.filter((one) => one !== undefined)),
      observer: observer(),
    }),
  );
