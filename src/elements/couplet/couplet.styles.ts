import { css } from 'lit';

export const coupletStyles = css`
  .leads { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.75em; }
  @container (min-width: 29em) { .leads { grid-template-columns: repeat(auto-fit, minmax(13.5em, 1fr)); } }
  .lead { position: relative; align-items: flex-start; padding: 0.75em 0.9em; }
  .bar p:not(:has(b)) { display: none; }
  @container (min-width: 29em) { .lead .title { font-size: 1.12em; } .lead { padding: 1.1em 1.15em 1.25em; min-block-size: 7em; } }
  .lead input { margin-block-start: 0.2em; }
  .lead .text { gap: 0.25em; }
  .label { font-size: 0.94em; color: var(--mud); }
  .lead .title { text-wrap: pretty; }
  .lead .title::first-letter, .label::first-letter { text-transform: uppercase; }
  .detail + .detail { margin-block-start: 0.15em; }
`;
