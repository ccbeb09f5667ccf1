import { css } from 'lit';

export const styles = css`
  .crew { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1em; border-radius: var(--radius); }
  .over { outline: 0.2em dashed var(--reed); outline-offset: 0.4em; }
  [role='heading'] { font-size: 1.5em; letter-spacing: -0.01em; }
  section { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6em; margin-block-start: 0.75em; }
  section [role='heading'] { font-size: 1.2em; }
  .intro, section > .quiet { max-inline-size: 44em; }
  .faults { display: grid; gap: 0.4em; border-inline-start: 0.35em solid var(--rust); background: var(--silt); border-radius: var(--radius); padding: 0.75em 1em; overflow-wrap: anywhere; }
  .people li { display: flex; flex-wrap: wrap; gap: 0 1em; align-items: center; justify-content: space-between; max-inline-size: 44em; border-block-end: 1px solid color-mix(in srgb, var(--line) 35%, transparent); }
  .choices { display: flex; flex-wrap: wrap; gap: 1em; }
  .field { align-content: start; flex: 1 1 14em; }
  .field :is(select, input) { inline-size: 100%; }
  .ready-table thead small { display: block; font-weight: 400; line-height: 1.25; }
  .ready-table :is(th, td) { padding-block: 0.1em; }
  .ready-table tbody th { position: sticky; inset-inline-start: 0; z-index: 1; inline-size: 12em; min-inline-size: 6.5em; padding-inline-end: 0.7em; background: var(--paper); overflow-wrap: break-word; hyphens: auto; }
  .cell { display: inline-flex; flex-wrap: wrap; align-items: center; gap: 0.15em 0.4em; inline-size: 100%; min-inline-size: 5.5em; padding: 0.2em 0.5em; border: 0.1em solid transparent; border-radius: var(--radius); background: none; text-align: start; line-height: 1.2; }
  .cell[aria-expanded='true'] { border-color: var(--reed); background: var(--silt); }
  .yes { font-weight: 700; color: var(--reed); }
  .why td { padding: 0 0 0.6em; }
  .why p { position: sticky; inset-inline-start: 0; inline-size: max-content; max-inline-size: min(40em, 100cqi); padding: 0.6em 0.9em; border-inline-start: 0.35em solid var(--reed); background: var(--silt); border-radius: var(--radius); }
  .paper { display: none; }
  .lessons { list-style: decimal; padding-inline-start: 1.6em; display: grid; gap: 0.9em; max-inline-size: 44em; }
  .lessons li > * { display: block; }
  .lessons .figures { display: flex; flex-wrap: wrap; gap: 0 0.8em; align-items: center; }
  .tips, .faults ul { list-style: disc; padding-inline-start: 1.2em; }
  .tips > li { display: list-item; }
  .alarms { color: var(--rust); font-weight: 600; }
  pre { margin: 0; padding: 0.75em 1em; border-radius: var(--radius); background: var(--silt); overflow-x: auto; }
  @media (forced-colors: active) {
    .cell, .faults, .why p { border-color: ButtonText; }
    .cell[aria-expanded='true'] { outline: 0.15em solid Highlight; outline-offset: -0.2em; }
  }
  @media print {
    .intro, .opening, .news, .choices, .people button, .tap, .why, .taking, details { display: none; }
    .paper { display: block; }
    .crew { font-size: 10pt; }
    .ready-table { font-size: 8.5pt; }
    .ready-table tbody th { position: static; }
    .cell { display: inline; min-block-size: 0; min-inline-size: 0; padding: 0; border: 0; }
    .ready-table .paper { color: var(--mud); font-size: 0.9em; }
    tr, li { break-inside: avoid; }
  }
`;
