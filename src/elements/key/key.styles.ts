import { css } from 'lit';

export const keyStyles = css`
  :host { font-size: max(1em, 17px); min-block-size: 20em; background: var(--paper); padding: max(1em, 16px); border-radius: var(--radius); }
  .notice:not(:empty) > * + * { margin-block-start: 0.75em; }
  .mistakes { overflow-wrap: anywhere; font-size: 0.94em; }
  .mistakes > li + li { margin-block-start: 0.5em; }

  .page { display: grid; grid-template-columns: minmax(0, 1fr); }
  .page > * { min-inline-size: 0; }
  leadwort-standing, .verdict, .guidance { margin-block-start: 1.25em; }
  /* The room of what comes after the first question is kept for it. */
  leadwort-standing:not(:defined) { display: block; min-block-size: 3.5em; }
  .stream[open] > leadwort-stream:not(:defined) { display: block; min-block-size: 44em; }
  @container (max-width: 24em) { leadwort-standing:not(:defined) { min-block-size: 6em; } }
  .set { min-block-size: max(3em, 48px); }
  .stream { margin-block-start: 0.75em; }
  /* While there is a question, what the answers mean stands next to it; then what to do does. */
  .asking > .guidance { order: 1; }
  .foot { order: 2; }

  .ways { display: flex; flex-wrap: wrap; gap: 0 1.75em; margin-block-start: 1em; }
  .ways .radio { min-block-size: max(3em, 48px); }
  .foot:not(:empty) { margin-block-start: 1.5em; border-block-start: 0.1em solid var(--line); padding-block-start: 0.5em; }

  @container (min-width: 60em) {
    .page { grid-template-columns: minmax(0, 1fr) minmax(20em, 26em); column-gap: 3.5em; grid-template-rows: auto auto auto auto 1fr auto; }
    leadwort-trail, .foot { grid-column: 1 / -1; }
    .ask { grid-column: 1; grid-row: 2; }
    .side { grid-column: 2; }
    .foot { grid-row: 6; }
    /* The stream stands beside the question; what the answers mean, below it. */
    .verdict, .guidance { grid-column: 1; }
    .forked .side { grid-row: 2 / 6; }
    .forked leadwort-standing { margin-block-start: 0; }
    .stream > summary { display: none; }
    /* A key without couplets has its verdict there while there is a question. */
    .asking:not(.forked) .ask { grid-row: 2 / 7; }
    .asking:not(.forked) .verdict { grid-column: 2; grid-row: 2; margin-block-start: 0; }
    .asking:not(.forked) .side { grid-row: 3; }
    .asking:not(.forked) .guidance { grid-column: 2; grid-row: 4; }
  }

  summary { display: flex; flex-wrap: wrap; align-items: center; column-gap: 0.55em; color: var(--reed); font-weight: 600; list-style: none; }
  summary .quiet { font-weight: 400; }
  summary::-webkit-details-marker { display: none; }
  summary::before { content: ''; flex: none; inline-size: 0.5em; block-size: 0.5em; border-inline-end: 0.15em solid; border-block-end: 0.15em solid; rotate: -45deg; margin-inline: 0.15em 0.2em; }
  details[open] > summary::before { rotate: 45deg; }

  .radio { display: flex; align-items: center; gap: 0.6em; }
  .radio input { inline-size: 1.35em; block-size: 1.35em; margin: 0; accent-color: var(--reed); }
`;
