// Twelve months by their letters: those in which specialists act, or in which nothing is done, and the present one.
import { html, nothing, svg, type TemplateResult } from 'lit';
import { monthsInWords } from '../../guidance/index.ts';
import type { Month, Season } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';

const YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const satisfies readonly Month[];

/** Never by colour alone: months to act in are filled, months to do nothing in are crossed out. */
export function renderSeason(
  months: readonly Month[],
  season: Season | undefined,
  now: Month,
  words: Words,
): TemplateResult {
  const cells = YEAR.map((month) => {
    const x = (month - 1) * 20;
    const look = months.includes(month) ? (season ?? 'meant') : 'free';
    return svg`<rect class=${look} x=${x + 1} y="1" width="18" height="20" rx="3" />
      ${look === 'avoid' ? svg`<path class="cross" d="M${x + 3} 20 ${x + 17} 2" />` : nothing}
      <text class=${look} x=${x + 10} y="16">${[...words.common.months[month]][0]?.toUpperCase()}</text>
      ${month === now ? svg`<path class="now" d="M${x + 4} 26h12" />` : nothing}`;
  });
  const inWords = monthsInWords(months, words);
  const said = season === undefined ? inWords : `${words.guidance.season[season]}: ${inWords}`;
  return html`<p class="months-words">${said}</p>
    <svg class="months" viewBox="0 0 240 29" role="img" aria-label=${words.guidance.band(said, words.common.months[now])}>${cells}</svg>`;
}
