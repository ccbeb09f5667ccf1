import { css } from 'lit';

export const styles = css`
  :host { font-size: max(1em, 17px); }
  .room { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1em; }
  [role='heading'] { font-size: 1.35em; letter-spacing: -0.01em; scroll-margin-block-start: 1em; }
  section [role='heading'], .at-end [role='heading'] ~ [role='heading'] { font-size: 1.15em; }
  .step { display: block; font-size: 0.7em; font-weight: 600; letter-spacing: 0; color: var(--mud); margin-block-end: 0.35em; }
  legend { font-weight: 700; margin-block-end: 0.5em; }
  .trouble { border-inline-start: 0.35em solid var(--reed); background: var(--silt); border-radius: var(--radius); padding: 0.75em 1em; }

  .card { display: flex; gap: 0.8em; align-items: center; min-block-size: max(3.5em, 48px); padding: 0.7em 0.85em; border: 0.15em solid transparent; border-radius: var(--radius); background: var(--silt); cursor: pointer; touch-action: manipulation; }
  .card:hover { border-color: var(--line); }
  .card:has(:checked) { border-color: var(--reed); background: color-mix(in srgb, var(--reed) 12%, var(--paper)); box-shadow: inset 0 0 0 0.1em var(--reed); }
  .card:has(:focus-visible) { outline: 0.2em solid var(--reed); outline-offset: 0.15em; }
  .card input { flex: none; inline-size: 1.35em; block-size: 1.35em; margin: 0; accent-color: var(--reed); outline: none; scroll-margin-block-end: 10em; }
  .text { display: grid; gap: 0.1em; min-inline-size: 0; overflow-wrap: anywhere; }
  .title { font-weight: 700; line-height: 1.3; }
  .detail { font-size: 0.94em; color: var(--mud); }
  .courses, .options { display: grid; gap: 0.6em; }
  .ways { display: grid; gap: 1em; }
  .ways .solid, .ways .outline { inline-size: 100%; }
  .ways .quiet { margin-block-start: 0.35em; }
  .pair { display: flex; flex-wrap: wrap; gap: 0.6em; align-items: center; }
  .leave { justify-self: start; }

  .task { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1em; }
  .specimen { margin: 0; display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6em; align-content: start; }
  .scene { border: 1px solid color-mix(in srgb, var(--line) 45%, transparent); border-radius: var(--radius); background: var(--paper); }
  .scene .drawing { max-block-size: 15em; }
  .scene .drawing :is(.face, .line) { stroke-width: 1.15; }
  .scene .drawing .unsure :is(.face, .line) { fill: none; stroke-dasharray: 3 2.4; }
  .scene .drawing .fine { stroke-width: 0.6; }
  .scene .drawing .scale { fill-opacity: 0.7; }
  .plot .leaf { fill: color-mix(in srgb, var(--reed) 60%, var(--paper)); stroke: var(--ink); stroke-width: 0.4; }
  .close { position: relative; display: grid; grid-auto-flow: column; grid-template-rows: repeat(2, auto); grid-auto-columns: 5.4em; gap: 0.6em 0.5em; overflow-x: auto; padding-block-end: 0.4em; font-size: 0.86em; line-height: 1.2; scroll-snap-type: x proximity; }
  .close li { scroll-snap-align: start; }
  .close span { color: var(--mud); overflow-wrap: anywhere; }
  .read .close { display: block; max-inline-size: 12em; }
  .photos { display: flex; gap: 0.6em; overflow-x: auto; }
  .photos .photo { position: static; inline-size: 14em; block-size: auto; border-radius: var(--radius); }
  dl > div { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.4fr); gap: 0.75em; padding-block: 0.3em; border-block-end: 1px solid color-mix(in srgb, var(--line) 30%, transparent); overflow-wrap: anywhere; }
  dt { color: var(--mud); }
  dd { margin: 0; }

  .reply, .ran { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1em; align-content: start; }
  leadwort-practice-run { display: grid; gap: 0.75em; }
  .bar { position: sticky; inset-block-end: 0; z-index: 1; display: grid; gap: 0.5em; padding-block: 0.4em max(0.5em, env(safe-area-inset-bottom)); background: var(--paper); box-shadow: 0 -0.5em 0.6em var(--paper); clip-path: inset(-1.2em 0 0); }
  .run .bar { position: static; box-shadow: none; }
  @media (max-height: 30em) { .bar { position: static; } }
  .sureness { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.5em; }
  .sureness button { padding-inline: 0.15em; line-height: 1.2; overflow-wrap: normal; }

  .told { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.8em; border-inline-start: 0.35em solid var(--mud); padding-inline-start: 0.9em; }
  .told.right { border-color: var(--reed); }
  .caution { background: var(--silt); border-radius: var(--radius); padding: 0.75em 1em; color: var(--rust); }
  .answer .common { font-size: 1.1em; }
  .decided { display: grid; gap: 0.5em; }
  .sides { display: grid; grid-template-columns: repeat(2, minmax(0, 11em)); gap: 0.75em; }
  .sides li { display: grid; gap: 0.3em; align-content: start; overflow-wrap: anywhere; }
  .back li { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1em; padding-block: 0.4em; border-block-end: 1px solid color-mix(in srgb, var(--line) 35%, transparent); }
  .every article { padding-block: 0.8em; }
  section { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.5em; margin-block-start: 1em; }

  .file { display: grid; gap: 1em; }
  .record { border: 1px solid var(--line); border-radius: var(--radius); padding: 1em; }
  .record .title { font-size: 1.2em; }
  .sign { display: grid; grid-template-columns: repeat(auto-fit, minmax(9em, 1fr)); gap: 3em 1.5em; margin-block-start: 3em; }
  .sign p { border-block-start: 1px solid var(--ink); padding-block-start: 0.3em; font-size: 0.9em; }

  /* The plant stays in sight while the key asks of it. */
  @media (min-height: 36em) {
    .run .specimen { position: sticky; inset-block-start: 0; z-index: 1; max-block-size: 40vh; overflow-y: auto; overscroll-behavior: contain; background: var(--paper); box-shadow: 0 0.5em 0.6em var(--paper); clip-path: inset(0 0 -1.2em); }
    .run .scene .drawing { max-block-size: 7em; }
    .run .close { grid-template-rows: auto; }
  }

  @container (min-width: 46em) {
    [role='heading'] { font-size: 1.7em; }
    .step { font-size: 0.55em; }
    .task { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 2em; }
    .scene .drawing, .run .scene .drawing { max-block-size: 28em; }
    .run .specimen { max-block-size: none; inset-block-start: 1em; align-self: start; box-shadow: none; clip-path: none; }
    .close { grid-auto-flow: row; grid-template: none; grid-template-columns: repeat(auto-fill, minmax(5em, 1fr)); }
    .courses { grid-template-columns: repeat(auto-fit, minmax(16em, 1fr)); }
    .ways { grid-template-columns: repeat(2, minmax(0, 22em)); align-items: start; }
    .ways .pair { grid-column: 1 / -1; }
  }
  @media (forced-colors: active) {
    .card { border-color: ButtonText; }
    .card:has(:checked) { outline: 0.2em solid Highlight; outline-offset: -0.2em; }
    .plot .leaf { fill: CanvasText; stroke: Canvas; }
  }
  @media print {
    .room > :not(.record) { display: none; }
    .record { border: 0; padding: 0; font-size: 9.5pt; line-height: 1.25; }
    .record tr { break-inside: avoid; }
    .record :is(th, td) { padding-block: 0.15em; }
    .record .mark { white-space: nowrap; }
    .record.long { font-size: 7pt; line-height: 1.1; }
    .record.long :is(th, td) { padding-block: 0; }
    .record.long th { white-space: nowrap; }
    .record.long .sign { margin-block-start: 2em; }
  }
`;
