import { css } from 'lit';

/** A sentence lies in the line it is part of. */
export const termsStyles = css`
  :host { display: inline; }
  :host([hidden]) { display: none; }
`;

export const termStyles = css`
  :host { display: inline; line-height: inherit; }
  [part='word'] { display: inline; min-block-size: 0; min-inline-size: 0; padding: 0; border: 0; background: none; font: inherit; text-decoration: underline dotted 0.1em var(--reed); text-underline-offset: 0.22em; anchor-name: --word; }
  [part='word']:hover, [part='word'][aria-expanded='true'] { text-decoration-style: solid; }
  :host([alone]) [part='word'] { display: inline-block; min-block-size: max(3em, 48px); min-inline-size: 48px; }
  #panel { gap: 0.5em; inline-size: min(24em, calc(100vw - 1em)); max-block-size: min(80vh, 34em); overflow: auto; margin: 0; padding: 0.9em 1em 0.4em; border: 0.125em solid var(--line); border-radius: var(--radius); background: var(--paper); color: var(--ink); font-weight: 400; line-height: 1.45; box-shadow: 0 0.3em 1.2em #0004; }
  #panel:popover-open { display: grid; position: fixed; inset: auto 0.5em 0.5em; margin-inline: auto; }
  @supports (position-area: block-end) {
    #panel:popover-open { position-anchor: --word; inset: auto; margin: 0.3em; position-area: block-end; position-try: most-block-size flip-block; max-block-size: calc(100% - 0.6em); }
  }
  #panel:not([popover], [hidden]) { display: grid; inline-size: auto; margin-block: 0.4em; box-shadow: none; }
  .name { font-weight: 700; font-size: 1.15em; }
  .name::first-letter { text-transform: uppercase; }
  .place { inline-size: 7em; }
  .sources { font-size: 0.85em; overflow-wrap: anywhere; }
  .sources a { display: inline-block; padding-block: 0.35em; }
  @media print {
    [part='word'] { text-decoration: none; }
    #panel:is(:popover-open, :not([hidden])) { display: none; }
  }
`;
