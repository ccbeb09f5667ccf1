import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { leastOf, OWN, properties, take } from './colours.ts';
import { GOOD } from './contrast.ts';

test("the key's own colours are those of its styles, and each can be read at 7 to 1", () => {
  const styles = readFileSync(new URL('../../elements/shared/styles.ts', import.meta.url), 'utf8');
  for (const name of OWN.light.keys()) {
    expect(styles).toContain(`--leadwort-${name}, light-dark(${OWN.light.get(name)}, ${OWN.dark.get(name)})`);
    for (const scheme of ['light', 'dark'] as const) expect(leastOf(name, OWN[scheme])).toBeGreaterThanOrEqual(GOOD);
  }
});

test('a colour that cannot be read is not taken, as text or as ground', () => {
  expect(take(OWN.light, 'ink', '#aaaaaa')).toEqual({ least: expect.any(Number) });
  expect(take(OWN.light, 'paper', '#444444').palette).toBeUndefined();
  expect(take(OWN.light, 'reed', '#003366').palette?.get('reed')).toBe('#003366');
});

test('only what differs is written, with both of its colours', () => {
  expect(properties(OWN).size).toBe(0);
  const light = take(OWN.light, 'reed', '#003366').palette ?? OWN.light;
  expect([...properties({ ...OWN, light })]).toEqual([['--leadwort-reed', 'light-dark(#003366, #a6dcbb)']]);
});
