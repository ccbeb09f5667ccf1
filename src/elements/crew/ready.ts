// Who can be trusted with which plant: plants in rows, people in columns, the rule that decided on a tap.
import { html, nothing, type TemplateResult } from 'lit';
import type { CrewFigures } from '../../practice/index.ts';
import { readyMark, reasonOf } from '../figures/readiness.ts';
import type { View } from '../practice/feedback.ts';
import { ownName } from '../practice/plant-name.ts';
import type { Names } from './names.ts';

/** A cell of the table. */
export interface Cell {
  readonly member: string;
  readonly taxon: string;
}

export function renderReady(
  { prepared, saying, words }: View,
  { members }: CrewFigures,
  names: Names,
  told: Cell | undefined,
  tell: (cell: Cell | undefined) => void,
): TemplateResult {
  const { language } = saying;
  const taxa = members[0]?.figures.readiness.map(({ taxon }) => taxon) ?? [];
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.crew.ready}>
    <table class="ready-table">
      <thead><tr>
        <th scope="col">${words.plant}</th>
        ${members.map(({ id, figures: { readiness } }) => {
          const count = readiness.filter(({ ready }) => ready).length;
          return html`<th scope="col">${names.get(id)}<small>${words.crew.readyOf(count, readiness.length)}</small></th>`;
        })}
      </tr></thead>
      <tbody>
        ${taxa.map((taxon, i) => {
          const plant = ownName(prepared, taxon, language);
          const about = told?.taxon === taxon ? members.find(({ id }) => id === told.member) : undefined;
          const row = about?.figures.readiness[i];
          return html`<tr>
              <th scope="row">${plant}</th>
              ${members.map(({ id, figures }) => {
                const cell = figures.readiness[i];
                if (cell === undefined) return html`<td></td>`;
                const open = about?.id === id;
                return html`<td class="mark">
                  <button class=${cell.ready ? 'cell yes' : 'cell'} type="button" aria-expanded=${open ? 'true' : 'false'} @click=${() => tell(open ? undefined : { member: id, taxon })}>
                    ${readyMark(cell.ready)}<span>${cell.ready ? words.isReady : words.notYet}</span>
                  </button>
                  <small class="paper">${reasonOf(cell, words, language)}</small>
                </td>`;
              })}
            </tr>
            ${about && row ? html`<tr class="why"><td colspan=${members.length + 1}><p role="status"><b>${names.get(about.id)}, ${plant}: ${row.ready ? words.isReady : words.notYet}.</b> ${reasonOf(row, words, language)}</p></td></tr>` : nothing}`;
        })}
      </tbody>
    </table>
  </div>`;
}
