// Made-up worlds for trials: everything visible, every part its own, no seasons, unless told otherwise.
import { compileMatrix, type MatrixSpec } from '../../src/engine/index.ts';
import { free, type Nature, type Observer, type TrialSetup } from '../../src/engine/trial/index.ts';

export const natureOf = (spec: MatrixSpec, more: Partial<Nature> = {}): Nature => ({
  matrix: compileMatrix(spec),
  parts: spec.characters.map(({ id }) => id),
  lengths: spec.characters.map(({ kind }) => kind === 'measure'),
  tellable: spec.characters.map(() => 1),
  organs: spec.characters.map(() => undefined),
  present: () => 1,
  ...more,
});

export const RULES = {
  settled: 0.95,
  leaning: 0.7,
  outside: 0.5,
  nativesSettled: 0.01,
  nativesLeaning: 0.2,
  telling: 2,
} as const;

export const setupOf = (nature: Nature, more: Partial<TrialSetup> = {}): TrialSetup => ({
  nature,
  rules: RULES,
  way: free,
  seed: 1,
  ...more,
});

export const person = (more: Partial<Observer> = {}): Observer => ({
  id: 'novice',
  assumed: true,
  told: 1,
  times: 1,
  slips: 'apart',
  size: 1,
  leftOut: false,
  ...more,
});
