import { css } from 'lit';

export const styles = css`
  :host { font-size: max(1em, 17px); }
  .form, .paper { display: grid; gap: 0.75em; grid-template-columns: minmax(0, 1fr); padding-block: 0.5em 1em; }
  .heading { font-size: 1.4em; }
  .sub { font-size: 1.2em; }
  .minor { font-size: 1.05em; margin-block-start: 0.5em; }
  .step { display: grid; gap: 0.75em; grid-template-columns: minmax(0, 1fr); border-block-start: 0.1em solid var(--line); padding-block-start: 1em; margin-block-start: 0.5em; }
  .head { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0.2em 1em; }
  .state { font-weight: 600; }
  .state::before { margin-inline-end: 0.35em; }
  .there { color: var(--reed); }
  .there::before { content: '\\2713' / ''; }
  .lacking { color: var(--rust); }
  .state.lacking::before { content: '\\25CB' / ''; }
  p:empty, .news:not(:has(p)) { display: none; }
  .said { font-weight: 700; font-size: 1.1em; }
  .wrong { color: var(--rust); font-weight: 600; }
  .warn { border-inline-start: 0.35em solid var(--rust); padding-inline-start: 0.75em; }

  .field { display: grid; gap: 0.25em; align-content: end; min-inline-size: 0; }
  label, legend { font-weight: 600; }
  input:not([type='radio'], [type='checkbox'], [type='file']), textarea, select { font: inherit; inline-size: 100%; max-inline-size: 30em; min-block-size: max(3em, 48px); padding: 0.5em 0.8em; border: 0.125em solid var(--line); border-radius: var(--radius); background: var(--paper); color: var(--ink); font-size: max(1em, 16px); }
  textarea { resize: vertical; }
  [aria-invalid='true'] { border-color: var(--rust); }
  .pair { display: grid; gap: 0.75em; grid-template-columns: repeat(auto-fit, minmax(min(100%, 13em), 1fr)); align-items: end; }
  .sizes { grid-template-columns: repeat(auto-fit, minmax(min(100%, 8em), 1fr)); }
  fieldset { display: grid; gap: 0.25em; min-inline-size: 0; }
  legend { padding-block-end: 0.25em; }
  .radio, .tick .target { display: flex; align-items: center; gap: 0.7em; font-weight: 400; }
  .radio input, .tick input { flex: none; inline-size: 1.4em; block-size: 1.4em; margin: 0; accent-color: var(--reed); }
  .tick .quiet { padding-inline-start: 2.1em; }

  .picker { position: relative; display: inline-flex; align-items: center; justify-content: center; justify-self: start; text-align: center; }
  .picker:has(:focus-visible) { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  .wanted { display: grid; gap: 0.5em; }
  .wanted:empty { display: none; }
  .want { display: flex; align-items: center; gap: 0.75em; background: var(--silt); border-radius: var(--radius); padding: 0.5em 0.75em; }
  .want .place { flex: none; inline-size: 3.6em; }
  .want .text { flex: 1; min-inline-size: 0; overflow-wrap: anywhere; line-height: 1.3; }
  .want .picker { padding-inline: 0.9em; flex: none; }
  .have { color: var(--reed); white-space: nowrap; }
  .have::before { content: '\\2713' / ''; margin-inline-end: 0.3em; }
  .taken { display: grid; gap: 0.75em; padding-block: 0.5em; }
  .taken li { display: grid; grid-template-columns: minmax(5em, 8em) minmax(0, 1fr); gap: 0.9em; align-items: start; }
  canvas { inline-size: 100%; block-size: auto; border-radius: calc(var(--radius) * 0.6); background: var(--silt); display: block; }
  .taken .plain { padding-inline: 0; }

  .ways, .keep { display: flex; flex-wrap: wrap; gap: 0.5em; align-items: start; }
  .ways .quiet { inline-size: 100%; }
  .keep > div { display: grid; gap: 0.2em; justify-items: start; max-inline-size: 16em; }
  .send { font-size: 1.1em; max-inline-size: 22em; }
  .receipt, .waiting, .refused { display: grid; gap: 0.5em; justify-items: start; border-radius: var(--radius); padding: 1em; background: var(--silt); border-inline-start: 0.4em solid var(--rust); }
  .receipt { border-inline-start-color: var(--reed); }
  dl { display: grid; gap: 0.5em; }
  dt { color: var(--mud); font-size: 0.94em; }
  dd { font-weight: 600; overflow-wrap: anywhere; user-select: all; }
  .refused li { padding-inline-start: 1em; }

  summary { display: flex; align-items: center; gap: 0.55em; color: var(--reed); font-weight: 600; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  summary::before { content: ''; flex: none; inline-size: 0.5em; block-size: 0.5em; border-inline-end: 0.15em solid; border-block-end: 0.15em solid; rotate: -45deg; margin-inline: 0.15em 0.2em; }
  details[open] > summary::before { rotate: 45deg; }
  :host(:dir(rtl)) details:not([open]) > summary::before { rotate: 45deg; border-inline: 0.15em solid; border-inline-start: 0; }
  .more { border-block-start: 0.1em solid var(--line); margin-block-start: 0.5em; padding-block-start: 0.5em; }
  .more > summary { font-size: 1.1em; }
  .inside { display: grid; gap: 1em; grid-template-columns: minmax(0, 1fr); padding-block-start: 0.5em; }

  .squares { display: grid; grid-template-columns: repeat(auto-fill, minmax(5.5em, 1fr)); gap: 0.5em; }
  .square { position: relative; display: grid; gap: 0.3em; padding: 0.4em; border: 0.15em solid transparent; border-radius: var(--radius); background: var(--silt); cursor: pointer; font-weight: 600; font-size: 0.94em; text-align: center; }
  .square input { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; margin: 0; opacity: 0; cursor: pointer; }
  .square:has(:checked) { border-color: var(--reed); box-shadow: inset 0 0 0 0.15em var(--reed); }
  .square:has(:focus-visible) { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  .square svg { inline-size: 100%; border-radius: 0.3em; display: block; }
  .ground { fill: var(--paper); }
  .grown { fill: var(--reed); }

  .files { display: grid; gap: 0.5em; justify-items: start; border-block-start: 0.1em solid var(--line); padding-block-start: 1em; }
  .files .plain { padding-inline: 0; }
  pre { font: inherit; font-size: 0.94em; white-space: pre-wrap; overflow-wrap: anywhere; margin: 0; }

  .paper { display: none; }
  table { border-collapse: collapse; inline-size: 100%; }
  th, td { text-align: start; vertical-align: top; padding: 0.25em 0.75em 0.25em 0; border-block-end: 1px solid var(--line); }
  .prints { display: grid; grid-template-columns: 1fr 1fr; gap: 1em; }
  figure { margin: 0; break-inside: avoid; }
  @media print {
    :host { font-size: 11pt; }
    .form { display: none; }
    .paper { display: grid; }
    :host(:not([printing])) { display: none; }
  }
  @media (forced-colors: active) {
    .square svg { forced-color-adjust: none; }
    .ground { fill: Canvas; }
    .grown { fill: CanvasText; }
    .square:has(:checked) { outline: 0.2em solid Highlight; outline-offset: -0.2em; }
    .square { border-color: CanvasText; }
  }
`;
