// A report as one HTML file that needs nothing else: to be printed, or kept as a PDF. No script, nothing loaded.
import { html } from '../sheet/escape.ts';
import { type FormOptions, type Report, reportOf, type Section } from './told.ts';

/** Kinds of picture that hold nothing but a picture. */
const PICTURES: readonly string[] = ['image/jpeg', 'image/png', 'image/webp', 'image/avif', 'image/gif'];

/** All text of the page is escaped, and may be written in either direction. */
export function pageOf(options: FormOptions): string {
  const report = reportOf(options);
  const { title, language, lead, cautions, sections } = report;
  return `<!doctype html>
<html lang="${html(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${html(`${title}: ${report.plant}`)}</title>
<style>${STYLE}</style>
</head>
<body>
<header>
<p>${html(title)}</p>
${lead.map((line, i) => (i === 0 ? `<h1>${html(line)}</h1>` : `<p>${html(line)}</p>`)).join('\n')}
</header>
${warned(cautions)}
${sections.map(drawn).join('\n')}
</body>
</html>
`;
}

const warned = ({ heading, items }: Report['cautions']): string =>
  items.length === 0
    ? ''
    : `<section class="cautions">
<h2>${html(heading)}</h2>
<ul>
${items.map((item) => `<li>${html(item)}</li>`).join('\n')}
</ul>
</section>`;

function drawn({ id, heading, facts, table, notes, photos }: Section): string {
  const list = facts.map(([label, value]) => `<dt>${html(label)}</dt><dd dir="auto">${html(value)}</dd>`);
  return `<section class="${id}">
<h2>${html(heading)}</h2>
${list.length > 0 ? `<dl>\n${list.join('\n')}\n</dl>` : ''}
${table ? tableOf(table) : ''}
${photos.length > 0 ? `<div class="pictures">\n${photos.map(pictured).join('\n')}\n</div>` : ''}
${notes.map((note) => `<p dir="auto">${html(note)}</p>`).join('\n')}
</section>`;
}

function tableOf({ head, rows }: NonNullable<Section['table']>): string {
  const cells = (row: readonly string[]) =>
    row.map((cell, i) =>
      i === 0 ? `<th scope="row" dir="auto">${html(cell)}</th>` : `<td dir="auto">${html(cell)}</td>`,
    );
  return `<table>
<thead><tr>${head.map((cell) => `<th scope="col">${html(cell)}</th>`).join('')}</tr></thead>
<tbody>
${rows.map((row) => `<tr>${cells(row).join('')}</tr>`).join('\n')}
</tbody>
</table>`;
}

/** The picture where the find holds it, else its place: photographs that travel beside the report. */
function pictured({ photo: { data, type, width, height }, title }: Section['photos'][number]): string {
  const shown =
    data && PICTURES.includes(type)
      ? `<img src="data:${html(type)};base64,${html(data)}" width="${width}" height="${height}" alt="${html(title)}">`
      : `<div class="slot">${width} × ${height}</div>`;
  return `<figure>${shown}<figcaption dir="auto">${html(title)}</figcaption></figure>`;
}

const STYLE = `
@page { size: auto; margin: 15mm 14mm; }
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 12pt/1.35 Arial, Helvetica, sans-serif; overflow-wrap: break-word; }
header { border-block-end: 2pt solid; margin-block-end: 4mm; }
h1 { margin: 0 0 2mm; font-size: 20pt; line-height: 1.15; }
h2 { margin: 5mm 0 2mm; font-size: 14pt; line-height: 1.2; break-after: avoid; }
p { margin: 0 0 2mm; white-space: pre-line; }
ul { margin: 0; padding-inline-start: 6mm; }
li, tr, figure { break-inside: avoid; }
.cautions { border: 1.5pt solid; padding: 3mm 4mm; }
.cautions h2 { margin-block-start: 0; }
dl { display: grid; grid-template-columns: minmax(8em, 14em) 1fr; gap: 1mm 4mm; margin: 0 0 2mm; }
dt { font-weight: bold; }
dd { margin: 0; min-width: 0; overflow-wrap: anywhere; white-space: pre-line; }
td:nth-child(2) { overflow-wrap: anywhere; }
table { width: 100%; border-collapse: collapse; margin-block-end: 2mm; }
thead { display: table-header-group; }
th, td { padding: 1mm 2mm 1mm 0; border-block-end: 0.5pt solid; text-align: start; vertical-align: baseline; }
tbody th { font-weight: normal; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(70mm, 1fr)); gap: 4mm; }
figure { margin: 0; }
img { max-width: 100%; max-height: 110mm; width: auto; height: auto; border: 0.5pt solid; }
.slot { display: grid; place-items: center; height: 50mm; border: 1pt dashed; }
@media screen {
  body { max-width: 52em; margin: 1.5em auto; padding: 0 1em; }
}
@media screen and (max-width: 30em) { table { font-size: 10.5pt; } dl { grid-template-columns: 1fr; } dd { margin-block-end: 2mm; } }
`;
