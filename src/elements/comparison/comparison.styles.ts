import { css } from 'lit';

export const styles = css`
  section { display: grid; gap: 1em; }
  .head { display: flex; flex-wrap: wrap; align-items: start; justify-content: space-between; gap: 0.5em 1em; }
  .heading { flex: 1 1 12em; font-size: 1.4em; scroll-margin-block-start: 1em; }
  .sub { font-size: 1.15em; }
  .fault { border-inline-start: 0.35em solid var(--rust); padding-inline-start: 0.8em; font-weight: 600; }

  .now { background: var(--silt); border-radius: var(--radius); padding: 1em; display: grid; gap: 0.6em; }
  .now ul { display: flex; flex-wrap: wrap; column-gap: 1.25em; }
  .now .plain { padding-inline: 0; text-align: start; }
  .unsure, .answer { font-weight: 600; }
  .star { inline-size: 1em; block-size: 1em; margin-inline-end: 0.35em; vertical-align: -0.12em; fill: var(--reed); }

  .board { --plants: 2; --cell: 8.25em; overflow-x: auto; scroll-snap-type: x proximity; overscroll-behavior-x: contain; }
  /* The third looks in from the side. */
  .of-3 { --plants: 3; --cell: 7em; }
  .rows, .plants { inline-size: max(100%, calc(var(--plants) * (var(--cell) + 0.75em) - 0.75em)); }
  .cells { display: grid; grid-template-columns: repeat(var(--plants), minmax(0, 1fr)); gap: 0.75em; }
  .cell { scroll-snap-align: start; min-inline-size: 0; overflow-wrap: anywhere; }
  .plants { padding-block-end: 0.75em; }
  leadwort-portrait { margin-block-end: 0.5em; max-inline-size: 17em; }
  .plants .plant { display: grid; gap: 0.1em; }
  .plants .common { font-size: 1.1em; line-height: 1.25; }
  .plants .common::first-letter, .who::first-letter { text-transform: capitalize; }
  .row { border-block-start: 1px solid color-mix(in srgb, var(--line) 45%, transparent); padding-block: 0.9em; display: grid; gap: 0.6em; }
  .chosen { border-block-start: 0.2em solid var(--reed); }
  /* Stays while the columns are moved under it. */
  .about { position: sticky; inset-inline-start: 0; inline-size: 100cqi; max-inline-size: 100cqi; display: grid; gap: 0.2em; }
  .about p { max-inline-size: 42em; }
  .one { font-weight: 700; color: var(--reed); }
  .caution { border-inline-start: 0.3em solid var(--rust); padding-inline-start: 0.6em; }
  .caution b { color: var(--rust); }
  .who { display: block; font-size: 0.85em; font-weight: 700; color: var(--mud); line-height: 1.25; margin-block-end: 0.3em; }
  .states { display: grid; gap: 0.4em; align-content: start; }
  .shown { line-height: 1.3; }
  .picture { inline-size: min(7em, 100%); margin-block-end: 0.25em; }
  .how { color: var(--mud); }
  .seen { border-inline-start: 0.25em solid var(--reed); padding-inline-start: 0.5em; }
  .saw { color: var(--reed); font-weight: 700; }
  .saw svg { inline-size: 1em; block-size: 1em; vertical-align: -0.12em; margin-inline-end: 0.25em; fill: none; stroke: currentColor; stroke-width: 3; stroke-linecap: round; stroke-linejoin: round; }

  .turn { justify-self: start; }
  .stacked .cells { grid-template-columns: minmax(0, 1fr); }
  .stacked :is(.plants, .rows) { inline-size: 100%; }
  .stacked .plants .cell { display: grid; grid-template-columns: 8em minmax(0, 1fr); gap: 0.75em; align-items: end; }
  .stacked .row .cell { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.6fr); gap: 0.5em; }
  @container (min-width: 40em) {
    .turn { display: none; }
    .board, .of-3 { --cell: 11em; }
  }
  summary { position: sticky; inset-inline-start: 0; inline-size: 100cqi; padding-block: 0.75em; color: var(--reed); font-weight: 600; }

  @media (forced-colors: active) {
    .now { border: 1px solid CanvasText; }
    .star { fill: CanvasText; }
    .chosen { border-color: CanvasText; }
  }
  /* One page: the rows most worth a look, each in a line. */
  @media print {
    button, details:not([open]), .now ul, .now .sub, .one, .board > .rows > .row:nth-child(n + 12):not(.chosen), .of-3 > .rows > .row:nth-child(n + 9):not(.chosen) { display: none; }
    section { gap: 0.6em; font-size: max(0.62em, 8pt); line-height: 1.3; }
    .now { background: none; border: 1px solid; padding: 0.6em 0.8em; gap: 0.2em; }
    .board { overflow: visible; --cell: 0em; }
    .plants .cell { display: grid; grid-template-columns: 9em minmax(0, 1fr); gap: 0.75em; align-items: end; }
    .row { break-inside: avoid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.2fr); padding-block: 0.4em; gap: 1em; }
    .about { position: static; inline-size: auto; gap: 0; align-content: start; }
    .who { margin: 0; }
    .states { gap: 0.1em; }
    .shown { display: flex; align-items: center; gap: 0.5em; }
    .picture { inline-size: 3.2em; margin: 0; flex: none; }
  }
`;
