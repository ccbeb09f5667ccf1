// Shares with their intervals as a dot on a line, one row each, and the numbers beside them: a table that is also a plot.
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Rate } from '../../practice/types.ts';

export interface RateRow {
  readonly label: unknown;
  readonly rate: Rate;
  /** Where it should be, or what was believed before: a mark on the line. */
  readonly mark?: number;
}

export interface RateWords {
  readonly label: string;
  readonly share: string;
  readonly looks: string;
  /** Of the mark; absent where rows have none. */
  readonly mark?: string;
  readonly between: (low: string, high: string) => string;
  readonly language: string;
}

const WIDTH = 120;
const HEIGHT = 20;

/** A line from low to high with a dot at the mean, on a scale from 0 to 1; the mark is a stroke across it. */
export const rangeOf = ({ mean, low, high }: Rate, mark?: number): TemplateResult => {
  const x = (share: number) => (6 + share * (WIDTH - 12)).toFixed(1);
  return html`<svg class="range" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
    <path class="axis" d=${`M6 ${HEIGHT / 2}H${WIDTH - 6}M6 6V14M${WIDTH - 6} 6V14M${WIDTH / 2} 8V12`} />
    <path class="bar" d=${`M${x(low)} ${HEIGHT / 2}H${x(high)}`} />
    <circle class="dot" cx=${x(mean)} cy=${HEIGHT / 2} r="4.5" />
    ${mark === undefined ? nothing : svg`<path class="mark" d=${`M${x(mark)} 2V18`} />`}
  </svg>`;
};

/** Of a column, before its number where there is no room for the row of headings. */
const heading = (words: string) => html`<span class="heading">${words}: </span>`;

export function renderRates(rows: readonly RateRow[], words: RateWords): TemplateResult {
  const format = new Intl.NumberFormat(words.language, { style: 'percent', maximumFractionDigits: 0 });
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.share}><table class="rates">
    <thead><tr>
      <th scope="col">${words.label}</th><th scope="col">${words.share}</th>${words.mark === undefined ? nothing : html`<th scope="col">${words.mark}</th>`}<th scope="col">${words.looks}</th>
    </tr></thead>
    <tbody>
      ${rows.map(
        ({ label, rate, mark }) => html`<tr>
          <th scope="row">${label}</th>
          <td>${rate.n === 0 ? nothing : html`${rangeOf(rate, mark)}<span class="numbers"><b>${format.format(rate.mean)}</b> <small>${words.between(format.format(rate.low), format.format(rate.high))}</small></span>`}</td>
          ${words.mark === undefined ? nothing : html`<td>${mark === undefined ? nothing : html`${heading(words.mark)}${format.format(mark)}`}</td>`}
          <td>${heading(words.looks)}${rate.n}</td>
        </tr>`,
      )}
    </tbody>
  </table></div>`;
}
