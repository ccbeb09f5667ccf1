import { describe, expect, test } from 'vitest';
import { RULES } from '../../../tests/support/natures.ts';
import { bestOf, type Candidate, type Outcome } from './tune.ts';

const judges = { base: 'novice', careless: 'twice', leftOut: 'none' };
const outcome = (more: Partial<Outcome> = {}): Outcome => ({
  settled: 0.5,
  settledRight: 0.99,
  nativesSettled: 0,
  nativesSettledAtMost: 0.001,
  questions: 10,
  ...more,
});
const candidate = (settled: number, by: Record<string, Partial<Outcome>> = {}): Candidate => ({
  rules: { ...RULES, settled },
  by: new Map(['novice', 'twice', 'none'].map((id) => [id, outcome(by[id])])),
});
const best = (all: readonly Candidate[], limit = 1) => bestOf(all, RULES, judges, limit)?.rules.settled;

describe('the best of some thresholds', () => {
  test('settles most plants right, then asks least, then is nearest to what the key has', () => {
    expect(best([candidate(0.9, { novice: { settled: 0.6 } }), candidate(0.95)])).toBe(0.9);
    expect(best([candidate(0.99), candidate(0.9, { novice: { questions: 9 } })])).toBe(0.9);
    expect(best([candidate(0.9), candidate(0.96), candidate(0.99)])).toBe(0.96);
  });

  test.each<[string, Record<string, Partial<Outcome>>]>([
    ['settles too many plants wrong', { novice: { settled: 0.9, settledRight: 0.94 } }],
    ['settles too many plants wrong for the careless', { novice: { settled: 0.9 }, twice: { settledRight: 0.89 } }],
    ['may settle one native of a hundred as invasive', { novice: { settled: 0.9, nativesSettledAtMost: 0.01 } }],
    ['names too many plants that it does not have', { novice: { settled: 0.9 }, none: { settled: 0.6 } }],
  ])('never %s', (_, by) => {
    expect(best([candidate(0.9, by), candidate(0.95)], 0.5)).toBe(0.95);
    expect(best([candidate(0.9, by)], 0.5)).toBeUndefined();
  });
});
