import { css } from 'lit';

export const styles = css`
  :host { font-size: max(1em, 17px); }
  .review, .sheet, section { display: grid; gap: 0.75em; grid-template-columns: minmax(0, 1fr); padding-block: 0.25em; }
  section { border-block-start: 0.1em solid var(--line); padding-block-start: 1em; }
  .heading { font-size: 1.4em; }
  .sub { font-size: 1.15em; }
  .row, .list { display: flex; flex-wrap: wrap; gap: 0.5em; align-items: center; }
  .list [aria-current='true'] { background: var(--silt); }
  .picker { position: relative; display: inline-flex; align-items: center; justify-self: start; }
  .picker:has(:focus-visible) { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  textarea, input[type='text'], input[type='search'] { font: inherit; inline-size: 100%; max-inline-size: 30em; min-block-size: max(3em, 48px); padding: 0.5em 0.8em; border: 0.125em solid var(--line); border-radius: var(--radius); background: var(--paper); color: var(--ink); font-size: max(1em, 16px); }
  label, legend { font-weight: 600; }
  .radio { display: flex; align-items: center; gap: 0.7em; font-weight: 400; }
  .radio input { flex: none; inline-size: 1.4em; block-size: 1.4em; margin: 0; accent-color: var(--reed); }
  .opening, .answers { display: grid; gap: 0.75em; }
  [part='entry'] > .row { margin-block-start: 0.75em; }
  .facts { display: grid; gap: 0.75em; grid-template-columns: repeat(auto-fill, minmax(min(100%, 16em), 1fr)); overflow-wrap: anywhere; }
  dt { color: var(--mud); }
  .plain { padding-inline: 0; text-align: start; }
  summary { display: list-item; align-content: center; }
  .answers > li { display: grid; gap: 0.1em; padding-block-end: 0.6em; border-block-end: 1px solid color-mix(in srgb, var(--line) 45%, transparent); overflow-wrap: anywhere; }
  .fits { display: grid; gap: 0 1em; grid-template-columns: repeat(auto-fit, minmax(min(100%, 13em), 1fr)); }
  .fits > li::first-letter, tbody th::first-letter { text-transform: capitalize; }
  .theirs { border-inline-start: 0.2em solid var(--line); padding-inline-start: 0.6em; }
  .no { color: var(--rust); font-weight: 600; }
  .photos { display: grid; gap: 0.75em; grid-template-columns: repeat(auto-fill, minmax(min(100%, 16em), 1fr)); }
  canvas { inline-size: 100%; block-size: auto; border-radius: calc(var(--radius) * 0.6); background: var(--silt); display: block; }
  table { border-collapse: collapse; inline-size: 100%; }
  th, td { text-align: start; padding: 0.35em 0.5em 0.35em 0; border-block-end: 1px solid color-mix(in srgb, var(--line) 45%, transparent); overflow-wrap: anywhere; }
  .number { text-align: end; padding-inline: 0.75em 0; }
  .wrong { color: var(--rust); font-weight: 600; }
  .warn { border-inline-start: 0.35em solid var(--rust); padding-inline-start: 0.75em; }
  .coordinates { user-select: all; font-weight: 600; }
  pre { white-space: pre-wrap; overflow-wrap: anywhere; margin: 0; }
  @media print { .opening, .list, .row { display: none; } }
`;
