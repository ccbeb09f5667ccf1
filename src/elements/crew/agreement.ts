// Whether every two people say the same of the same specimens, and judge cover alike.
import { html, nothing, type TemplateResult } from 'lit';
import type { Between, CrewFigures } from '../../practice/index.ts';
import { rangeOf } from '../figures/rates.ts';
import { percent, type View } from '../practice/feedback.ts';
import { decimal } from '../practice/figures.ts';
import type { Names } from './names.ts';

export function renderAgreement({ words, saying }: View, { between, members }: CrewFigures, names: Names) {
  if (members.length < 2) return html`<p>${words.crew.agreeAlone}</p>`;
  const pairOf = ({ members: [one, other] }: Between) => words.crew.pair(names.get(one) ?? '', names.get(other) ?? '');
  const both = between.filter(({ agreement }) => agreement !== undefined);
  const apart = between.filter(({ agreement }) => agreement === undefined);
  if (both.length === 0) return html`<p>${words.crew.agreeNone}</p>`;
  const { language } = saying;
  return html`<p class="quiet">${words.crew.agreeSays}</p>
    <div class="scroll" tabindex="0" role="group" aria-label=${words.crew.agree}><table class="rates">
      ${headOf([words.crew.two, words.crew.beyondChance, words.crew.same, words.crew.shared])}
      <tbody>${both.map(
        (one) => html`<tr>
          <th scope="row">${pairOf(one)}</th>
          <td>${kappaOf(one, words.crew.noKappa, words.between, language)}</td>
          <td>${named(words.crew.same)}${percent(one.agreement?.observed ?? 0, language)}</td>
          <td>${named(words.crew.shared)}${one.agreement?.n}</td>
        </tr>`,
      )}</tbody>
    </table></div>
    ${apart.length > 0 ? html`<p class="quiet">${words.crew.nothingShared(apart.map(pairOf).join('; '))}</p>` : nothing}`;
}

/** Nothing while no two judged the same plot. */
export function renderCover({ words, saying }: View, { between }: CrewFigures, names: Names) {
  const judged = between.filter(({ cover }) => cover.classes !== undefined);
  if (judged.length === 0) return nothing;
  const signed = new Intl.NumberFormat(saying.language, { maximumFractionDigits: 1, signDisplay: 'exceptZero' });
  const points = (value: number) => words.crew.points(signed.format(value));
  return html`<p class="quiet">${words.crew.coverSays}</p>
    <div class="scroll" tabindex="0" role="group" aria-label=${words.crew.cover}><table class="rates">
      ${headOf([words.crew.two, words.crew.difference, words.crew.limits, words.crew.shared])}
      <tbody>${judged.map(({ members: [one, other], cover: { difference, classes } }) => {
        return html`<tr>
          <th scope="row">${words.crew.pair(names.get(one) ?? '', names.get(other) ?? '')}</th>
          <td>${named(words.crew.difference)}<b>${difference ? points(difference.mean) : words.crew.tooFew}</b></td>
          <td>${difference ? html`${named(words.crew.limits)}${words.between(signed.format(difference.low), points(difference.high))}` : nothing}</td>
          <td>${named(words.crew.shared)}${classes?.n}</td>
        </tr>`;
      })}</tbody>
    </table></div>`;
}

const headOf = (columns: readonly string[]): TemplateResult =>
  html`<thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>`;

/** Of a column, before its number where there is no room for the row of headings. */
const named = (words: string) => html`<span class="heading">${words}: </span>`;

/** From -1 to 1, so that chance alone is the middle of the line. */
const onLine = (kappa: number): number => (kappa + 1) / 2;

function kappaOf(
  { agreement, interval }: Between,
  none: string,
  between: (low: string, high: string) => string,
  language: string,
) {
  const kappa = agreement?.kappa;
  if (agreement === undefined || kappa === undefined || interval === undefined) return none;
  const [low, high] = interval;
  const { n } = agreement;
  return html`${rangeOf({ n, count: 0, mean: onLine(kappa), low: onLine(low), high: onLine(high) })}<span class="numbers"><b>${decimal(kappa, language)}</b> <small>${between(decimal(low, language), decimal(high, language))}</small></span>`;
}
