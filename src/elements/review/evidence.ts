// What a report says, held against what each plant shows.
import { html, nothing, type TemplateResult } from 'lit';
import type { Find } from '../../report/find/index.ts';
import type { Dossier } from '../../report/review/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import type { Saying } from '../shared/said.ts';

export interface View {
  readonly find: Find;
  readonly dossier: Dossier;
  readonly text: ReviewWords;
  /** Of the headings. */
  readonly level: number;
  readonly nameOf: (taxon: string) => string;
  readonly saying: Saying;
}

const heading = (level: number, words: string) =>
  html`<div role="heading" aria-level=${level} class="sub">${words}</div>`;

/** Every answer with how sure the person was, how long it took, and how it goes with each candidate. */
export function renderAnswers({ dossier: { rows, candidates }, text, level, nameOf, saying }: View): TemplateResult {
  const { sureness } = saying.words.trail;
  return html`<section>
    ${heading(level, text.answers)}
    <ol class="answers">
      ${rows.map(({ answer, fits }) => {
        const about = [
          answer.sureness && sureness[answer.sureness],
          answer.seconds === undefined ? undefined : text.seconds(answer.seconds),
        ].filter((one) => one !== undefined);
        return html`<li>
          <p>${answer.label}: <b>${answer.words}</b>${about.length > 0 ? html` <span class="quiet">(${about.join(', ')})</span>` : nothing}</p>
          ${
            fits === undefined
              ? html`<p class="warn">${text.notInKey}</p>`
              : answer.skipped
                ? nothing
                : html`<ul class="fits">
                    ${candidates.map(({ id }, i) => html`<li>${nameOf(id)}: <span class=${fits[i] === 'no' ? 'no' : ''}>${text.fit[fits[i] ?? 'unknown']}</span></li>`)}
                  </ul>`
          }
        </li>`;
      })}
    </ol>
  </section>`;
}

/** Rows that are shown: the surest and easiest. */
const MOST_ROWS = 8;

/** What separates the candidates, and whether the person was asked. */
export function renderApart({ dossier: { comparison }, text, level, nameOf, saying }: View): TemplateResult {
  const { difference, pair, from } = saying.words.comparison;
  const rows = comparison?.telling.slice(0, MOST_ROWS) ?? [];
  return html`<section>
    ${heading(level, text.apart)}
    ${rows.length === 0 ? html`<p>${text.apartNone}</p>` : nothing}
    <ul class="apart">
      ${rows.map(
        ({ character, pairs, answer }) => html`<li>
          <p><b>${saying.say(character.label)}</b>${answer ? nothing : html` <span class="quiet">(${text.notAsked})</span>`}</p>
          ${pairs.map(
            (one) => html`<p>
              ${pair(difference[one.difference], from(nameOf(one.taxa[0]), nameOf(one.taxa[1])))}${one.words ? html`. ${saying.say(one.words)}` : nothing}
            </p>`,
          )}
        </li>`,
      )}
    </ul>
  </section>`;
}

const LEAST = 0.005;

/** The standing in the report beside today's. */
export function renderStanding({ find, dossier: { today }, text, level, nameOf, saying }: View): TemplateResult {
  const share = new Intl.NumberFormat(saying.language, { style: 'percent', maximumFractionDigits: 1 });
  const then = new Map(find.standing.map(({ taxon, probability }) => [taxon, probability]));
  const now = new Map(today.standing.map(({ taxon, probability }) => [taxon, probability]));
  const shown = [
    ...new Set([
      ...today.standing.filter(({ probability }) => probability >= LEAST).map(({ taxon }) => taxon),
      ...then.keys(),
    ]),
  ];
  const cell = (p: number | undefined) => html`<td class="number">${p === undefined ? '–' : share.format(p)}</td>`;
  return html`<section>
    ${heading(level, text.standing)}
    <table>
      <thead><tr><th scope="col">${text.plant}</th><th scope="col" class="number">${text.reported}</th><th scope="col" class="number">${text.today}</th></tr></thead>
      <tbody>
        ${shown.map((id) => html`<tr><th scope="row">${nameOf(id)}</th>${cell(then.get(id))}${cell(now.get(id))}</tr>`)}
        <tr><th scope="row">${text.outside}</th>${cell(find.outside)}${cell(today.outside)}</tr>
      </tbody>
    </table>
  </section>`;
}
