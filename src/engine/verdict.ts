// What may be said: settled, leaning, open, or outside the key.
import type { Matrix } from './matrix.ts';
import type { Posterior } from './standing.ts';
import { type Rival, rivalsOf } from './telling.ts';

/** See the key's thresholds: probabilities, but `telling`, which is a likelihood ratio. */
export interface VerdictRules {
  readonly settled: number;
  readonly leaning: number;
  readonly outside: number;
  readonly nativesSettled: number;
  readonly nativesLeaning: number;
  readonly telling: number;
}

export type VerdictKind = 'settled' | 'leaning' | 'open' | 'outside';

/** Why a leading taxon is not settled yet; empty when it is. */
export type Doubt = 'weight' | 'look-alikes' | 'natives';

export interface Verdict {
  readonly kind: VerdictKind;
  /** Indices, likeliest first: the one settled; the one leaned to and its rivals; those that share an open verdict; none outside. */
  readonly taxa: readonly number[];
  /** Probability that the plant is one of concern. */
  readonly concern: number;
  /** Probability that the plant is none in the key. */
  readonly outside: number;
  /** Probability of all natives together. */
  readonly natives: number;
  readonly doubts: readonly Doubt[];
  /** The look-alikes of the leading taxon and how each was put to the test. */
  readonly rivals: readonly Rival[];
}

/** An open verdict names the likeliest taxa that together hold this share, but not more than a handful. */
const SHARED = 0.8;
const HANDFUL = 5;

/**
 * Errors are not equal: naming a native as an invader is the one that must not be made. So a plant of concern is settled
 * only while all natives together keep less than `nativesSettled`, and whatever leads is settled only once each named
 * look-alike has been put to the telling answers it needs.
 */
export function verdictOf(from: Posterior, rules: VerdictRules): Verdict {
  const { matrix, p } = from;
  const order = rank(matrix, p);
  const lead = order[0] as number;
  const weight = p[lead] as number;
  const sum = (wanted: (taxon: { native: boolean; concern: boolean }) => boolean) =>
    matrix.spec.taxa.reduce((total, taxon, t) => total + (wanted(taxon) ? (p[t] as number) : 0), 0);
  const outside = p[matrix.outside] as number;
  const natives = sum((taxon) => taxon.native);
  const ofConcern = matrix.spec.taxa[lead]?.concern === true;
  const rivals = rivalsOf(from, lead, rules.telling);
  const doubts: Doubt[] = [];
  if (weight < rules.settled) doubts.push('weight');
  if (rivals.some((rival) => rival.told.length < rival.needs)) doubts.push('look-alikes');
  if (ofConcern && natives >= rules.nativesSettled) doubts.push('natives');
  const facts = { concern: sum((taxon) => taxon.concern), outside, natives, doubts, rivals };
  if (outside >= rules.outside) return { kind: 'outside', taxa: [], ...facts };
  if (doubts.length === 0) return { kind: 'settled', taxa: [lead], ...facts };
  if (weight >= rules.leaning && !(ofConcern && natives >= rules.nativesLeaning)) {
    const untested = new Set(rivals.filter((rival) => rival.told.length < rival.needs).map((rival) => rival.taxon));
    return {
      kind: 'leaning',
      taxa: [lead, ...order.slice(1).filter((t) => untested.has(t))].slice(0, HANDFUL),
      ...facts,
    };
  }
  return { kind: 'open', taxa: sharing(order, p, 1 - outside), ...facts };
}

/** Taxa from the likeliest to the least likely; ties in the key's own order. */
export function rank(matrix: Matrix, p: Float64Array): number[] {
  return matrix.spec.taxa.map((_, t) => t).sort((a, b) => (p[b] as number) - (p[a] as number) || a - b);
}

function sharing(order: readonly number[], p: Float64Array, inside: number): number[] {
  const taxa: number[] = [];
  let held = 0;
  for (const t of order) {
    if (taxa.length === HANDFUL || held >= SHARED * inside) break;
    taxa.push(t);
    held += p[t] as number;
  }
  return taxa;
}
