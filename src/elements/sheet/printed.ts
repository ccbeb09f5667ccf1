// The sheet as templates: the same as the file that `leadwort sheet` writes, for the inside of a page.
import { html, nothing, type TemplateResult } from 'lit';
import {
  type Alike,
  classesOf,
  coupletsOf,
  labelOf,
  type Name,
  type Sheet,
  type SheetLead,
  sentence,
} from '../../report/sheet/index.ts';
import { latin } from '../shared/plant.ts';

type Part = TemplateResult | typeof nothing;
type Heading = (below: 0 | 1 | 2, text: unknown) => TemplateResult;

/** `level` is that of the title's heading, 1 to 6. */
export function printed(sheet: Sheet, level: number): TemplateResult {
  const { words, title, region, version, reviewed } = sheet;
  const heading: Heading = (below, text) =>
    html`<div role="heading" aria-level=${Math.min(6, level + below)} class="head-${below}">${text}</div>`;
  return html`<div part="sheet">
    ${heading(0, title)}
    <p class="region">${region}</p>
    <p>${words.edition(version, reviewed)}</p>
    ${cautions(sheet, heading)} ${key(sheet, heading)} ${lookAlikes(sheet, heading)} ${plants(sheet, heading)}
  </div>`;
}

const items = (all: readonly unknown[]): Part =>
  all.length === 0 ? nothing : html`<ul>${all.map((one) => html`<li>${one}</li>`)}</ul>`;

function cautions({ words, cautions: { general, looking, plants: ofPlants } }: Sheet, heading: Heading): Part {
  if (general.length + looking.length + ofPlants.length === 0) return nothing;
  const some = (text: string, all: readonly unknown[]) =>
    all.length === 0 ? nothing : html`${heading(2, text)} ${items(all)}`;
  return html`<section class="cautions">
    ${heading(1, words.cautions)} ${items(general)} ${some(words.beforeLooking, looking)}
    ${some(
      words.ofPlants,
      ofPlants.map(
        ({ names, text }) => html`<b>${names.map((name, i) => [i > 0 ? ', ' : '', shown(name)])}.</b> ${text}`,
      ),
    )}
  </section>`;
}

function key(sheet: Sheet, heading: Heading): TemplateResult {
  const { words, style, leads } = sheet;
  const rows = (some: readonly SheetLead[]) => some.map((lead) => row(lead, sheet));
  return html`<section class="key ${style}">
    ${heading(1, words.key)}
    <ol>${words.use[style].map((text) => html`<li>${text}</li>`)}</ol>
    ${style === 'bracketed' ? coupletsOf(leads).map((some) => html`<div class="couplet">${rows(some)}</div>`) : rows(leads)}
  </section>`;
}

// No space may stand between the parts of a lead: the dots begin behind its last word.
function row(one: SheetLead, sheet: Sheet): TemplateResult {
  const { lead, from, main, also } = one;
  const back = lead === 0 && from.length > 0 ? html` <span class="from">(${from.join(', ')})</span>` : nothing;
  return html`<p class=${classesOf(one)}><span class="number">${labelOf(one)}${back}</span><span class="says"><span class="main">${sentence(main)}</span>${also.map((text) => ` ${sentence(text)}`)}</span>${goal(one, sheet)}</p>`;
}

function goal({ to }: SheetLead, { words, style }: Sheet): Part {
  if (to === undefined) return nothing;
  if (typeof to === 'number') return html` <span class="to">${style === 'indented' ? words.see(to) : to}</span>`;
  return html` <span class="to"
    >${to.length > 1 ? html`<span class="plant stand">${words.together}</span>` : nothing}${to.map(
      (name) =>
        html`<span class="plant">${name.common} ${latin({ name: name.scientific })} ${standing(name, words)}</span>`,
    )}</span
  >`;
}

const shown = ({ common, scientific }: Name): unknown => common || latin({ name: scientific });

const standing = ({ status }: Name, words: Sheet['words']): TemplateResult =>
  html`<span class=${status === 'invasive' ? 'stand invasive' : 'stand'}>${words.status[status]}</span>`;

function lookAlikes({ words, alike }: Sheet, heading: Heading): Part {
  if (alike.length === 0) return nothing;
  const name = (one: Name) => html`${shown(one)} ${standing(one, words)}`;
  const tell = ({ words: text, how }: Alike['tells'][number]) =>
    how === 'always' ? html`<b>${text}</b> ` : `${text} `;
  return html`<section class="look-alikes">
    ${heading(1, words.alike)}
    <p>${words.alikeUse}</p>
    <div class="pairs">
      ${alike.map(
        ({ names: [one, other], tells }) => html`<div class="alike">
          ${heading(2, words.pair(name(one), name(other)))}
          <p>${tells.map(tell)}</p>
        </div>`,
      )}
    </div>
  </section>`;
}

function plants({ words, plants: all }: Sheet, heading: Heading): TemplateResult {
  const head = [words.common, words.scientific, words.standing, words.couplets];
  return html`<section class="plants">
    ${heading(1, words.plants)}
    <p>${words.plantsUse}</p>
    <table>
      <thead>
        <tr>
          ${head.map((text) => html`<th scope="col">${text}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${all.map(
          ({ name, couplets }) => html`<tr>
            <td>${name.common}</td>
            <td>${latin({ name: name.scientific })}</td>
            <td>${standing(name, words)}</td>
            <td>${couplets.join(', ')}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}
