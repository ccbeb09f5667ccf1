// How the key looks once it asks no more: what is set, what follows a verdict, and paper. Kept out of the first script.
import { css } from 'lit';

export const laterStyles = css`
  leadwort-comparison { border-block-end: 0.1em solid var(--line); padding-block-end: 1.25em; margin-block-end: 1.25em; }
  .walking:has(p) { padding-inline-start: 1em; border-inline-start: 0.2em solid var(--reed); margin-block-end: 1.25em; }
  .walking p + p { margin-block-start: 0.4em; }
  .walking .outline { margin-block-start: 0.6em; margin-inline-end: 0.6em; }

  .next { display: flex; flex-wrap: wrap; gap: 0.6em; margin-block-start: 1em; }
  .next > button { flex: 1 1 9em; }
  .needs, .ahead .report:not([open]) > summary::before { display: none; }
  .ahead .report { margin-block-start: 1.5em; }
  .ahead .report > summary { font-size: 1.25em; font-weight: 700; scroll-margin-block-start: 0.5em; }
  .ahead .report:not([open]) > summary { display: block; padding: 0.8em 1em 0.9em; border: 0.1em solid var(--reed); border-radius: var(--radius); background: var(--reed); color: var(--paper); line-height: 1.3; }
  .ahead .report:not([open]) .needs { display: block; margin-block-start: 0.3em; font-size: 0.8em; font-weight: 400; }
  .ahead .report:not([open]) > summary:focus-visible { outline-offset: 0.2em; }

  .foot > .plain, .foot > .outline { margin-block-start: 0.5em; }
  .copy > p { padding-inline-start: 0.5em; overflow-wrap: anywhere; }
  .fields { display: flex; flex-wrap: wrap; gap: 1em 2em; padding-block: 0.5em 1em; padding-inline-start: 1.3em; }
  .field { display: grid; gap: 0.25em; align-content: start; }
  .field > span, legend { font-weight: 600; }
  select { padding: 0.4em 0.7em; border: 0.1em solid var(--line); border-radius: var(--radius); background: var(--paper); max-inline-size: 100%; }

  @container (min-width: 60em) {
    /* When no question is left, the verdict is what the page is about. */
    .done .verdict { grid-row: 3; }
    .done .guidance { grid-row: 4 / 6; }
    .done .side { grid-row: 2 / 6; }
    .done leadwort-standing { margin-block-start: 0; }
  }
  @media (forced-colors: active) {
    .ahead .report:not([open]) > summary { border-color: ButtonText; background: ButtonFace; color: ButtonText; }
    .ahead .report:not([open]) .needs { color: ButtonText; }
  }
  @media print {
    /* In a column of blocks a page may end anywhere; what is folded away has nothing to say on paper. */
    .page { display: block; }
    .done .ask, .report:not([open]), .stream:not([open]) { display: none; }
    /* While plants are compared, that is what is printed. */
    leadwort-comparison ~ .page { display: none; }
    .page:not(:has(.sheet[open])) > .foot, .ways, .next { display: none; }
    /* While a report is printed, nothing else is. */
    .page:has([printing]) > :not(.guidance), .page:has([printing]) leadwort-guidance, .page:has([printing]) .help, .report > summary { display: none; }
    /* While the printed key is open, it is what is printed. */
    .page:has(.sheet[open]) > :not(.foot), .foot > :not(.sheet), .sheet > summary { display: none; }
    .page:has(.sheet[open]) > .foot { margin: 0; padding: 0; border: 0; }
  }
`;
