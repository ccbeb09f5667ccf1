// The least cost of a key by trying every key there is: no bounds, no sharing of places but those reached by the same
// answers. Written from the rules alone, to hold the engine to.
import type { KeyCharacter, KeyProblem } from '../../src/engine/couplets/index.ts';

interface Split {
  /** States of each lead. */
  readonly leads: readonly (readonly number[])[];
  readonly cost: number;
}

/** Mean cost of the best key, in glances. */
export function leastOfAll(problem: KeyProblem): number {
  const total = problem.taxa.reduce((sum, { weight }) => sum + weight, 0);
  const known = new Map<string, number>();
  const best = (open: readonly (readonly number[])[]): number => {
    const name = JSON.stringify(open);
    const made = known.get(name);
    if (made !== undefined) return made;
    const here = problem.taxa
      .map(({ weight }, t) => ({
        t,
        weight: problem.characters.reduce((w, character, c) => w * part(character, t, open[c] as number[]), weight),
      }))
      .filter(({ weight }) => weight > 0);
    let least = 0;
    if (here.length > 1) {
      const applying = problem.characters.map((character) => here.every(({ t }) => character.shares[t] !== 'absent'));
      const of = (wanted: boolean) =>
        problem.characters.flatMap((character, c) =>
          applying[c] === wanted
            ? splits(problem, character, here, open[c] as number[]).map((split) => ({ c, ...split }))
            : [],
        );
      const strict = of(true);
      const all = strict.length > 0 ? strict : of(false);
      if (all.length > 0)
        least = Math.min(
          ...all.map(({ c, leads, cost }) =>
            leads.reduce((sum, states) => sum + best(open.map((old, k) => (k === c ? states : old))), cost),
          ),
        );
    }
    known.set(name, least);
    return least;
  };
  return best(problem.characters.map(({ states }) => Array.from({ length: states }, (_, s) => s))) / total;
}

const sharesOf = ({ shares, states }: KeyCharacter, t: number): readonly number[] => {
  const p = shares[t] as readonly number[] | 'absent';
  return p === 'absent' ? new Array<number>(states).fill(1 / states) : p;
};
const part = (character: KeyCharacter, t: number, states: readonly number[]): number => {
  const p = sharesOf(character, t);
  return states.length === character.states ? 1 : states.reduce((sum, s) => sum + (p[s] as number), 0);
};
const bits = (weights: readonly number[]): number => {
  const total = weights.reduce((a, b) => a + b, 0);
  return weights.reduce((sum, w) => (w > 0 ? sum - w * Math.log2(w / total) : sum), 0);
};

function splits(
  { price, naming, least }: KeyProblem,
  character: KeyCharacter,
  here: readonly { readonly t: number; readonly weight: number }[],
  open: readonly number[],
): Split[] {
  const share = (t: number, s: number) => (sharesOf(character, t)[s] as number) / part(character, t, open);
  const mass = (s: number) => here.reduce((sum, { t, weight }) => sum + weight * share(t, s), 0);
  const shown = open.filter((s) => mass(s) > 0);
  const weight = here.reduce((sum, one) => sum + one.weight, 0);
  return ways(character, shown)
    .filter((leads) => {
      const goes = here.map(({ t }) => leads.map((states) => states.some((s) => share(t, s) > 0)));
      if (goes.every((into) => into.every(Boolean))) return false;
      if (goes.some((a) => goes.some((b) => a.every((into, k) => !(into && b[k]))))) return true;
      const into = (t: number, states: readonly number[]) => states.reduce((sum, s) => sum + share(t, s), 0);
      const told =
        bits(leads.map((states) => states.reduce((sum, s) => sum + mass(s), 0))) -
        here.reduce((sum, { t, weight: w }) => sum + w * bits(leads.map((states) => into(t, states))), 0);
      return told >= least * weight;
    })
    .map((leads) => {
      const named = leads.length > 2 ? shown.length - 2 : Math.min(...leads.map((states) => states.length)) - 1;
      let astray = 0;
      for (const from of shown) {
        const own = leads.find((states) => states.includes(from)) as readonly number[];
        for (let to = 0; to < character.states; to++) {
          if (own.includes(to)) continue;
          const strays = here.reduce(
            (sum, { t, weight: w }) => sum + w * share(t, from) * (character.strays?.[t]?.[to] ?? 0),
            0,
          );
          const slips = mass(from) * character.misread * (character.confused[from]?.[to] as number);
          astray += (strays + slips) * (shown.includes(to) ? 1 : 0.5);
        }
      }
      return { leads, cost: weight * (character.cost + naming * named) + price * astray };
    });
}

/** Every way to put these states in leads. */
function ways({ leads, ordered }: KeyCharacter, shown: readonly number[]): (readonly number[])[][] {
  const [first, ...rest] = shown;
  if (first === undefined || rest.length === 0) return [];
  const out: (readonly number[])[][] = [];
  if (leads !== 'each')
    for (let way = 0; way < 2 ** rest.length - 1; way++) {
      const inOther = (_: number, k: number) => (way & (1 << k)) === 0;
      const one = [first, ...rest.filter((s, k) => !inOther(s, k))];
      const other = rest.filter(inOther);
      if (!ordered || Math.max(...one) < Math.min(...other)) out.push([one, other]);
    }
  if (leads === 'each' || (leads === 'either' && shown.length > 2)) out.push(shown.map((s) => [s]));
  return out;
}
