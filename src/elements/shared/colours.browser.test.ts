import { fixture } from '@open-wc/testing';
import { html, LitElement } from 'lit';
import { describe, expect, test } from 'vitest';
import { withMedia } from '../../../tests/support/media.ts';
import { shared } from './styles.ts';

class ColourSample extends LitElement {
  static override styles = shared;
}
customElements.define('colour-sample', ColourSample);

/**
 * Contrast ratio of two colours given as `rgb(r, g, b)`: W3C, Web Content Accessibility Guidelines 2.2, definitions of
 * "contrast ratio" and "relative luminance" (the formula from memory).
 */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number).map((value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

test('the formula gives the ends of its scale: 21 for black on white, 1 for a colour on itself', () => {
  expect(contrast('rgb(0, 0, 0)', 'rgb(255, 255, 255)')).toBeCloseTo(21, 9);
  expect(contrast('rgb(12, 34, 56)', 'rgb(12, 34, 56)')).toBe(1);
});

describe.each(['light', 'dark'] as const)('in the %s scheme', (colorScheme) => {
  const text = ['ink', 'reed', 'mud', 'rust'].flatMap((front) => ['paper', 'silt'].map((back) => [front, back, 7]));
  const drawn = [
    ['paper', 'reed', 7],
    ['line', 'paper', 3],
  ];
  test.each([...text, ...drawn] as [string, string, number][])(
    '%s on %s has at least %i to 1',
    async (front, back, least) => {
      const page = await fixture<HTMLElement>(html`<div><colour-sample></colour-sample></div>`);
      const sample = page.querySelector('colour-sample') as HTMLElement;
      page.classList.add('both-schemes');
      await withMedia({ colorScheme }, () => {
        const colour = (token: string) => {
          sample.classList.remove(...sample.classList);
          sample.classList.add(token);
          return getComputedStyle(sample).color;
        };
        expect(contrast(colour(front), colour(back))).toBeGreaterThanOrEqual(least);
      });
    },
  );
});

const tokens = new CSSStyleSheet();
tokens.replaceSync(`.both-schemes { color-scheme: light dark; }
${['ink', 'paper', 'reed', 'silt', 'mud', 'rust', 'line'].map((token) => `colour-sample.${token} { color: var(--${token}) !important; }`).join('\n')}`);
document.adoptedStyleSheets.push(tokens);
