// Ink, paper, reed green, silt, and one rust for "stop". Every colour pair used for text keeps at least 7:1.
import { css } from 'lit';

/** Custom properties with their defaults, and the few rules that all parts share. Colours follow the host's color-scheme. */
export const shared = css`
  :host {
    --ink: var(--leadwort-ink, light-dark(#1c2620, #f1ede1));
    --paper: var(--leadwort-paper, light-dark(#fdfaf2, #141a17));
    --reed: var(--leadwort-reed, light-dark(#17492f, #a6dcbb));
    --silt: var(--leadwort-silt, light-dark(#efe7d5, #262d28));
    --mud: var(--leadwort-mud, light-dark(#4b4637, #cfc8b4));
    --rust: var(--leadwort-rust, light-dark(#7e2a10, #ffb79c));
    --line: var(--leadwort-line, light-dark(#7d7762, #8f8a76));
    --radius: var(--leadwort-radius, 0.75em);
    display: block;
    container-type: inline-size;
    color: var(--ink);
    line-height: 1.45;
    text-align: start;
  }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  h1, h2, h3, h4, h5, h6, [role='heading'] { margin: 0; font: inherit; font-weight: 700; line-height: 1.2; text-wrap: balance; }
  p, ul, ol, dl, dd, fieldset, legend { margin: 0; padding: 0; border: 0; }
  ul, ol { list-style: none; }
  button, input, select { font: inherit; color: inherit; letter-spacing: inherit; }
  button, summary, select, .target { min-block-size: 3rem; min-block-size: max(3em, 48px); min-inline-size: 48px; cursor: pointer; touch-action: manipulation; }
  a { color: var(--reed); text-underline-offset: 0.15em; }
  :focus-visible { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  [tabindex='-1']:focus { outline: none; }
  [tabindex='-1']:focus-visible { outline: 0.2em solid var(--reed); outline-offset: 0.3em; }
  .quiet { color: var(--mud); font-size: 0.94em; }
  .latin { font-style: italic; }
  .unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .plain { border: 0; background: none; padding: 0.5em; color: var(--reed); font-weight: 600; text-decoration: underline; text-underline-offset: 0.2em; }
  .solid { border: 0.125em solid var(--reed); border-radius: 2em; background: var(--reed); color: var(--paper); padding: 0.5em 1.25em; font-weight: 700; }
  .outline { border: 0.125em solid var(--reed); border-radius: 2em; background: var(--paper); color: var(--reed); padding: 0.5em 1.25em; font-weight: 700; }
  @media (forced-colors: active) {
    .solid, .outline { border-color: ButtonText; color: ButtonText; background: ButtonFace; }
  }
  @media (prefers-reduced-motion: reduce) {
    *, *::before, *::after { animation: none !important; transition: none !important; scroll-behavior: auto !important; }
  }
`;
