import { css } from 'lit';

export const styles = css`
  [part='field'] { display: grid; gap: 0.25em; }
  label { font-weight: 700; font-size: 1.1em; }
  input { inline-size: 100%; max-inline-size: 30em; min-block-size: max(3em, 48px); padding: 0.5em 0.9em; border: 0.125em solid var(--line); border-radius: var(--radius); background: var(--paper); font-size: max(1.05em, 16px); }
  input:focus-visible { border-color: var(--reed); }
  .count { min-block-size: 1.5em; margin-block: 0.4em; }
  .sub { font-size: 1.15em; }
  .shared { border-inline-start: 0.4em solid var(--reed); padding: 0.4em 1em; display: grid; gap: 0.4em; margin-block-end: 0.75em; }
  .tell { font-weight: 600; }
  .lines li { position: relative; padding-inline-start: 1.2em; }
  .lines li + li { margin-block-start: 0.3em; }
  .lines li::before { content: ''; position: absolute; inset-inline-start: 0.2em; inset-block-start: 0.6em; inline-size: 0.4em; block-size: 0.4em; border-radius: 50%; background: currentColor; }
  .plants > li { display: grid; gap: 0.25em; padding-block: 0.9em 0.25em; justify-items: start; }
  .plants > li + li { border-block-start: 1px solid color-mix(in srgb, var(--line) 45%, transparent); }
  .name, .plant { inline-size: 100%; }
  .plant { display: flex; flex-wrap: wrap; gap: 0 0.6em; align-items: baseline; }
  .plant .common { font-size: 1.1em; }
  .alike { display: grid; gap: 0.15em; }
  .alike li { display: flex; flex-wrap: wrap; align-items: center; column-gap: 0.9em; padding-inline-start: 0.25em; }
  .plants button { padding-inline: 0; }
  .drawn { inline-size: 100%; }
  .drawn summary { display: flex; align-items: center; inline-size: fit-content; font-weight: 600; color: var(--reed); text-decoration: underline; text-underline-offset: 0.2em; }
  @media print { [part='field'] { display: none; } }
  @media (forced-colors: active) { .lines li::before { background: CanvasText; } }
`;
