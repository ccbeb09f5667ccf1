import { describe, expect, test } from 'vitest';
import { attempt } from '../../../tests/support/attempts.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { identify, prepareKey } from '../../key/index.ts';
import type { Attempt } from '../types.ts';
import { ENOUGH_READINGS, ownReading } from './own.ts';

const prepared = streambank();
const usual = prepared.key.characters.find(({ id }) => id === 'growth-form')?.misread as number;
const readings = (n: number, wrong: number): Attempt[] =>
  Array.from({ length: n }, (_, i) => {
    const said = i < wrong ? 'tall-cane' : 'grass';
    return attempt(i + 1, 'panicum-virgatum', {
      ...{ kind: 'read', item: 'character:growth-form', character: 'growth-form', options: ['tall-cane', 'grass'] },
      ...{ truth: 'grass', said, right: said === 'grass' },
    });
  });

describe('the key as somebody reads it', () => {
  test('takes enough readings', () => {
    expect(ownReading(prepared, readings(ENOUGH_READINGS - 1, 5))).toBeUndefined();
    expect(ownReading(prepared, readings(ENOUGH_READINGS, 5))?.readings).toBe(ENOUGH_READINGS);
  });

  // The key's share counts as 20 readings, and 20 of 40 went wrong: (20 · usual + 20) / 60.
  test('has the share that was misread, the share of the key counted in, and no other character', () => {
    const own = ownReading(prepared, readings(40, 20));
    expect(own?.observer).toBe('novice');
    expect([...(own?.misread.keys() ?? [])]).toEqual(['growth-form']);
    expect(own?.misread.get('growth-form')).toBeCloseTo((20 * usual + 20) / 60, 12);
  });

  test('trusts nobody to misread less than half of what the key expects', () => {
    expect(ownReading(prepared, readings(2000, 0))?.misread.get('growth-form')).toBeCloseTo(usual / 2, 12);
  });

  test('is less sure after the same answer where that answer is often wrong', () => {
    const { misread } = ownReading(prepared, readings(40, 40)) ?? {};
    const answers = [{ character: 'growth-form', states: ['tall-cane'], sureness: 'sure' as const }];
    const leadOf = (of: typeof prepared) =>
      identify(of, { month: 8, observer: 'novice', answers }).standing[0]?.probability ?? 0;
    expect(leadOf(prepareKey(prepared.key, misread ? { misread } : {}))).toBeLessThan(leadOf(prepared));
  });
});
