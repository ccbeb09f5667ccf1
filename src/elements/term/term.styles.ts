import { css } from 'lit';

/** A sentence lies in the line it is part of. */
export const termsStyles = css`
  :host { display: inline; }
  :host([hidden]) { display: none; }
`;

export const termStyles = css`
  :host { display: inline; container-type: normal; line-height: inherit; }
  [part='word'] { display: inline; min-block-size: 0; min-inline-size: 0; padding: 0; border: 0; background: none; text-align: start; line-height: inherit; font: inherit; text-decoration: underline dotted 0.1em; text-decoration-color: var(--reed); text-underline-offset: 0.22em; anchor-name: --word; }
  [part='word']:hover, [part='word'][aria-expanded='true'] { text-decoration-style: solid; }
  :host([alone]) [part='word'] { display: inline-block; min-block-size: max(3em, 48px); min-inline-size: 48px; }
  #panel { box-sizing: border-box; inline-size: min(24em, calc(100vw - 1em)); max-block-size: min(80vh, 34em); overflow: auto; margin: 0; padding: 0.9em 1em 0.4em; border: 0.125em solid var(--line); border-radius: var(--radius); background: var(--paper); color: var(--ink); font-size: 1em; font-weight: 400; font-style: normal; line-height: 1.45; text-align: start; white-space: normal; box-shadow: 0 0.3em 1.2em #0004; }
  #panel:popover-open { display: grid; gap: 0.5em; position: fixed; inset: auto 0.5em 0.5em; margin-inline: auto; }
  @supports (position-area: block-end) {
    #panel:popover-open { position-anchor: --word; inset: auto; margin: 0.3em; position-area: block-end; position-try-fallbacks: flip-block, block-end span-inline-end, block-end span-inline-start, block-start span-inline-end, block-start span-inline-start; justify-self: anchor-center; }
  }
  #panel:not([popover], [hidden]) { display: grid; gap: 0.5em; inline-size: auto; margin-block: 0.4em; box-shadow: none; }
  .name { font-weight: 700; font-size: 1.15em; }
  .name::first-letter { text-transform: uppercase; }
  .place { inline-size: 9em; }
  .plain-words { font-size: 1.1em; }
  .sources { font-size: 0.85em; overflow-wrap: anywhere; }
  .sources a { display: inline-block; padding-block: 0.35em; }
  .close { justify-self: start; }
  @media (forced-colors: active) {
    [part='word'] { text-decoration-color: currentColor; }
  }
  @media print {
    [part='word'] { text-decoration: none; }
    #panel:is(:popover-open, :not([hidden])) { display: none; }
  }
`;
