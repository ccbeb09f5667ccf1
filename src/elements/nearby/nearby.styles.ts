import { css } from 'lit';

export const styles = css`
  .nearby { display: flex; flex-direction: column; gap: 1em; padding: 1.5em 1em 0.5em; }
  .nearby > * { min-inline-size: 0; }
  /* What has nothing to say yet takes no room. */
  .nearby > :empty, .nearby > [role='status']:not(:has(*)) { margin-block-start: -1em; }
  .heading { font-size: 1.4em; }
  .sub { font-size: 1.15em; margin-block-end: 0.4em; }
  .first { font-weight: 600; border-inline-start: 0.4em solid var(--line); padding-inline-start: 0.8em; }
  a.solid, a.outline { display: inline-flex; align-items: center; justify-content: center; min-block-size: max(3em, 48px); padding-inline: 0.9em; text-decoration: none; overflow-wrap: anywhere; text-align: center; }
  .choose { display: grid; gap: 0.5em; justify-items: start; }
  .choose > details { inline-size: 100%; border-block-start: 1px solid color-mix(in srgb, var(--line) 45%, transparent); }
  summary { display: flex; align-items: center; justify-content: space-between; gap: 0.75em; list-style: none; font-weight: 600; color: var(--ink); padding-block: 0.5em; }
  summary::-webkit-details-marker { display: none; }
  summary::after { content: ''; inline-size: 0.5em; block-size: 0.5em; border: solid currentColor; border-width: 0 0.14em 0.14em 0; transform: rotate(45deg) translate(-0.1em, -0.1em); flex: none; margin-inline-end: 0.3em; }
  details[open] > summary::after { transform: rotate(225deg) translate(-0.1em, -0.1em); }
  form { display: grid; gap: 0.4em; justify-items: start; padding-block-end: 1em; }
  label { font-weight: 600; }
  input { inline-size: min(100%, 26em); min-block-size: max(3em, 48px); padding: 0.4em 0.7em; border: 0.1em solid var(--line); border-radius: var(--radius); background: var(--paper); }
  input[aria-invalid='true'] { border-color: var(--rust); border-width: 0.15em; }
  .wrong { color: var(--rust); font-weight: 600; }
  .mistakes { overflow-wrap: anywhere; font-size: 0.94em; }
  .mistakes li + li { margin-block-start: 0.5em; }

  .pointing { display: grid; gap: 0.6em; justify-items: start; padding-block-end: 1em; }
  .map { inline-size: min(100%, 36em); cursor: crosshair; touch-action: manipulation; border: 0.1em solid var(--line); border-radius: var(--radius); overflow: hidden; background: var(--paper); }
  .map svg { display: block; inline-size: 100%; block-size: auto; }
  .area { fill: color-mix(in srgb, var(--reed) 22%, var(--paper)); fill-rule: evenodd; stroke: var(--reed); stroke-width: 3; stroke-linejoin: round; }
  .course { fill: none; stroke: var(--mud); stroke-width: 4; stroke-linecap: round; stroke-linejoin: round; stroke-dasharray: 14 6; }
  .spot { fill: var(--mud); }
  .map text { font: inherit; font-size: 24px; fill: var(--ink); }
  .landmark, .measure { paint-order: stroke; stroke: var(--paper); stroke-width: 6; stroke-linejoin: round; }
  .landmark, .number { text-anchor: middle; }
  .plate { fill: var(--reed); }
  .map text.number { fill: var(--paper); font-weight: 700; }
  .scale { fill: none; stroke: var(--ink); stroke-width: 3; }
  .cross { fill: none; stroke: var(--rust); stroke-width: 5; stroke-linecap: round; }
  .cross.under { stroke: var(--paper); stroke-width: 11; }
  .aim { fill: var(--rust); }
  .legend { display: grid; gap: 0.3em; }
  .key { display: inline-grid; place-items: center; inline-size: 1.6em; block-size: 1.6em; border-radius: 50%; background: var(--reed); color: var(--paper); font-weight: 700; margin-inline-end: 0.3em; }

  .answer:focus { outline: none; }
  .answer { display: grid; gap: 0.75em; scroll-margin-block-start: 1em; }
  .programme, .asking { display: grid; gap: 0.5em; padding-inline-start: 0.9em; border-inline-start: 0.4em solid var(--reed); }
  .programme .name { font-size: 1.15em; }
  .where, .meant, .label { font-weight: 600; }
  .offers li { padding-inline-start: 1.2em; position: relative; }
  .offers li::before { content: ''; position: absolute; inset-inline-start: 0.2em; inset-block-start: 0.6em; inline-size: 0.4em; block-size: 0.4em; border-radius: 50%; background: var(--reed); }
  .contact { font-style: normal; display: grid; gap: 0.25em; margin-block: 0.25em; }
  .ways { display: flex; flex-wrap: wrap; gap: 0.5em; margin-block-start: 0.25em; }
  .post { white-space: pre-line; }
  .print { display: none; }
  .upstream p + p { margin-block-start: 0.5em; }

  @container (min-width: 46em) {
    .programmes { display: grid; grid-template-columns: 1fr 1fr; gap: 1.25em; align-items: start; }
    .programmes > :only-child { grid-column: 1 / -1; }
  }
  .programmes { display: grid; gap: 1.25em; }

  @media print {
    .choose, .answer button, .form { display: none; }
    .print { display: inline; overflow-wrap: anywhere; }
    .ways { display: grid; gap: 0.1em; }
    a.solid, a.outline { display: inline; border: 0; padding: 0; min-block-size: 0; background: none; color: inherit; text-align: start; }
    .programme, .asking { break-inside: avoid; }
  }
  @media (forced-colors: active) {
    .map { forced-color-adjust: none; background: Canvas; border-color: CanvasText; }
    .area { fill: Canvas; stroke: CanvasText; }
    .course, .scale { stroke: CanvasText; }
    .spot, .aim { fill: CanvasText; }
    .map text { fill: CanvasText; }
    .landmark, .measure { stroke: Canvas; }
    .plate { fill: CanvasText; }
    .map text.number { fill: Canvas; }
    .cross { stroke: Highlight; }
    .cross.under { stroke: Canvas; }
    .key { border: 0.1em solid; }
    a.solid, a.outline { border-color: LinkText; color: LinkText; background: Canvas; }
  }
`;
