import { css } from 'lit';

export const streamStyles = css`
  :host { font-size: max(1em, 17px); --water: color-mix(in srgb, var(--mud) 42%, var(--paper)); }
  svg { display: block; inline-size: 100%; max-inline-size: 25em; margin-inline: auto; overflow: visible; direction: ltr; }
  .water path { fill: var(--water); stroke: var(--water); stroke-width: 0.5; transition: d 0.7s ease-in-out; }
  .course path { fill: var(--reed); stroke: var(--reed); stroke-width: 1.2; stroke-linejoin: round; transition: d 0.7s ease-in-out; }
  /* Not known which way: a paler course. */
  .course .open { fill: color-mix(in srgb, var(--reed) 45%, var(--paper)); stroke: none; }
  .here { fill: var(--paper); stroke: var(--ink); stroke-width: 2.5; }
  .mouths path { fill: none; stroke: var(--mud); stroke-width: 1; }
  .mouths text { font-size: 19px; font-weight: 600; fill: var(--ink); stroke: var(--paper); stroke-width: 5; stroke-linejoin: round; paint-order: stroke; }
  .left { text-anchor: end; }

  summary { display: flex; align-items: center; gap: 0.55em; color: var(--reed); font-weight: 600; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  summary::before { content: ''; flex: none; inline-size: 0.5em; block-size: 0.5em; border-inline-end: 0.15em solid; border-block-end: 0.15em solid; rotate: -45deg; margin-inline: 0.15em 0.2em; }
  details[open] > summary::before { rotate: 45deg; }
  :host(:dir(rtl)) details:not([open]) > summary::before { rotate: 45deg; border-inline: 0.15em solid; border-inline-start: 0; }
  ol ol { border-inline-start: 0.15em solid var(--line); padding-inline-start: 0.7em; margin-block-start: 0.75em; }
  ol > li { padding-block: 0.25em; }
  .leads { margin-block-start: 0.3em; }
  .leads li { position: relative; padding: 0.2em 0 0.2em 1.4em; padding-inline: 1.4em 0; }
  .leads .taken::before { content: ''; position: absolute; inset-inline-start: 0; inset-block: 0.3em; inline-size: 0.45em; background: var(--reed); border-radius: 0.25em; }
  .leads b { display: inline-block; }
  .leads b::first-letter { text-transform: uppercase; }
  .leads .taken b { color: var(--reed); }
  .plain { padding-inline: 0; }

  @media (forced-colors: active) {
    svg { forced-color-adjust: none; }
    .water path { fill: GrayText; stroke: GrayText; }
    .course path, .course .open { fill: Highlight; stroke: Highlight; }
    .course .open { fill: Canvas; stroke: Highlight; }
    .here { fill: Canvas; stroke: CanvasText; }
    .mouths path { stroke: CanvasText; }
    .mouths text { fill: CanvasText; stroke: Canvas; }
    .leads .taken::before { background: Highlight; }
  }
  @media print { details { display: none; } svg { max-inline-size: 22em; break-inside: avoid; } }
`;
