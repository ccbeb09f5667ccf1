import { expect, test } from 'vitest';
import { contrast, luminance } from './contrast.ts';

test('black on white is 21 to 1, and a colour on itself 1 to 1 (WCAG 2.2, contrast ratio: from 1 to 21)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#17492f', '#17492f')).toBe(1);
});

test('the greys at the border of AA and AAA fall on the right side (common practice, from memory: #767676 and #595959)', () => {
  expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  expect(contrast('#595959', '#ffffff')).toBeGreaterThanOrEqual(7);
  expect(contrast('#5a5a5a', '#ffffff')).toBeLessThan(7);
});

test('red, green and blue weigh as WCAG has them (0.2126, 0.7152, 0.0722)', () => {
  expect(['#ff0000', '#00ff00', '#0000ff'].map(luminance)).toEqual([0.2126, 0.7152, 0.0722]);
});
