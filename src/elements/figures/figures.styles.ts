import { css } from 'lit';

/** Of choices around figures, and of files that come and go. */
export const choiceStyles = css`
  summary { display: flex; align-items: center; font-weight: 600; color: var(--reed); text-decoration: underline; text-underline-offset: 0.2em; }
  .go { display: flex; flex-wrap: wrap; gap: 0.6em; align-items: center; }
  .field { display: grid; gap: 0.3em; max-inline-size: 24em; }
  .field span { font-weight: 700; }
  .field :is(input, select) { min-block-size: max(3em, 48px); padding: 0.4em 0.7em; border: 0.1em solid var(--line); border-radius: var(--radius); background: var(--paper); }
  .pick { display: inline-flex; align-items: center; min-block-size: max(3em, 48px); cursor: pointer; }
  .pick:focus-within { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
`;

export const figureStyles = css`
  .scroll { overflow-x: auto; max-inline-size: 100%; }
  table { border-collapse: collapse; font-size: 0.94em; }
  th { text-align: start; font-weight: 600; }
  th, td { padding: 0.4em 0.9em 0.4em 0; vertical-align: middle; border-block-end: 1px solid color-mix(in srgb, var(--line) 35%, transparent); }
  thead th { color: var(--mud); font-size: 0.9em; vertical-align: bottom; }
  .range { display: block; inline-size: 9em; block-size: 1.5em; fill: none; }
  .range .axis { stroke: var(--line); stroke-width: 1; }
  .range .bar { stroke: var(--reed); stroke-width: 3; stroke-linecap: round; }
  .range .dot { fill: var(--reed); }
  .range .mark { stroke: var(--rust); stroke-width: 2.5; }
  .numbers { white-space: nowrap; }
  .numbers small { color: var(--mud); }
  .confusion { background: var(--paper); }
  .confusion td { text-align: center; font-variant-numeric: lining-nums; padding-inline: 0.4em; min-inline-size: 3em; }
  .confusion td svg { display: block; inline-size: 1.6em; block-size: 1.6em; margin: auto; }
  .confusion thead td { text-align: start; vertical-align: bottom; }
  .confusion thead th span { display: block; writing-mode: vertical-rl; max-inline-size: 9em; line-height: 1.1; }
  .confusion tbody th { position: sticky; inset-inline-start: 0; background: var(--paper); max-inline-size: 9em; }
  .confusion .right { background: color-mix(in srgb, var(--reed) 10%, transparent); }
  .heading { display: none; }
  .good { fill: var(--reed); }
  .bad { fill: none; stroke: var(--rust); stroke-width: 2.5; }
  .mark svg { inline-size: 1.5em; block-size: 1.5em; vertical-align: -0.4em; fill: none; stroke: var(--mud); stroke-width: 1.8; stroke-linejoin: round; }
  .mark svg.ready { stroke: var(--reed); fill: color-mix(in srgb, var(--reed) 25%, transparent); }
  @container (max-width: 32em) {
    .rates thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    .rates .heading { display: inline; }
    .rates tr { display: grid; grid-template-columns: 1fr auto; align-items: baseline; padding-block: 0.5em; border-block-end: 1px solid color-mix(in srgb, var(--line) 35%, transparent); }
    .rates th, .rates td { border: 0; padding: 0.1em 0.5em 0.1em 0; }
    .rates td:last-child { grid-row: 1; grid-column: 2; color: var(--mud); }
    .rates td:nth-child(2) { grid-column: 1 / -1; display: flex; flex-wrap: wrap; align-items: center; gap: 0 0.8em; }
    .readiness thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    .readiness tr { display: grid; grid-template-columns: 1fr auto; padding-block: 0.5em; border-block-end: 1px solid color-mix(in srgb, var(--line) 35%, transparent); }
    .readiness th, .readiness td { border: 0; padding: 0.1em 0.5em 0.1em 0; }
    .readiness td:last-child { grid-column: 1 / -1; }
  }
  @media print {
    .scroll { overflow: visible; }
  }
  @media (forced-colors: active) {
    .range :is(.axis, .bar), .mark svg, .mark svg.ready { stroke: CanvasText; }
    .range .dot, .good { fill: CanvasText; }
    .range .mark, .bad { stroke: Highlight; }
  }
`;
