// Which plants somebody can be trusted with, and the rule that decided it: a word and a mark for each.
import { html, svg, type TemplateResult } from 'lit';
import type { Readiness } from '../../practice/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';

/** A closed leaf for ready, an open bud for not yet: shape as well as word. */
export const readyMark = (ready: boolean): TemplateResult =>
  html`<svg class=${ready ? 'ready' : 'bud'} viewBox="0 0 24 24" aria-hidden="true">${ready ? svg`<path d="M12 2C18 7 18 14 12 19 6 14 6 7 12 2ZM12 8V22" />` : svg`<path d="M12 8C14.500 11 14.500 14 12 16.500 9.500 14 9.500 11 12 8ZM12 16.500V22" />`}</svg>`;

/** Why, in a sentence with its numbers. */
export const reasonOf = ({ rule, looks, right, days }: Readiness, words: PracticeWords, language: string): string =>
  looks === 0
    ? words.rule[rule]
    : `${words.rule[rule]} (${words.ruleOf(looks, new Intl.NumberFormat(language, { style: 'percent' }).format(right.n === 0 ? 0 : right.count / right.n), days)})`;

/** `name` puts a plant into words. */
export function renderReadiness(
  rows: readonly Readiness[],
  name: (id: string) => unknown,
  words: PracticeWords,
  language: string,
): TemplateResult {
  return html`<table class="readiness">
    <thead><tr><th scope="col">${words.plant}</th><th scope="col">${words.isReady}</th><th scope="col">${words.why}</th></tr></thead>
    <tbody>
      ${rows.map(
        (row) => html`<tr>
          <th scope="row">${name(row.taxon)}</th>
          <td class="mark">${readyMark(row.ready)} ${row.ready ? words.isReady : words.notYet}</td>
          <td class="quiet">${reasonOf(row, words, language)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
