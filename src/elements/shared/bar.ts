// A probability as a thin bar: a picture beside its words, never instead of them.
import { css, html, svg, type TemplateResult } from 'lit';

export function bar(probability: number): TemplateResult {
  const width = Math.round(probability * 1000) / 10;
  return html`<svg class="bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">${svg`<rect class="bed" width="100" height="4" /><rect class="held" width=${width} height="4" />`}</svg>`;
}

export const barStyles = css`
  .bar { display: block; inline-size: 100%; block-size: 0.4em; border-radius: 0.2em; overflow: hidden; }
  .bar .bed { fill: var(--silt); }
  .bar .held { fill: var(--reed); }
  :host(:dir(rtl)) .bar { transform: scaleX(-1); }
  @media (forced-colors: active) {
    .bar { outline: 1px solid CanvasText; forced-color-adjust: none; }
    .bar .bed { fill: Canvas; }
    .bar .held { fill: CanvasText; }
  }
`;
