// What the specialist says: confirm, correct, or ask for a photograph.
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { PreparedKey } from '../../key/index.ts';
import { claimOf, type Entered } from '../../report/review/index.ts';
import { NameSearch } from '../names/search.ts';
import type { View } from './evidence.ts';

export interface Entry extends View {
  readonly prepared: PreparedKey;
  readonly entry: Entered;
  /** Photographs that may be asked for: id and words. */
  readonly photos: readonly (readonly [id: string, words: string])[];
  readonly lacking: readonly ('status' | 'taxon' | 'wanted' | 'by')[];
  readonly set: (change: Partial<Entered>) => void;
  /** What was typed to find a plant. */
  readonly query: string;
  readonly search: (query: string) => void;
  readonly write: () => void;
}

export function renderEntry(at: Entry): TemplateResult {
  const { find, text, level, nameOf, entry, lacking, set, write } = at;
  const claim = claimOf(find);
  const choice = (status: Exclude<Entered['status'], ''>, words: string) => html`<label class="radio target">
    <input type="radio" name="status" .checked=${entry.status === status} @change=${() => set({ status })} />${words}
  </label>`;
  const value = (event: Event) => (event.currentTarget as HTMLInputElement | HTMLTextAreaElement).value;
  return html`<section>
    <div role="heading" aria-level=${level} class="sub" id="say">${text.say}</div>
    <div role="radiogroup" aria-labelledby="say">
      ${claim === undefined ? nothing : choice('confirmed', text.confirm(nameOf(claim)))}
      ${choice('corrected', text.correct)} ${choice('photo-wanted', text.want)}
    </div>
    ${entry.status === 'corrected' ? renderPlants(at) : nothing}
    ${entry.status === 'photo-wanted' ? renderWanted(at) : nothing}
    <label for="by">${text.by}</label>
    <input id="by" type="text" maxlength="300" autocomplete="name" .value=${entry.by} @input=${(event: Event) => set({ by: value(event) })} />
    <label for="remarks">${text.remarks}</label>
    <textarea id="remarks" rows="3" maxlength="4000" .value=${entry.remarks} @input=${(event: Event) => set({ remarks: value(event) })}></textarea>
    <div role="alert">${lacking.map((one) => html`<p class="wrong">${text.lacking[one]}</p>`)}</div>
    <div><button class="solid" type="button" @click=${write}>${text.write}</button></div>
  </section>`;
}

const searches = new WeakMap<PreparedKey, NameSearch>();
function searchIn(prepared: PreparedKey): NameSearch {
  const search = searches.get(prepared) ?? new NameSearch(prepared.key);
  searches.set(prepared, search);
  return search;
}

/** Any plant of the key, found by its name; before anything is typed, the other candidates. */
function renderPlants({ find, prepared, entry, text, dossier, nameOf, set, query, search }: Entry): TemplateResult {
  const asked = query.trim() !== '';
  const others = () => dossier.candidates.filter(({ id }) => id !== claimOf(find));
  const ids = (asked ? searchIn(prepared).find(query).taxa : others()).map(({ id }) => id);
  const chosen = entry.taxon === '' || ids.includes(entry.taxon) || entry.taxon === 'outside' ? [] : [entry.taxon];
  return html`<div>
    <label for="search">${text.search}</label>
    <input id="search" type="search" autocomplete="off" spellcheck="false" .value=${query} @input=${(event: Event) => search((event.currentTarget as HTMLInputElement).value)} />
    <p role="status">${asked && ids.length === 0 ? text.searchNone : nothing}</p>
    <div role="radiogroup" aria-label=${text.chosen}>
      ${repeat(
        [...chosen, ...ids, 'outside'],
        (id) => id,
        (id) => html`<label class="radio target">
          <input type="radio" name="taxon" .checked=${entry.taxon === id} @change=${() => set({ taxon: id })} />${nameOf(id)}
        </label>`,
      )}
    </div>
  </div>`;
}

function renderWanted({ entry, photos, text, set }: Entry): TemplateResult {
  return html`<div role="group" aria-label=${text.wanted}>
    <p>${text.wanted}</p>
    ${photos.map(([id, words]) => {
      const { wanted } = entry;
      const change = () => set({ wanted: wanted.includes(id) ? wanted.filter((one) => one !== id) : [...wanted, id] });
      return html`<label class="radio target"><input type="checkbox" .checked=${wanted.includes(id)} @change=${change} />${words}</label>`;
    })}
  </div>`;
}
