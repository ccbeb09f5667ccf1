import { css } from 'lit';

export const styles = css`
  section { padding: 1.25em 1em; border-radius: var(--radius); background: var(--silt); display: grid; gap: 0.9em; }
  section > div[role='status'], .names { min-inline-size: 0; }
  /* Empty, but there: what is put into the live region later is said. */
  section.none { display: block; padding: 0; background: none; border: 0; }
  .heading { font-size: 1.5em; font-weight: 700; line-height: 1.2; text-wrap: balance; }
  .settled .heading { font-size: 1.75em; }
  .open .heading, .outside .heading { font-size: 1.3em; }
  .names { display: flex; flex-wrap: wrap; gap: 0 1em; margin-block-start: -0.5em; }
  .still { font-weight: 600; }
  .advice li, .doubts li { position: relative; padding-inline-start: 1.2em; }
  .advice li + li, .doubts li + li { margin-block-start: 0.4em; }
  .advice li::before, .doubts li::before { content: ''; position: absolute; inset-inline-start: 0.2em; inset-block-start: 0.6em; inline-size: 0.4em; block-size: 0.4em; border-radius: 50%; background: currentColor; }
  .stop { border-inline-start: 0.4em solid var(--rust); background: var(--paper); border-radius: 0.25em var(--radius) var(--radius) 0.25em; padding: 0.9em 1em; display: grid; gap: 0.4em; }
  .stop-word { color: var(--rust); font-weight: 800; display: flex; align-items: center; gap: 0.4em; }
  .stop-word svg { inline-size: 1.2em; block-size: 1.2em; }
  .stop .first { font-size: 1.2em; font-weight: 700; line-height: 1.3; }
  svg { fill: none; stroke: currentColor; stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round; flex: none; }
  .sub { font-size: 1.08em; margin-block: 0.4em -0.5em; }
  .again { display: grid; gap: 0.4em; justify-items: start; }
  summary { display: flex; align-items: center; gap: 0.75em; padding-block: 0.5em; list-style: none; font-weight: 600; color: var(--reed); }
  summary::-webkit-details-marker { display: none; }
  summary::after { content: ''; inline-size: 0.5em; block-size: 0.5em; border: solid currentColor; border-width: 0 0.14em 0.14em 0; transform: rotate(45deg) translate(-0.1em, -0.1em); margin-inline-start: auto; margin-inline-end: 0.25em; flex: none; }
  details[open] > summary::after { transform: rotate(225deg) translate(-0.1em, -0.1em); }
  .alike > li + li, .why, .more { border-block-start: 1px solid color-mix(in srgb, var(--line) 45%, transparent); }
  .alike summary { color: var(--ink); }
  .line { flex: 1; display: flex; flex-wrap: wrap; gap: 0.15em 0.75em; }
  .who { display: flex; flex-wrap: wrap; gap: 0 0.75em; flex: 1 1 12em; }
  .test { display: inline-flex; align-items: center; gap: 0.35em; font-weight: 400; color: var(--mud); }
  .test svg { inline-size: 1em; block-size: 1em; }
  .test.tested { color: var(--reed); }
  .checks { display: grid; gap: 0.5em; padding-block-end: 0.9em; }
  .checks button, .alike .compare { padding-inline: 0; }
  .compare.outline { justify-self: start; }
  .why > *:not(summary) { margin-inline-start: 0.25em; }
  @media print {
    section:not(.none) { background: none; border: 1px solid var(--line); }
    button, .drawn:not([open]) { display: none; }
    .why::details-content { content-visibility: visible; block-size: auto; }
    .stop { border: 1px solid; border-inline-start-width: 0.4em; break-inside: avoid; }
  }
  @media (forced-colors: active) {
    section:not(.none) { border: 1px solid CanvasText; }
    .stop { border: 1px solid CanvasText; border-inline-start-width: 0.4em; }
    .advice li::before, .doubts li::before { background: CanvasText; }
  }
`;
