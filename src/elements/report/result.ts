// What the key says, as the report will tell it.
import { html, nothing, type TemplateResult } from 'lit';
import type { Find } from '../../report/find/index.ts';
import { asClause } from '../../words/clause.ts';
import { type Desk, section } from './desk.ts';

export interface ResultDesk {
  readonly find: Find;
  /** Names of plants in the language of the person. */
  readonly nameOf: (taxon: string) => string;
  /** It came from a file. */
  readonly opened: boolean;
}

/** "Most likely giant reed: about 99 in 100." */
export function resultLine(
  { words, saying }: Pick<Desk, 'words' | 'saying'>,
  { find, nameOf }: Pick<ResultDesk, 'find' | 'nameOf'>,
): string {
  const { kind, taxa, probability } = find.verdict;
  const odds = saying.words.common.odds(kind === 'outside' ? find.outside : probability);
  return words.result.kind[kind](taxa[0] ? nameOf(taxa[0]) : '', asClause(odds, saying.language));
}

export function renderResult(desk: Desk, result: ResultDesk): TemplateResult {
  const { words } = desk;
  const { find, opened } = result;
  const answers = find.trail.filter(({ skipped }) => skipped !== true).length;
  return section(
    desk,
    'result',
    words.result.heading,
    answers > 0,
    answers === 0
      ? html`<p>${words.result.none}</p>`
      : html`<p class="said">${resultLine(desk, result)}</p>
          <p>${words.result.answers(answers)}</p>
          ${opened ? html`<p class="quiet">${words.result.opened}</p>` : nothing}`,
  );
}
