import { html, nothing, svg, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { byTopic, firstAndRest, monthsInWords, type TopicGroup } from '../../guidance/index.ts';
import type { Month, Taxon, Topic } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { fire } from '../shared/events.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName, taxonOf } from '../shared/plant.ts';
import { sourceLine } from '../shared/source.ts';
import { shared } from '../shared/styles.ts';
import { terms } from '../shared/terms.ts';
import { styles } from './guidance.styles.ts';

/**
 * What to do and not to do about the plant of a settled or leaning verdict, each statement with its sources.
 *
 * Empty under any other verdict: there is no advice for a plant that has no likely name.
 *
 * @tag leadwort-guidance
 * @fires leadwort-guidance - A person opened a topic or its sources, the first time for a plant. Detail: `{ taxon }`.
 * @csspart guidance - The whole.
 * @csspart dont - What not to do.
 * @csspart do - What to do.
 */
export class LeadwortGuidance extends LeadwortPart {
  static override styles = [shared, styles];

  /** Id of one of the verdict's plants, when not the leading one is meant. Any other plant gets no guidance. */
  @property() taxon = '';

  #opened = '';

  private get shown(): Taxon | undefined {
    const { snapshot } = this;
    if (!snapshot || snapshot.answered === 0) return undefined;
    const { kind, taxa } = snapshot.identification.verdict;
    if (kind !== 'settled' && kind !== 'leaning') return undefined;
    const id = this.taxon === '' ? taxa[0] : taxa.find((one) => one === this.taxon);
    return id === undefined ? undefined : taxonOf(snapshot.prepared, id);
  }

  private get level(): number {
    return this.settings?.headingLevel ?? 2;
  }

  private tell(taxon: Taxon, event: Event): void {
    if (!(event.currentTarget as HTMLDetailsElement).open || this.#opened === taxon.id) return;
    this.#opened = taxon.id;
    fire(this, 'leadwort-guidance', { taxon: taxon.id });
  }

  private renderTopic(taxon: Taxon, group: TopicGroup): TemplateResult {
    const { words } = this.saying;
    const { topic } = group;
    return html`<section class="topic ${topic}" part=${topic}>
      <div role="heading" aria-level=${Math.min(6, this.level + 1)} class="sub">${markOf(topic)}${words.guidance.topic[topic]}</div>
      ${this.renderStatements(taxon, group)}
    </section>`;
  }

  private renderClosed(taxon: Taxon, group: TopicGroup): TemplateResult {
    return html`<details class="topic ${group.topic}" part=${group.topic} @toggle=${(event: Event) => this.tell(taxon, event)}>
      <summary>${this.saying.words.guidance.topic[group.topic]}</summary>
      ${this.renderStatements(taxon, group)}
    </details>`;
  }

  private renderStatements(taxon: Taxon, { statements, sources }: TopicGroup): TemplateResult {
    const { words } = this.saying;
    const texts = statements.map(({ statement }) => this.say(statement.text));
    return html`<ul class="statements">
        ${statements.map(
          ({ statement, numbers }, i) => html`<li>
            <p>${terms(texts[i] ?? '', texts.slice(0, i).join(' '))}${numbers.length > 0 ? html`<sup>${numbers.join(', ')}</sup>` : nothing}</p>
            ${statement.months ? this.renderMonths(statement.months) : nothing}
          </li>`,
        )}
      </ul>
      <details class="sources" @toggle=${(event: Event) => this.tell(taxon, event)}>
        <summary>${words.guidance.sources(sources.length)}</summary>
        <ol>${sources.map((source, i) => html`<li><span class="number">${i + 1}</span> ${sourceLine(source, words)}</li>`)}</ol>
      </details>`;
  }

  /** Twelve months by their letters, those meant filled, the present one underlined. */
  private renderMonths(months: readonly Month[]): TemplateResult {
    const { words } = this.saying;
    const now = (this.snapshot as Snapshot).month;
    const cells = ([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const).map((month) => {
      const x = (month - 1) * 20;
      const meant = months.includes(month);
      return svg`<rect class=${meant ? 'meant' : 'free'} x=${x + 1} y="1" width="18" height="20" rx="3" />
        <text class=${meant ? 'meant' : 'free'} x=${x + 10} y="16">${[...words.common.months[month]][0]?.toUpperCase()}</text>
        ${month === now ? svg`<path class="now" d="M${x + 4} 26h12" />` : nothing}`;
    });
    const inWords = monthsInWords(months, words);
    return html`<p class="months-words">${inWords}</p>
      <svg class="months" viewBox="0 0 240 29" role="img" aria-label=${words.guidance.band(inWords, words.common.months[now])}>${cells}</svg>`;
  }

  override render() {
    const { snapshot, shown: taxon } = this;
    if (!snapshot || !taxon) return nothing;
    const { words, language } = this.saying;
    const { key } = snapshot.prepared;
    const name = plantName(key, taxon, language).text;
    const found = key.guidance.get(taxon.id);
    const { first, rest } = firstAndRest(found ? byTopic(found, key.sources) : [], taxon.status);
    // A topic opened for one plant is not open for the next.
    const keyOf = ({ topic }: TopicGroup) => `${taxon.id} ${topic}`;
    return html`<section part="guidance" class="guidance">
      <div role="heading" aria-level=${this.level} class="heading">${words.guidance.heading(name)}</div>
      ${snapshot.identification.verdict.kind === 'leaning' ? html`<p class="only-if">${words.guidance.onlyIf(name)}</p>` : nothing}
      ${found === undefined ? html`<p>${words.guidance.none(name)}</p>` : nothing}
      ${repeat(first, keyOf, (group) => this.renderTopic(taxon, group))}
      ${repeat(rest, keyOf, (group) => this.renderClosed(taxon, group))}
      ${found === undefined ? nothing : html`<p class="quiet">${words.guidance.reviewed(dateOf(found.reviewed, language))}</p>`}
    </section>`;
  }
}

/** "November 25, 2026"; what is no date stays as it is written. */
function dateOf(day: string, language: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  return new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}

const mark = (path: string) => svg`<svg class="mark" viewBox="0 0 24 24" aria-hidden="true"><path d=${path} /></svg>`;
const MARKS: Partial<Record<Topic, TemplateResult>> = {
  dont: mark('M5 5l14 14M19 5 5 19'),
  do: mark('m4 13 5 5L20 6'),
  leave: mark('M12 3c4.5 3.5 4.5 8 0 11.5C7.5 11 7.5 6.5 12 3ZM12 9v12M4 21h16'),
};
const markOf = (topic: Topic): TemplateResult | typeof nothing => MARKS[topic] ?? nothing;

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-guidance': LeadwortGuidance;
  }
}
