// A plant by its names: the common one of the reader's language, the Latin one, and where it belongs.
import { html, type TemplateResult } from 'lit';
import type { Key, PreparedKey, Taxon } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';
import { statusOf } from './status.ts';

const primary = (tag: string): string => (tag.split('-')[0] ?? '').toLowerCase();

/** The name to use in a sentence: in the reader's language, else in the key's own, else the scientific one. */
export function plantName(key: Key, taxon: Taxon, language: string): { readonly text: string; readonly lang: string } {
  for (const lang of [primary(language), key.languages[0] ?? '']) {
    const text = taxon.common.get(lang)?.[0];
    if (text !== undefined) return { text, lang };
  }
  return { text: taxon.name, lang: 'la' };
}

export function taxonOf(prepared: PreparedKey, id: string): Taxon {
  const taxon = prepared.key.taxa[prepared.taxonIndex.get(id) ?? -1];
  if (taxon === undefined) throw new Error(`the key has no taxon ${id}`);
  return taxon;
}

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
