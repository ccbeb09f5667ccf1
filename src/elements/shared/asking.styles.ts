// How a question and a couplet look: heading, help, caution, cards, and the buttons that send the answer.
import { css } from 'lit';

export const askingStyles = css`
  :host { font-size: max(1em, 17px); }
  .question > * + * { margin-block-start: 1em; }
  [role='heading'] { font-size: 1.35em; outline-offset: 0.2em; letter-spacing: -0.01em; scroll-margin-block-start: 1em; }
  .end [role='heading'] { font-size: 1.25em; }
  .step { display: block; font-size: 0.7em; font-weight: 600; letter-spacing: 0; color: var(--mud); margin-block-end: 0.35em; }

  @container (min-width: 40em) {
    [role='heading'] { font-size: 1.85em; }
    .step { font-size: 0.52em; }
  }

  summary { display: flex; align-items: center; gap: 0.55em; color: var(--reed); font-weight: 600; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  summary::before { content: ''; flex: none; inline-size: 0.5em; block-size: 0.5em; border-inline-end: 0.15em solid; border-block-end: 0.15em solid; rotate: -45deg; margin-inline: 0.15em 0.2em; }
  details[open] > summary::before { rotate: 45deg; }
  :host(:dir(rtl)) details:not([open]) > summary::before { rotate: 45deg; border-inline: 0.15em solid; border-inline-start: 0; }

  .question > .help { margin-block: 0.1em 0; }
  .question > .help:not([open]) + * { margin-block-start: 0.4em; }
  .help p { padding-inline-start: 1.3em; max-inline-size: 38em; }
  .help p + p { margin-block-start: 0.4em; }

  .caution { border-inline-start: 0.35em solid var(--rust); background: var(--silt); border-radius: var(--radius); padding: 0.75em 1em; }
  .caution b { color: var(--rust); }

  .card { display: flex; gap: 0.8em; align-items: center; min-block-size: 3.5em; padding: 0.7em 0.85em; border: 0.15em solid transparent; border-radius: var(--radius); background: var(--silt); cursor: pointer; touch-action: manipulation; }
  .card:hover { border-color: var(--line); }
  .card:has(:checked) { border-color: var(--reed); background: color-mix(in srgb, var(--reed) 12%, var(--paper)); box-shadow: inset 0 0 0 0.1em var(--reed); }
  .card:has(:focus-visible) { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  .card input { flex: none; inline-size: 1.35em; block-size: 1.35em; margin: 0; accent-color: var(--reed); scroll-margin-block: 3em 10em; outline: none; }
  .place { flex: none; display: block; inline-size: 5.5em; aspect-ratio: 1; }
  .text { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.1em; min-inline-size: 0; overflow-wrap: anywhere; }
  .title { font-weight: 700; line-height: 1.3; }
  .detail { font-size: 0.94em; line-height: 1.35; color: var(--mud); }

  .bar { position: sticky; inset-block-end: 0; z-index: 1; display: grid; gap: 0.5em; padding-block: 0.4em max(0.5em, env(safe-area-inset-bottom)); background: var(--paper); box-shadow: 0 -0.5em 0.6em var(--paper); clip-path: inset(-1.2em 0 0); }
  /* On a low screen, as a phone held sideways, it would cover what it asks about. */
  @media (max-height: 30em) { .bar { position: static; } }
  .tally { color: var(--mud); }
  .tally:not(:empty) + b { margin-inline-start: 0.3em; }
  .question > .plain { margin-inline-start: -0.5em; }
  .sureness { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.5em; }
  .sureness button { padding-inline: 0.4em; line-height: 1.2; }
  .others { display: flex; flex-wrap: wrap; justify-content: center; column-gap: 0.5em; }
  .others .plain { padding-inline: 0.3em; font-size: 0.94em; }
  .others .outline { flex: 1; white-space: nowrap; padding-inline: 0.75em; }
  @container (min-width: 40em) {
    .sureness { grid-template-columns: repeat(3, minmax(8em, auto)); justify-content: start; }
    .others { justify-content: start; column-gap: 1em; }
    .others .outline { flex: 0 1 auto; min-inline-size: 14em; }
  }

  @media (forced-colors: active) {
    .card:has(:checked) { outline: 0.2em solid Highlight; outline-offset: -0.2em; }
  }
  @media print {
    .bar { display: none; }
    .card { break-inside: avoid; }
  }
`;
