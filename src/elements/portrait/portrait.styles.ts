import { css } from 'lit';

export const styles = css`
  figure { margin: 0; display: grid; gap: 0.6em; }
  .plant { display: flex; flex-wrap: wrap; gap: 0 0.6em; align-items: baseline; }
  .plant .common { font-size: 1.1em; }
  .scene { max-inline-size: 34em; border: 1px solid color-mix(in srgb, var(--line) 45%, transparent); border-radius: var(--radius); background: var(--paper); }
  .scene .drawing :is(.face, .line) { stroke-width: 1.15; }
  .scene .drawing .unsure :is(.face, .line) { fill: none; stroke-dasharray: 3 2.4; }
  .scene .drawing .fine { stroke-width: 0.6; }
  .scene .drawing .water { stroke-width: 1.2; }
  .scene .drawing .stand .scale { fill-opacity: 0.5; }
  .scene .drawing .size .scale { fill-opacity: 0.8; }
  .months { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; align-items: center; gap: 0.5em; max-inline-size: 20em; }
  .months [role='status'] { font-weight: 600; text-align: center; }
  .step { border: 0.125em solid var(--reed); border-radius: 50%; background: var(--paper); color: var(--reed); padding: 0; }
  .step svg { display: block; margin: auto; inline-size: 1.4em; block-size: 1.4em; fill: none; stroke: currentColor; stroke-width: 2.5; stroke-linecap: round; stroke-linejoin: round; }
  .step:dir(rtl) svg { scale: -1 1; }
  .buttons { display: flex; flex-wrap: wrap; gap: 0.5em; }
  summary { display: flex; align-items: center; font-weight: 600; color: var(--reed); text-decoration: underline; text-underline-offset: 0.2em; }
  .close { display: grid; grid-template-columns: repeat(auto-fill, minmax(5.2em, 1fr)); gap: 0.9em 0.75em; font-size: 0.92em; }
  .close .picture { max-inline-size: 6.4em; margin-block-end: 0.25em; }
  .close b { display: block; font-size: 0.86em; color: var(--mud); line-height: 1.2; }
  .close span { line-height: 1.25; overflow-wrap: anywhere; }
  dl > div { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 2fr); gap: 0.75em; padding-block: 0.3em; border-block-end: 1px solid color-mix(in srgb, var(--line) 30%, transparent); overflow-wrap: anywhere; }
  dt { color: var(--mud); }
  .photos { display: flex; gap: 0.75em; overflow-x: auto; scroll-snap-type: x proximity; }
  .photos li { flex: none; inline-size: min(18em, 85cqi); scroll-snap-align: start; }
  .photos .picture { aspect-ratio: 4 / 3; }
  @media (forced-colors: active) {
    .step { border-color: ButtonText; color: ButtonText; background: ButtonFace; }
  }
  @media print {
    .months .step, .buttons { display: none; }
    .scene { max-inline-size: 10cm; break-inside: avoid; background: none; }
    .close li { break-inside: avoid; }
  }
`;
