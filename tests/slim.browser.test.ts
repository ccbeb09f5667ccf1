import type { CSSResultOrNative } from 'lit';
import { expect, test } from 'vitest';
import * as all from '../src/index.ts';
import { slimCss } from './support/slim-text.ts';

/** Each rule as the browser understood it; it keeps spaces in custom properties and conditions, where they mean nothing. */
function rulesOf(css: string): string[] {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  return [...sheet.cssRules].map((rule) => rule.cssText.replace(/([,:]) /g, '$1'));
}

test('a style sheet of an element means the same to a browser when it was made slim', () => {
  const elements = Object.entries(all).filter(([, one]) => typeof one === 'function' && 'styles' in one);
  expect(elements.length).toBeGreaterThan(8);
  for (const [name, element] of elements) {
    for (const style of [(element as unknown as { styles: readonly CSSResultOrNative[] }).styles].flat()) {
      const { cssText } = style as { cssText: string };
      expect(rulesOf(slimCss(cssText)), name).toEqual(rulesOf(cssText));
      expect(rulesOf(cssText).length, name).toBeGreaterThan(0);
    }
  }
});
