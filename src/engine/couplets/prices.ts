// The least that asking a character can cost, wherever in the key it is asked and however it is split.
import { binaryEntropy } from './count.ts';
import type { KeyCharacter, KeyProblem } from './problem.ts';

/** How finely the shares of the two leads are stepped through. */
const STEPS = 200;

export interface Prices {
  /** Of one couplet. */
  readonly look: number;
  /** Of each bit that it tells, while three or more states are left. */
  readonly bit: number;
  /** The same with two states left, when a slip into any other leads astray half the time. */
  readonly lastBit: number;
}

/** Least costs in glances of asking a character in two leads; see `leads` for more. */
export function pricesOf({ price }: KeyProblem, { cost, misread, confused, states }: KeyCharacter): Prices {
  const astray = price * misread;
  if (astray === 0) return { look: cost, bit: cost, lastBit: cost };
  let look = Number.POSITIVE_INFINITY;
  let bit = Number.POSITIVE_INFINITY;
  let lastBit = Number.POSITIVE_INFINITY;
  for (let a = 0; a < states; a++)
    for (let b = a + 1; b < states; b++) {
      const one = confused[a] as readonly number[];
      const other = confused[b] as readonly number[];
      look = Math.min(look, cost + astray * Math.min(one[b] as number, other[a] as number));
      bit = Math.min(
        bit,
        leastRatio((x) => {
          let slips = x * (one[b] as number) + (1 - x) * (other[a] as number);
          for (let s = 0; s < states; s++)
            if (s !== a && s !== b) slips += Math.min(x * (one[s] as number), (1 - x) * (other[s] as number));
          return cost + astray * slips;
        }),
      );
      lastBit = Math.min(
        lastBit,
        leastRatio((x) => cost + astray * (0.5 + 0.5 * (x * (one[b] as number) + (1 - x) * (other[a] as number)))),
      );
    }
  return { look, bit: Math.max(bit, look), lastBit: Math.max(lastBit, look) };
}

/** The same in a lead for each state, when every slip is at least half astray: of a couplet, whatever it tells. */
export const priceOfEach = ({ price }: KeyProblem, { cost, misread }: KeyCharacter): number =>
  cost + price * misread * 0.5;

/**
 * Least of concave(x) / entropy(x) over all shares x of one lead, from below: between two steps a concave function is no
 * less than at the lower of the two, and the entropy no more than at the one nearer to a half.
 */
function leastRatio(concave: (x: number) => number): number {
  let least = Number.POSITIVE_INFINITY;
  let before = concave(0);
  for (let k = 1; k <= STEPS; k++) {
    const x = k / STEPS;
    const now = concave(x);
    const most = binaryEntropy(x <= 0.5 ? x : x - 1 / STEPS);
    if (most > 0) least = Math.min(least, Math.min(before, now) / most);
    before = now;
  }
  return least;
}
