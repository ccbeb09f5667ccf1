// The pens: what they look like on paper by day, in the dark, in a person's own few colours, and in print.
import { type CSSResult, css, unsafeCSS } from 'lit';
import type { Hue } from '../../key/index.ts';

const HUES: Readonly<Record<Hue, string>> = {
  green: '9cc48d',
  'blue-green': '9cc4b8',
  'yellow-green': 'cfdc8e',
  'dark-green': '5f8f62',
  white: 'fff',
  yellow: 'f3d45c',
  orange: 'e8a05a',
  red: 'cf6b5a',
  pink: 'e9b3bd',
  blue: '8fa8dc',
  purple: 'a98cc9',
  brown: 'a9825a',
  tan: 'd8c39a',
  silver: 'd9dadb',
};
const hues: CSSResult = unsafeCSS(
  Object.entries(HUES)
    .map(([hue, colour]) => `.wash-${hue}, .swatch-${hue} { --hue: #${colour}; }`)
    .join('\n'),
);

/** For everything that shows a drawing or a picture; after `shared`, whose colours it takes. */
export const drawingStyles = css`
  .picture { position: relative; display: block; aspect-ratio: 1; overflow: hidden; border-radius: calc(var(--radius) * 0.6); background: var(--paper); color: var(--ink); }
  .photo { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; object-fit: cover; }
  .photo[hidden] { display: none; }
  .credit { display: block; font-size: 0.8em; color: var(--mud); }

  .drawing { display: block; inline-size: 100%; block-size: auto; fill: none; stroke-linecap: round; stroke-linejoin: round; }
  ${hues}
  [class^='wash-'] { fill: color-mix(in srgb, var(--hue) 55%, light-dark(var(--hue), var(--paper))); }
  [class^='swatch-'] { fill: var(--hue); }
  .drawing .face { fill: var(--paper); stroke: var(--ink); stroke-width: 2; }
  .drawing .line { stroke: var(--ink); stroke-width: 2; }
  .drawing .fine { stroke: var(--ink); stroke-width: 1; }
  .drawing .solid { fill: var(--ink); }
  .drawing .tint { fill: light-dark(#e2d8bf, #2f3832); }
  .drawing .scale { fill: light-dark(#bdb59b, #565e55); }
  .drawing .water, .drawing .ground { stroke: light-dark(#4d6f7d, #8fb3c2); stroke-width: 1.5; }
  .drawing .ground { stroke-width: 2; }
  .drawing .mark, .drawing .trace { stroke: var(--reed); stroke-width: 2.5; }
  .drawing .mark { fill: color-mix(in srgb, var(--reed) 32%, transparent); }
  .drawing .trace { stroke-width: 3; }

  @media (forced-colors: active) {
    .drawing { forced-color-adjust: none; }
    .picture { border: 1px solid; }
    [class^='wash-'], .drawing .tint { fill: none; }
    [class^='swatch-'] { stroke: CanvasText; stroke-width: 1; }
    .drawing .face { fill: Canvas; }
    .drawing :is(.face, .line, .fine, .water, .ground) { stroke: CanvasText; }
    .drawing .solid { fill: CanvasText; }
    .drawing .scale { fill: GrayText; }
    .drawing :is(.mark, .trace) { stroke: Highlight; }
    .drawing .mark { fill: Canvas; }
  }
  @media print {
    .picture { background: none; }
    [class^='wash-'] { fill: none; }
    .drawing .face { fill: #fff; }
    .drawing :is(.face, .line, .fine, .mark, .trace, .water, .ground) { stroke: #000; }
    .drawing .solid { fill: #000; }
    .drawing .tint { fill: #e8e8e8; }
    .drawing .scale { fill: #bbb; }
    .drawing .mark { fill: #0003; }
  }
`;
