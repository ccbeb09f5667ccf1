// What is timed of building a branching key.
import { buildKey, type Leads, problemOf } from '../../src/engine/couplets/index.ts';
import { compileMatrix, USUAL_RATES } from '../../src/engine/index.ts';
import { specOf, synthetic } from './synthetic.ts';

export interface Built {
  /** Seconds, in a process that has built nothing before. */
  readonly seconds: number;
  readonly effort: number;
  readonly bound: number;
  readonly gap: number;
  readonly exact: boolean;
  readonly depth: number;
  readonly opened: number;
}

/** Builds one key for a made-up matrix: `plain` counts couplets only, otherwise looks, names and wrong turns have a price. */
export function build(taxa: number, characters: number, seed: number, leads: Leads, plain: boolean): Built {
  const matrix = compileMatrix(specOf(synthetic(taxa, characters, seed), USUAL_RATES));
  const problem = problemOf(matrix, {
    floor: 0,
    leads: () => leads,
    ...(plain ? { price: 0, naming: 0, least: 0 } : {}),
  });
  const start = performance.now();
  const { effort, bound, gap, exact, depth, opened } = buildKey(problem);
  return { seconds: (performance.now() - start) / 1000, effort, bound, gap, exact, depth, opened };
}
