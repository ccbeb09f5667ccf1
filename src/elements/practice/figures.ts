// How somebody is doing, in figures: which plants, what is misread, how sure, day by day, what for what.
import { html, nothing, type TemplateResult } from 'lit';
import type { LearnerFigures } from '../../practice/index.ts';
import { renderConfusion } from '../figures/confusion.ts';
import { type RateRow, renderRates } from '../figures/rates.ts';
import { renderReadiness } from '../figures/readiness.ts';
import type { View } from './feedback.ts';
import { percent } from './feedback.ts';
import { ownName } from './plant-name.ts';

export function renderFigures(view: View, figures: LearnerFigures, level: number): TemplateResult {
  const { prepared, saying, words } = view;
  const { language } = saying;
  const heading = (text: string) => html`<div role="heading" aria-level=${level + 1}>${text}</div>`;
  if (figures.attempts === 0) return html`<p>${words.nothingYet}</p>`;
  const name = (id: string) => ownName(prepared, id, language);
  const of = (label: string, share: string) => ({ label, share, looks: words.looks, between: words.between, language });
  const reading = [...figures.reading]
    .sort(([, a], [, b]) => b.mean - a.mean)
    .map(([id, rate]): RateRow => ({ label: labelOf(view, id), rate }));
  const { agreement, interval } = figures.confusion;
  return html`
    <section>${heading(words.readiness)}${renderReadiness(figures.readiness, name, words, language)}</section>
    ${reading.length > 0 ? html`<section>${heading(words.reading)}<p class="quiet">${words.readingSays}</p>${renderRates(reading, of(words.character, words.wrongly))}</section>` : nothing}
    <section>
      ${heading(words.sureness)}<p class="quiet">${words.surenessSays}</p>
      ${renderRates(
        figures.calibration.bins.map(({ sureness, meant, right }) => ({
          label: words.sure[sureness],
          rate: right,
          mark: meant,
        })),
        { ...of(words.sureness, words.share), mark: words.meant },
      )}
    </section>
    <section>
      ${heading(words.progress)}
      ${renderRates(
        figures.progress.map(({ day, right }) => ({ label: dayIn(day, language), rate: right })),
        of(words.day, words.share),
      )}
    </section>
    <section>
      ${heading(words.confusion)}<p class="quiet">${words.confusionSays}</p>
      ${renderConfusion(figures.confusion, name, { was: words.was, unsure: words.unsure, title: words.confusion })}
      ${
        agreement?.kappa === undefined || interval === undefined
          ? nothing
          : html`<p>${words.kappa(decimal(agreement.kappa, language), decimal(interval[0], language), decimal(interval[1], language), percent(agreement.observed, language))}</p>`
      }
    </section>
    <section>
      ${heading(words.speed)}
      <dl class="pairs">${[...figures.speed].map(([kind, seconds]) => html`<div><dt>${words.kind[kind]}</dt><dd>${words.seconds(decimal(seconds, language, 0))}</dd></div>`)}</dl>
    </section>
  `;
}

export const labelOf = ({ prepared, saying }: View, character: string): string =>
  saying.say(prepared.key.characters[prepared.characterIndex.get(character) ?? -1]?.label ?? character);

export const decimal = (value: number, language: string, digits = 2): string =>
  new Intl.NumberFormat(language, { maximumFractionDigits: digits }).format(value);

/** `day` is year-month-day, of nobody's time zone. */
export const dayIn = (day: string, language: string): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${day}T12:00:00Z`));
