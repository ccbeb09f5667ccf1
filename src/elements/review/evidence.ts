// What a report says, held against what each plant shows.
import { html, nothing, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import type { Find } from '../../report/find/index.ts';
import type { Dossier } from '../../report/review/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import type { Witness } from '../comparison/witness.ts';
import type { Saying } from '../shared/said.ts';
import { aboutOf, answerOf } from './witness.ts';

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

/** How the answers are shown: whether as the person saw them too, and how to turn that. */
export interface Shown {
  readonly theirs: boolean;
  readonly turn: () => void;
}

/** Every answer with how sure the person was, how long it took, and how it goes with each candidate. */
export function renderAnswers(view: View, { theirs, turn }: Shown): TemplateResult {
  const { find, dossier, text, level, nameOf, saying } = view;
  const said = dossier.rows.map((row) => {
    const { answer, known } = row;
    const [label, words] = [known ? saying.say(known.character.label) : answer.label, answerOf(row, saying)];
    return {
      row,
      label,
      words,
      differs: label !== answer.label || words !== answer.words,
    };
  });
  return html`<section>
    ${heading(level, text.answers)}
    ${
      said.some(({ differs }) => differs)
        ? html`<div><button class="plain" type="button" aria-pressed=${theirs} @click=${turn}>${text.theirs(languageName(find.language, saying.language))}</button></div>`
        : nothing
    }
    <ol class="answers">
      ${said.map(({ row, label, words, differs }) => {
        const { answer, known, fits } = row;
        return html`<li>
          <p lang=${ifDefined(known ? undefined : find.language)}>${label}: <b>${words}</b><span class="quiet">${aboutOf(row, text)}</span></p>
          ${differs && theirs ? html`<p class="theirs" lang=${find.language}>${answer.label}: ${answer.words}</p>` : nothing}
          ${
            fits === undefined
              ? html`<p class="warn">${text.notInKey}</p>`
              : answer.skipped
                ? nothing
                : html`<ul class="fits">
                    ${dossier.candidates.map(({ id }, i) => html`<li>${nameOf(id)}: <span class=${fits[i] === 'no' ? 'no' : ''}>${text.fit[fits[i] ?? 'unknown']}</span></li>`)}
                  </ul>`
          }
        </li>`;
      })}
    </ol>
  </section>`;
}

const languageName = (language: string, reader: string): string =>
  new Intl.DisplayNames([reader, 'en'], { type: 'language' }).of(language) ?? language;

/** What separates the candidates, and what of it was asked. */
export const renderApart = ({ dossier: { candidates }, text, level }: View, witness: Witness): TemplateResult =>
  html`<section>
    ${heading(level, text.apart)}
    <leadwort-comparison taxa=${candidates.map(({ id }) => id).join(' ')} .witness=${witness}></leadwort-comparison>
  </section>`;

const LEAST = 0.005;

/** The standing in the report beside today's. */
export function renderStanding({ find, dossier: { today }, text, level, nameOf, saying }: View): TemplateResult {
  const share = new Intl.NumberFormat(saying.language, {
    style: 'percent',
    maximumFractionDigits: 1,
  });
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
