// "I looked and saw none": which plant was looked for, and what was searched.
import { html, nothing, type TemplateResult } from 'lit';
import type { Find } from '../../report/find/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { type Desk, field, section, tick } from './desk.ts';

/** Plants in the language of the person, those of concern first. */
export interface SearchDesk {
  readonly plants: readonly { readonly taxon: string; readonly name: string }[];
  /** Id of the plant that was looked for; empty while nothing tells. */
  readonly sought: string;
  readonly there: boolean;
}

/** The plants of the key that may have been looked for; one of another key, if the find names it, at the end. */
export function soughtFor({ prepared: { key } }: Snapshot, { sought }: Find, nameOf: (taxon: string) => string) {
  const { compare } = new Intl.Collator();
  const named = key.taxa.map(({ id, status }) => ({ taxon: id, name: nameOf(id), last: status !== 'invasive' }));
  const other = sought && !key.taxa.some(({ id }) => id === sought.taxon);
  return [
    ...named.sort((a, b) => Number(a.last) - Number(b.last) || compare(a.name, b.name)),
    ...(other ? [{ taxon: sought.taxon, name: sought.name }] : []),
  ];
}

export const renderNone = (desk: Desk): TemplateResult =>
  tick(desk, 'none', desk.words.none.tick, desk.words.none.help);

export function renderSearched(desk: Desk, { plants, sought, there }: SearchDesk): TemplateResult {
  const { words, set } = desk;
  const { none } = words;
  return section(
    desk,
    'searched',
    none.heading,
    there,
    html`<div class="field">
        <label for="sought">${none.sought}</label>
        <select id="sought" @change=${(event: Event) => set('sought', (event.currentTarget as HTMLSelectElement).value)}>
          ${sought === '' ? html`<option value="" selected>${none.choose}</option>` : nothing}
          ${plants.map(({ taxon, name }) => html`<option value=${taxon} ?selected=${taxon === sought}>${name}</option>`)}
        </select>
      </div>
      ${field(desk, 'effort', none.effort, { kind: 'lines', help: none.effortHelp })}`,
  );
}
