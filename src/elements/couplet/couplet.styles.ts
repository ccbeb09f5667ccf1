import { css } from 'lit';

export const coupletStyles = css`
  .leads { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.75em; }
  @container (min-width: 29em) { .leads { grid-template-columns: repeat(auto-fit, minmax(13.5em, 1fr)); } }
  .lead { position: relative; align-items: flex-start; padding: 0.6em 0.75em; }
  .bar p:not(:has(b)) { display: none; }
  @container (min-width: 29em) { .lead .title { font-size: 1.12em; } .lead { padding: 1.1em 1.15em 1.25em; min-block-size: 7em; } }
  .lead input { margin-block-start: 0.2em; }
  .lead:not(.several):has(.places) { align-items: center; }
  .places { flex: none; display: flex; gap: 0.4em; min-inline-size: 0; }
  .places .place { min-inline-size: 0; }
  .places ~ input { order: 1; margin-inline-start: auto; }
  .several { flex-wrap: wrap; gap: 0.5em 0.8em; padding: 0.6em 0.75em; }
  .several .places { flex: 1 1 0; }
  .several .place { flex: 0 1 4em; }
  .several .text { order: 2; flex: 1 0 100%; }
  @container (min-width: 29em) {
    .lead.lead { flex-wrap: wrap; align-items: flex-start; align-content: start; gap: 0.5em 0.8em; padding: 1em; }
    .places ~ input { order: 0; margin-inline-start: 0; }
    .lead .places { flex: 1 0 100%; margin-block-end: 0.3em; }
    .lead .place { flex: 0 1 9em; }
    .several .place { flex: 0 1 5.5em; }
    .lead .text { order: 0; flex: 1; }
  }
  .lead .text { gap: 0.25em; }
  .label { font-size: 0.94em; color: var(--mud); }
  .lead .title { text-wrap: pretty; }
  .lead .title::first-letter, .label::first-letter { text-transform: uppercase; }
  .detail + .detail { margin-block-start: 0.15em; }
`;
