import { css, unsafeCSS } from 'lit';
import { sheetRules } from '../../report/sheet/index.ts';

export const styles = css`
  :host { font-size: max(1em, 17px); overflow-wrap: anywhere; --step: 1.13em; }
  [part='choice'] { display: grid; gap: 0.75em; justify-items: start; padding-block: 0.5em 1.5em; }
  legend { font-weight: 600; }
  label { display: flex; align-items: center; gap: 0.6em; padding-block: 0.3em; }
  input { flex: none; inline-size: 1.35em; block-size: 1.35em; margin: 0; accent-color: var(--reed); }
  .solid { padding-inline: 2em; }

  [part='sheet'] { background: var(--paper); line-height: 1.32; }
  .head-0, .head-1, .head-2 { break-after: avoid; }
  .head-0 { font-size: 1.9em; line-height: 1.1; margin-block-end: 0.2em; }
  .head-1 { font-size: 1.36em; border-block-end: 0.1em solid; padding-block-end: 0.2em; margin-block: 1.2em 0.5em; }
  .head-2 { margin-block: 1em 0.3em; }
  p { margin-block-end: 0.45em; }
  ol, ul { margin-block-end: 0.7em; padding-inline-start: 1.4em; }
  ol { list-style: decimal; }
  ul { list-style: disc; }
  li { margin-block-end: 0.27em; }
  .rank { font-style: normal; }
  ${unsafeCSS(sheetRules)}
  .cautions .head-1 { border: 0; margin-block-start: 0; padding: 0; }
  .cautions .head-2 { margin-block: 0.7em 0.2em; }
  .alike .head-2 { margin-block: 0 0.1em; text-wrap: wrap; }

  /* The page's own font may be wider than the file's. */
  .bracketed .lead { padding-inline-start: 5.2em; }
  .indented .lead { padding-inline-start: 2.7em; }

  @media screen {
    @container (max-width: 40em) {
      .key { --step: 0.4em; }
      .pairs { columns: 1; }
      .bracketed .lead { padding-inline-start: 3.2em; }
      .from { display: block; }
    }
  }
  @media print {
    :host { color-scheme: light; --ink: #000; --paper: #fff; }
    [part='choice'] { display: none; }
    .key > .head-1, .look-alikes > .head-1, .plants > .head-1 { margin-block-start: 0; }
  }
`;
