// Which plant was taken for which: a table with a dot in each cell as large as its share of the row.
import { html, nothing, type TemplateResult } from 'lit';
import type { Confusion } from '../../practice/index.ts';

export interface ConfusionWords {
  readonly was: string;
  readonly unsure: string;
  readonly title: string;
}

/** Only plants that were asked, or said. `name` puts a plant into words. */
export function renderConfusion(
  { taxa, counts }: Confusion,
  name: (id: string) => string,
  words: ConfusionWords,
): TemplateResult {
  const asked = taxa.filter((_, i) => (counts[i] ?? []).some((count) => count > 0));
  const said = taxa.filter((_, j) => counts.some((row) => (row[j] ?? 0) > 0));
  const lost = counts.some((row) => (row.at(-1) ?? 0) > 0);
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.title}><table class="confusion">
    <thead><tr><td class="quiet">${words.was}</td>${said.map((id) => html`<th scope="col"><span>${name(id)}</span></th>`)}${lost ? html`<th scope="col"><span>${words.unsure}</span></th>` : nothing}</tr></thead>
    <tbody>
      ${asked.map((id) => {
        const row = counts[taxa.indexOf(id)] ?? [];
        const all = row.reduce((a, b) => a + b, 0);
        const cell = (count: number, right: boolean) =>
          html`<td class=${right ? 'right' : ''}>${count === 0 ? nothing : html`<svg viewBox="0 0 20 20" aria-hidden="true"><circle class=${right ? 'good' : 'bad'} cx="10" cy="10" r=${(2 + 7 * Math.sqrt(count / all)).toFixed(1)} /></svg>${count}`}</td>`;
        return html`<tr><th scope="row">${name(id)}</th>${said.map((other) => cell(row[taxa.indexOf(other)] ?? 0, other === id))}${lost ? cell(row.at(-1) ?? 0, false) : nothing}</tr>`;
      })}
    </tbody>
  </table></div>`;
}
