// A sheet as one HTML file that needs nothing else: a style sheet of its own, no script, nothing loaded.
import { html } from './escape.ts';
import { classesOf, coupletsOf, labelOf, sentence } from './rows.ts';
import type { Alike, Name, Sheet, SheetLead } from './sheet.ts';
import { styleSheet } from './style.ts';
import type { SheetWords } from './words.ts';

/** All text of the sheet is escaped. */
export function htmlOf(sheet: Sheet): string {
  const { words, title, region, version, reviewed } = sheet;
  const edition = words.edition(version, reviewed);
  return `<!doctype html>
<html lang="${html(sheet.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${html(title)}</title>
<style>${styleSheet(`${title}. ${edition}`)}</style>
</head>
<body>
<header>
<h1>${html(title)}</h1>
<p class="region">${html(region)}</p>
<p>${html(edition)}</p>
</header>
${cautions(sheet)}
${key(sheet)}
${lookAlikes(sheet)}
${plants(sheet)}
</body>
</html>
`;
}

const list = (items: readonly string[], tag = 'ul'): string =>
  items.length === 0 ? '' : `<${tag}>\n${items.map((item) => `<li>${item}</li>`).join('\n')}\n</${tag}>`;

function cautions({ words, cautions: { general, looking, plants: ofPlants } }: Sheet): string {
  if (general.length + looking.length + ofPlants.length === 0) return '';
  const some = (heading: string, items: readonly string[]) =>
    items.length === 0 ? '' : `<h3>${html(heading)}</h3>\n${list(items)}`;
  return `<section class="cautions">
<h2>${html(words.cautions)}</h2>
${list(general.map(html))}
${some(words.beforeLooking, looking.map(html))}
${some(
  words.ofPlants,
  ofPlants.map(({ names, text }) => `<b>${names.map(shown).join(', ')}.</b> ${html(text)}`),
)}
</section>`;
}

function key(sheet: Sheet): string {
  const { words, style, leads } = sheet;
  if (leads.length === 0) return '';
  return `<section class="key ${style}">
<h2>${html(words.key)}</h2>
${list(words.use[style].map(html), 'ol')}
${style === 'bracketed' ? bracketed(sheet) : leads.map((lead) => row(lead, sheet)).join('\n')}
</section>`;
}

function bracketed(sheet: Sheet): string {
  return coupletsOf(sheet.leads)
    .map((some) => `<div class="couplet">\n${some.map((lead) => row(lead, sheet)).join('\n')}\n</div>`)
    .join('\n');
}

function row(one: SheetLead, sheet: Sheet): string {
  const { couplet, lead, from, main, also } = one;
  const id = lead === 0 ? ` id="c${couplet}"` : '';
  const back = lead === 0 && from.length > 0 ? ` <span class="from">(${from.join(', ')})</span>` : '';
  const more = also.map((text) => ` ${html(sentence(text))}`).join('');
  return (
    `<p class="${classesOf(one)}"${id}><span class="number">${labelOf(one)}${back}</span>` +
    `<span class="says"><span class="main">${html(sentence(main))}</span>${more}</span>${goal(one, sheet)}</p>`
  );
}

function goal({ to }: SheetLead, { words, style }: Sheet): string {
  if (to === undefined) return '';
  if (typeof to === 'number')
    return ` <a class="to" href="#c${to}">${style === 'indented' ? html(words.see(to)) : to}</a>`;
  const names = to.map((name) => `<span class="plant">${full(name, words)}</span>`).join('\n');
  const why = to.length > 1 ? `<span class="plant stand">${html(words.together)}</span>` : '';
  return ` <span class="to">${why}${names}</span>`;
}

const shown = ({ common, scientific }: Name): string => (common ? html(common) : `<i>${html(scientific)}</i>`);

const full = (name: Name, words: SheetWords): string =>
  `${name.common ? `${html(name.common)} ` : ''}<i>${html(name.scientific)}</i> ${standing(name, words)}`;

const standing = ({ status }: Name, words: SheetWords): string =>
  `<span class="stand${status === 'invasive' ? ' invasive' : ''}">${html(words.status[status])}</span>`;

function lookAlikes({ words, alike }: Sheet): string {
  if (alike.length === 0) return '';
  return `<section class="look-alikes">
<h2>${html(words.alike)}</h2>
<p>${html(words.alikeUse)}</p>
<div class="pairs">
${alike.map((pair) => pairOf(pair, words)).join('\n')}
</div>
</section>`;
}

function pairOf({ names: [one, other], tells }: Alike, words: SheetWords): string {
  const [a, b] = [one, other].map((name) => `${shown(name)} ${standing(name, words)}`);
  const said = tells.map(({ words: text, how }) => (how === 'always' ? `<b>${html(text)}</b>` : html(text)));
  return `<div class="alike"><h3>${words.pair(a as string, b as string).join('')}</h3>\n<p>${said.join(' ')}</p></div>`;
}

function plants({ words, plants: all }: Sheet): string {
  const rows = all.map(({ name, couplets }) => {
    const { common, scientific } = name;
    return `<tr><td>${html(common)}</td><td><i>${html(scientific)}</i></td><td>${standing(name, words)}</td><td>${couplets.join(', ')}</td></tr>`;
  });
  const head = [words.common, words.scientific, words.standing, words.couplets];
  return `<section class="plants">
<h2>${html(words.plants)}</h2>
<p>${html(words.plantsUse)}</p>
<table>
<thead><tr>${head.map((text) => `<th scope="col">${html(text)}</th>`).join('')}</tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>
</section>`;
}
