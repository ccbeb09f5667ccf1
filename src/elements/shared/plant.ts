// A plant by its names: the common one of the reader's language, the Latin one, and where it belongs.
import { html, type TemplateResult } from 'lit';
import type { Key, Taxon } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';
import { plantName, taxonOf } from './plant-name.ts';
import { statusOf } from './status.ts';

export { plantName, taxonOf };

/** A scientific name: italic but for the words of rank, as botanists print it (common practice, no source). */
export function latin({ name }: Pick<Taxon, 'name'>): TemplateResult {
  const parts = name.split(/(?<=\s)(subsp\.|var\.|f\.|×)(?=\s)/);
  return html`<i class="latin" lang="la">${parts.map((part, i) => (i % 2 === 0 ? part : html`<span class="rank">${part}</span>`))}</i>`;
}

/** Common name, Latin name and status. */
export function plant(key: Key, taxon: Taxon, words: Words, language: string): TemplateResult {
  const { text, lang } = plantName(key, taxon, language);
  const common = lang === 'la' ? latin(taxon) : html`<b class="common" lang=${lang}>${text}</b> ${latin(taxon)}`;
  return html`<span class="plant">${common} ${statusOf(taxon.status, words)}</span>`;
}
