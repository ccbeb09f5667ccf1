// A dozen drawings as pixels: what is changed in a pen, a blade or a plume shows here before anybody else sees it. Look at
// the new picture, then take it over with `npx vitest run --project chromium tests/snapshots --update`. No letter is
// among them: fonts differ from machine to machine.
import { fixture } from '@open-wc/testing';
import { html, render } from 'lit';
import { describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { SKETCHES } from '../src/drawing/sketches/index.ts';
import '../src/elements/portrait/define.ts';
import { drawingStyles } from '../src/elements/shared/drawing.styles.ts';
import { renderDrawing } from '../src/elements/shared/picture.ts';
import { shared } from '../src/elements/shared/styles.ts';
import type { Drawing } from '../src/key/index.ts';
import { held } from './support/held.ts';
import { withMedia } from './support/media.ts';
import { answered } from './support/streambank.ts';

/** The drawing, 240 px wide, on paper. */
async function shown(drawing: Drawing) {
  const host = await fixture<HTMLDivElement>(html`<div></div>`);
  const root = host.attachShadow({ mode: 'open' });
  const own = new CSSStyleSheet();
  own.replaceSync(':host { inline-size: 240px; background: var(--paper); }');
  root.adoptedStyleSheets = [shared.styleSheet as CSSStyleSheet, drawingStyles.styleSheet as CSSStyleSheet, own];
  render(renderDrawing(drawing), root);
  return page.elementLocator(host);
}
/** Pixels may differ in how an edge is smoothed, from one Chromium to the next. */
const loose = {
  comparatorName: 'pixelmatch',
  comparatorOptions: { threshold: 0.2, allowedMismatchedPixelRatio: 0.002 },
} as const;

describe('answers look as they did when somebody last looked at them', () => {
  test.each([
    ['growth-form', 'tall-cane'],
    ['growth-form', 'floating'],
    ['flower-cluster', 'plume'],
    ['flower-cluster', 'hood'],
    ['leaf-shape', 'arrowhead'],
    ['leaf-stalk', 'at-edge'],
    ['leaf-stalk', 'underneath'],
    ['stem-form', 'hollow-jointed'],
  ])('%s: %s', async (role, form) => {
    const sketch = SKETCHES.get(role)?.sketch({ form });
    await expect(await shown(sketch?.drawing ?? [])).toMatchScreenshot(`${role}-${form}`, loose);
  });

  test('in a person’s own few colors', async () => {
    const sketch = SKETCHES.get('leaf-stalk')?.sketch({ form: 'underneath' });
    await withMedia({ forcedColors: 'active' }, async () => {
      await expect(await shown(sketch?.drawing ?? [])).toMatchScreenshot('underneath-forced-colors', loose);
    });
  });
});

describe('plants look as they did when somebody last looked at them', () => {
  test.each(['arundo-donax', 'colocasia-esculenta', 'nelumbo-lutea'])('%s in August', async (id) => {
    const part = await held(html`<leadwort-portrait taxon=${id} month="8" bare></leadwort-portrait>`, answered({}, 8));
    await expect(page.elementLocator(part.find('.scene svg'))).toMatchScreenshot(id, loose);
  });
});
