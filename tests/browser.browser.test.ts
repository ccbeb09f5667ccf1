import { fixture } from '@open-wc/testing';
import { css, html, LitElement } from 'lit';
import { expect, test } from 'vitest';
import { expectAccessible } from './support/a11y.ts';
import { withMedia } from './support/media.ts';

class ReedSample extends LitElement {
  static override styles = css`p { color: rgb(1 2 3); } @media print { p { color: rgb(4 5 6); } }`;
  override render() {
    return html`<p>Leaves arrow-shaped</p>`;
  }
}
customElements.define('reed-sample', ReedSample);

const paragraph = async () => {
  const el = await fixture<ReedSample>(html`<reed-sample></reed-sample>`);
  return { el, p: el.shadowRoot?.querySelector('p') as HTMLElement };
};

test('an element is registered, drawn and styled by an adopted sheet, with no style tag a strict policy would block', async () => {
  const { el, p } = await paragraph();
  expect(getComputedStyle(p).color).toBe('rgb(1, 2, 3)');
  expect(el.shadowRoot?.adoptedStyleSheets).toHaveLength(1);
  expect(el.shadowRoot?.querySelectorAll('style, [style]')).toHaveLength(0);
  await expectAccessible(el);
});

test('the accessibility check fails on a button without a name', async () => {
  const el = await fixture(html`<div><button></button></div>`);
  await expect(expectAccessible(el)).rejects.toThrow(/button-name/);
});

test('paper, forced colours and reduced motion can be tried, and are put back', async () => {
  const { p } = await paragraph();
  await withMedia({ print: true }, () => expect(getComputedStyle(p).color).toBe('rgb(4, 5, 6)'));
  await withMedia({ forcedColors: 'active', reducedMotion: 'reduce', colorScheme: 'dark' }, () => {
    expect(matchMedia('(forced-colors: active)').matches).toBe(true);
    expect(matchMedia('(prefers-reduced-motion: reduce)').matches).toBe(true);
    expect(matchMedia('(prefers-color-scheme: dark)').matches).toBe(true);
  });
  expect(getComputedStyle(p).color).toBe('rgb(1, 2, 3)');
  expect(matchMedia('(forced-colors: active)').matches).toBe(false);
});
