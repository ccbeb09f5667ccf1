// How the sheet is drawn, on paper first: black on white, at arm's length, on A4 as on Letter.
import { cssString } from './escape.ts';

/** Steps of the indented layout that are drawn; deeper ones stand no further in. */
export const MOST_STEPS = 14;

/**
 * The rules that hold wherever the sheet is drawn, in sizes of its text. Dots lead from the end of a statement to where
 * it goes: they start behind its last word and run on under what stands at the right. `--step` and `--paper` are whoever
 * draws it to set.
 */
export const sheetRules = `
p, li, tr, .couplet, .alike { break-inside: avoid; }
p, li { orphans: 3; widows: 3; }
.cautions {
  margin-block-start: 0.9em;
  padding: 0.7em 1.15em 0.1em;
  border: 0.16em solid;
  box-decoration-break: clone;
}
.cautions li { margin-block-end: 0.16em; }
.cautions > ul:first-of-type { font-size: 1.08em; font-weight: bold; }
.key, .look-alikes, .plants { break-before: page; }
.couplet { margin-block-end: 0.68em; }
.lead {
  position: relative;
  overflow: hidden;
  margin: 0;
  padding-block-end: 0.18em;
  padding-inline-start: 4.3em;
}
.lead::after { content: ""; display: block; clear: both; }
.number { position: absolute; inset-inline-start: 0; font-size: 0.97em; font-weight: bold; }
.from { font-weight: normal; }
.main { font-weight: bold; }
.says::after {
  content: "${' .'.repeat(160)}" / "";
  position: absolute;
  margin-inline-start: 0.34em;
  white-space: nowrap;
  letter-spacing: 0.08em;
}
.to {
  position: relative;
  float: inline-end;
  max-width: 100%;
  padding-inline-start: 0.45em;
  background: var(--paper);
  print-color-adjust: exact;
  color: inherit;
  text-decoration: none;
  text-align: end;
  font-weight: bold;
}
.to i { font-weight: normal; }
.to .plant { display: block; }
.stand { font-weight: normal; }
.invasive { border: 0.08em solid; padding: 0 0.23em; font-weight: bold; }
.below .says::after { content: none; }
.indented .lead { padding-inline-start: 2.3em; padding-block-end: 0.36em; }
${Array.from({ length: MOST_STEPS }, (_, d) => `.indented .step-${d + 1} { margin-inline-start: calc(${d + 1} * var(--step)); }`).join('\n')}
.pairs { columns: 2; column-gap: 1.8em; font-size: 0.97em; line-height: 1.25; }
.alike { margin-block-end: 0.8em; }
.alike p { margin: 0; }
table { width: 100%; border-collapse: collapse; }
th, td { padding: 0.23em 0.45em 0.23em 0; border-block-end: 0.04em solid; text-align: start; vertical-align: baseline; }
td .stand { white-space: nowrap; }
thead { display: table-header-group; }
`;

/** The style sheet of the file. Page numbers stand in margin boxes (CSS Paged Media 3, 4.2 and 5.3), `foot` beside them. */
export const styleSheet = (foot: string): string => `
@page {
  size: auto;
  margin: 15mm 14mm 18mm;
  @bottom-left { content: ${cssString(foot)}; font: 12pt Arial, Helvetica, sans-serif; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 12pt Arial, Helvetica, sans-serif; }
}
:root { color-scheme: light; --paper: #fff; --step: 5mm; }
* { box-sizing: border-box; }
body {
  margin: 0;
  color: #000;
  background: var(--paper);
  font: 12.5pt/1.32 Georgia, "Times New Roman", Times, serif;
  overflow-wrap: break-word;
}
h1, h2, h3, th, .number, .to { font-family: Arial, Helvetica, sans-serif; }
h1 { margin: 0 0 1mm; font-size: 24pt; line-height: 1.1; }
h2 { margin: 0 0 3mm; padding-bottom: 1mm; border-bottom: 1.5pt solid #000; font-size: 17pt; line-height: 1.15; }
h3 { margin: 5mm 0 1.5mm; font-size: 12.5pt; line-height: 1.2; }
h1, h2, h3 { break-after: avoid; }
p { margin: 0 0 2mm; }
ol, ul { margin: 0 0 3mm; padding-inline-start: 6mm; }
li { margin-block-end: 1.2mm; }
i { font-style: italic; }
.region { font-size: 13pt; }
${sheetRules}
.cautions h2 { border: 0; padding: 0; }
.cautions h3 { margin-block: 3.5mm 1mm; }
.alike h3 { margin-block: 0 0.5mm; font-size: 12pt; }
@media screen {
  body { max-width: 50em; margin: 2em auto; padding: 0 1em; }
  .to:is(a):hover { text-decoration: underline; }
}
@media screen and (max-width: 40em) { .pairs { columns: 1; } }
`;
