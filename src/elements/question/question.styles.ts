import { css } from 'lit';

export const questionStyles = css`
  .cards { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6em; }
  @container (min-width: 24em) { .cards { grid-template-columns: 1fr 1fr; } }
  @container (min-width: 48em) { .cards { grid-template-columns: repeat(auto-fill, minmax(14em, 1fr)); } }
  /* A picture beside the words, or above them where there are many and their words are few. */
  .pictured .card { padding: 0.5em; padding-inline-end: 0.75em; }
  .pictured input { order: 1; margin-inline-start: auto; }
  @container (max-width: 32em) { .pictured:not(.columns) { grid-template-columns: minmax(0, 1fr); } }
  .columns.columns { grid-template-columns: repeat(auto-fill, minmax(min(100%, 8.25em), 1fr)); }
  .columns .card { display: grid; grid-template-columns: minmax(0, 1fr) auto; align-items: start; align-content: start; gap: 0.4em 0.55em; padding: 0.5em 0.5em 0.6em; }
  .columns .place { grid-column: 1 / -1; inline-size: min(100%, 7.5em); justify-self: center; }
  .columns .title { hyphens: auto; }
  .size { font-variant-numeric: lining-nums; }

  .fields { display: flex; flex-wrap: wrap; align-items: center; gap: 0.6em; padding-block: 0.4em; }
  .fields input, .fields select { min-block-size: max(3em, 48px); padding: 0.4em 0.7em; border: 0.1em solid var(--line); border-radius: var(--radius); background: var(--paper); }
  .fields input { inline-size: 8em; max-inline-size: 100%; scroll-margin-block-end: 10em; }
  [aria-invalid='true'] { border-color: var(--rust) !important; box-shadow: inset 0 0 0 0.1em var(--rust); }
  .wrong { color: var(--rust); font-weight: 700; }

  .else { margin-block-start: 0.5em; }
  .else .group { padding-inline-start: 1.3em; }
  .else ul { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 15em), 1fr)); padding-inline-start: 0.8em; }
  .feature { display: grid; inline-size: 100%; align-content: center; text-align: start; padding: 0.5em; border: 0; border-radius: var(--radius); background: none; }
  .feature:hover { background: var(--silt); }

  @media print {
    .else, .typed { display: none; }
  }
`;
