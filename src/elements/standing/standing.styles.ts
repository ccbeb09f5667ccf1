import { css } from 'lit';

export const styles = css`
  /* The whole head opens the list: the button's target is laid over the sentence. */
  .head { position: relative; display: flex; flex-wrap: wrap; align-items: center; gap: 0 1em; padding: 0.25em 1em; background: var(--silt); border-radius: var(--radius); }
  .head p { flex: 1 1 14em; padding-block: 0.5em; font-weight: 600; text-wrap: pretty; }
  .head button, .compare { padding-inline: 0; text-align: start; }
  .head button::after { content: ''; position: absolute; inset: 0; border-radius: var(--radius); }
  .head button:focus-visible { outline: none; }
  .head button:focus-visible::after { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  [part='list'] { padding-block-start: 0.5em; }
  [part='list'][hidden] { display: none; }
  li { padding: 0.75em 1em 0.25em; }
  li + li { border-block-start: 1px solid color-mix(in srgb, var(--line) 40%, transparent); }
  .reasons li { padding-block: 0; border: 0; }
  .plant { display: flex; flex-wrap: wrap; gap: 0 0.6em; align-items: baseline; }
  .plant .common { font-size: 1.1em; }
  .odds { display: grid; grid-template-columns: 8.5em 1fr; gap: 0.75em; align-items: center; }
  summary.plain { display: inline-flex; align-items: center; padding-inline: 0; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  [part='list'] > button { margin-inline-start: 0.5em; }
  details[open] { padding-block-end: 0.75em; }
  .name { text-wrap: pretty; }
  @media print {
    .head button, [part='list'] > button, details:not([open]) { display: none; }
  }
  @media (forced-colors: active) {
    .head { border: 1px solid CanvasText; }
  }
`;
