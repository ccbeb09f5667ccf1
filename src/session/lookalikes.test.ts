import { describe, expect, test } from 'vitest';
import { answered, streambank } from '../../tests/support/streambank.ts';
import { isOpen, lookalikesOf } from './lookalikes.ts';

const REED = 'arundo-donax';

describe('the look-alikes of a plant', () => {
  test('are those of the key, whichever of the two the pair names first', () => {
    const { snapshot } = answered({});
    for (const taxon of streambank().key.taxa) {
      const named = streambank()
        .key.lookalikes.filter((pair) => pair.taxa.includes(taxon.id))
        .map(({ taxa: [a, b] }) => (a === taxon.id ? b : a));
      expect(
        lookalikesOf(snapshot, taxon.id)
          .map((one) => one.taxon.id)
          .sort(),
      ).toEqual(named.sort());
    }
  });

  test('are untested before any answer, and those not tested come first after some', () => {
    expect(lookalikesOf(answered({}).snapshot, REED).some((one) => one.tested)).toBe(false);
    const { snapshot } = answered({ 'growth-form': 'tall-cane', height: 'above', 'leaf-base-mark': 'wedge' });
    expect(snapshot.identification.standing[0]?.taxon).toBe(REED);
    const tested = lookalikesOf(snapshot, REED).map((one) => one.tested);
    expect(new Set(tested)).toEqual(new Set([true, false]));
    expect(tested).toEqual(tested.toSorted((a, b) => Number(a) - Number(b)));
  });

  test('count as tested only for the plant that leads', () => {
    const { snapshot } = answered({ 'growth-form': 'tall-cane', height: 'above', 'leaf-base-mark': 'wedge' });
    const other = snapshot.identification.standing[1]?.taxon as string;
    expect(lookalikesOf(snapshot, other).some((one) => one.tested)).toBe(false);
  });

  test('offer what can still be looked at before what was answered, and never offer digging', () => {
    const checks = (answers: Record<string, string>) =>
      lookalikesOf(answered(answers).snapshot, REED).flatMap((one) => one.checks);
    expect(checks({}).filter(isOpen).length).toBeGreaterThan(0);
    expect(
      checks({ 'leaf-base-mark': 'wedge' })
        .filter(isOpen)
        .map((one) => one.feature.character.id),
    ).not.toContain('leaf-base-mark');
    for (const taxon of streambank().key.taxa)
      for (const { checks } of lookalikesOf(answered({}, 1).snapshot, taxon.id)) {
        const open = checks.map(isOpen);
        expect(open).toEqual(open.toSorted((a, b) => Number(b) - Number(a)));
        for (const check of checks.filter(isOpen)) {
          expect(check.feature.character.effort).not.toBe('dig');
          expect(check.feature.character.months).toContain(1);
        }
      }
  });

  test('what natives keep together is no more than all and no less than the likeliest of them', () => {
    const { natives, identification } = answered({ 'growth-form': 'tall-cane', height: 'reach' }).snapshot;
    const native = (id: string) => streambank().key.taxa.find((taxon) => taxon.id === id)?.status === 'native';
    const most = identification.standing.find((one) => native(one.taxon))?.probability as number;
    expect(natives).toBeGreaterThanOrEqual(most);
    expect(natives + identification.concern + identification.outside).toBeLessThanOrEqual(1 + 1e-9);
  });
});
