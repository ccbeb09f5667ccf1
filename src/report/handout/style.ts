// How a hand-out is drawn: on paper first, one side of A4 or Letter, nothing but the sources below 11 points.
export const handoutStyle = `
@page { size: auto; margin: 9mm 11mm; }
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 11pt/1.18 Arial, Helvetica, sans-serif; overflow-wrap: break-word; }
h1 { margin: 0; font-size: 21pt; line-height: 1.1; }
h1::first-letter { text-transform: uppercase; }
h2 { margin: 0 0 0.6mm; font-size: 12pt; line-height: 1.15; break-after: avoid; }
p { margin: 0 0 0.8mm; }
ul { margin: 0; padding-inline-start: 4mm; }
li { margin-block-end: 0.4mm; }
header { display: flex; align-items: center; gap: 5mm; margin-block-end: 1.5mm; border-block-end: 1.5pt solid; }
.picture { inline-size: 26mm; block-size: 26mm; flex: none; }
.picture .face { fill: #fff; }
.only { font-weight: bold; }
.status { font-weight: normal; }
.status.invasive { border: 1pt solid; padding-inline: 1mm; font-weight: bold; }
.columns { columns: 2; column-gap: 6mm; }
section { margin-block-end: 1.5mm; }
li, .alike p { break-inside: avoid; }
.stop { border: 2pt solid; padding: 1.5mm 2mm 0.5mm; break-inside: avoid; }
.dont { border-inline-start: 3pt solid; padding-inline-start: 2mm; }
.contact { margin-block-start: 1mm; }
.write { border-block-end: 0.75pt solid; block-size: 10mm; }
sup { white-space: nowrap; font-size: 8pt; line-height: 0; padding-inline-start: 0.3mm; }
footer { margin-block-start: 1.5mm; border-block-start: 0.75pt solid; padding-block-start: 0.8mm; font-size: 7pt; line-height: 1.15; }
footer p { margin: 0; }
@media screen {
  body { max-width: 54em; margin: 1.5em auto; padding: 0 1em; }
}
@media screen and (max-width: 40em) { .columns { columns: 1; } }
`;
