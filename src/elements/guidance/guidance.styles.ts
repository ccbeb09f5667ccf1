import { css } from 'lit';

export const styles = css`
  .guidance { display: grid; gap: 1em; padding: 1.5em 1em 0.5em; }
  .heading { font-size: 1.4em; }
  .only-if { font-weight: 600; border-inline-start: 0.4em solid var(--line); padding-inline-start: 0.8em; }
  .sub { font-size: 1.15em; display: flex; align-items: center; gap: 0.45em; margin-block-end: 0.4em; }
  .mark { inline-size: 1.2em; block-size: 1.2em; flex: none; fill: none; stroke: currentColor; stroke-width: 3; stroke-linecap: round; stroke-linejoin: round; }
  .dont .sub { color: var(--rust); }
  .do .sub, .leave .sub { color: var(--reed); }
  section.dont, section.do, section.leave { padding-inline-start: 0.9em; border-inline-start: 0.4em solid var(--reed); }
  section.dont { border-inline-start-color: var(--rust); }
  .statements li + li { margin-block-start: 0.6em; }
  sup { white-space: nowrap; font-size: 0.75em; color: var(--mud); padding-inline-start: 0.2em; line-height: 0; }
  summary { display: flex; align-items: center; list-style: none; font-weight: 600; color: var(--reed); gap: 0.75em; padding-block: 0.5em; }
  summary::-webkit-details-marker { display: none; }
  summary::after { content: ''; inline-size: 0.5em; block-size: 0.5em; border: solid currentColor; border-width: 0 0.14em 0.14em 0; transform: rotate(45deg) translate(-0.1em, -0.1em); flex: none; }
  details[open] > summary::after { transform: rotate(225deg) translate(-0.1em, -0.1em); }
  details.topic { border-block-start: 1px solid color-mix(in srgb, var(--line) 45%, transparent); margin-block-start: -0.5em; }
  details.topic > summary { justify-content: space-between; color: var(--ink); font-size: 1.05em; }
  .sources summary { font-weight: 400; color: var(--mud); font-size: 0.94em; }
  .sources ol { display: grid; gap: 0.6em; padding-block-end: 0.75em; font-size: 0.94em; }
  .sources li { display: flex; gap: 0.6em; overflow-wrap: anywhere; }
  .number { color: var(--mud); min-inline-size: 1.2em; text-align: end; }
  .sources a { display: inline-block; padding-block: 0.35em; }
  .contact { display: flex; flex-wrap: wrap; gap: 0 1.25em; }
  .contact a { display: inline-flex; align-items: center; min-block-size: 3em; font-weight: 600; overflow-wrap: anywhere; }
  .handout { display: flex; flex-wrap: wrap; align-items: center; gap: 0.75em; }
  .paper { position: absolute; inline-size: 1px; block-size: 1px; border: 0; opacity: 0; pointer-events: none; }
  .months { inline-size: min(100%, 26em); display: block; margin-block-start: 0.3em; }
  .months-words { font-weight: 600; margin-block-start: 0.2em; }
  .months rect { stroke: var(--line); stroke-width: 1; fill: none; }
  .months :is(rect.meant, rect.act) { fill: var(--reed); stroke: var(--reed); }
  .months rect.avoid { stroke: var(--rust); stroke-width: 1.5; }
  .months .cross { stroke: var(--rust); stroke-width: 1.5; }
  .months text { font: inherit; font-size: 12px; font-weight: 600; text-anchor: middle; fill: var(--ink); }
  .months :is(text.meant, text.act) { fill: var(--paper); }
  .months text.avoid { paint-order: stroke; stroke: var(--paper); stroke-width: 4; }
  .months .now { stroke: var(--ink); stroke-width: 2.5; stroke-linecap: round; }
  @container (min-width: 46em) {
    .guidance { grid-template-columns: 1fr 1fr; }
    .guidance > *:not(section) { grid-column: 1 / -1; }
    .guidance > section:nth-of-type(odd):last-of-type { grid-column: 1 / -1; }
  }
  @media print {
    .handout { display: none; }
    /* In a column of blocks a page may end between any two statements. */
    .guidance { display: block; }
    .guidance > * + *, .guidance > details.topic { margin-block-start: 0.8em; }
    .statements li, .sources li { break-inside: avoid; }
    .sub { break-after: avoid; }
    .statements li + li { margin-block-start: 0.3em; }
    .sources, .sources summary, .sources ol { font-size: 8.5pt; line-height: 1.3; min-block-size: 0; padding-block: 0; gap: 0; }
    .sources summary { margin-block-start: 0.4em; }
    .sources a { display: inline; }
    details.topic > summary { min-block-size: 0; padding-block: 0.4em 0; break-after: avoid; }
    details::details-content { content-visibility: visible; block-size: auto; }
    summary::after { display: none; }
  }
  @media (forced-colors: active) {
    .months { forced-color-adjust: none; }
    .months rect { stroke: CanvasText; fill: Canvas; }
    .months :is(rect.meant, rect.act) { fill: CanvasText; stroke: CanvasText; }
    .months .cross { stroke: CanvasText; }
    .months text.avoid { stroke: Canvas; }
    .months text { fill: CanvasText; }
    .months :is(text.meant, text.act) { fill: Canvas; }
    .months .now { stroke: CanvasText; }
  }
`;
