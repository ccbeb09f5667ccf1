import { html, nothing, svg, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { byTopic, firstAndRest, mailLink, phoneLink, type TopicGroup } from '../../guidance/index.ts';
import { MOST_COMPARED, type Taxon, type Topic } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { compareButton } from '../shared/compare.ts';
import { fire } from '../shared/events.ts';
import { untilDone } from '../shared/late.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName, taxonOf } from '../shared/plant.ts';
import { sourceLine } from '../shared/source.ts';
import { shared } from '../shared/styles.ts';
import { terms } from '../shared/terms.ts';
import { styles } from './guidance.styles.ts';
import { renderSeason } from './season.ts';

const loadHandout = untilDone(() => import('./handout.ts'));
/** Answers before it is worth saying that there is no advice yet; as with the verdict (ours). */
const WORTH_SHOWING = 3;

/**
 * What to do and not to do about the plant of a settled or leaning verdict, each statement with its sources, and a page
 * about it to print and give away.
 *
 * There is no advice for a plant that has no likely name: an open verdict leads to the comparison and to a person.
 *
 * @tag leadwort-guidance
 * @fires leadwort-guidance - A person opened a topic or its sources, the first time for a plant. Detail: `{ taxon }`.
 * @fires leadwort-comparison - Plants were asked to be shown side by side. Detail: `{ taxa }`.
 * @csspart guidance - The whole.
 * @csspart dont - What not to do.
 * @csspart do - What to do.
 */
export class LeadwortGuidance extends LeadwortPart {
  static override styles = [shared, styles];

  /** Id of one of the verdict's plants, when not the leading one is meant. Any other plant gets no guidance. */
  @property() taxon = '';
  /** Telephone of whom to ask; nothing is dialled without a tap. */
  @property({ attribute: 'contact-phone' }) contactPhone = '';
  /** Mail address of whom to ask; nothing is sent without a tap. */
  @property({ attribute: 'contact-email' }) contactEmail = '';

  /** The hand-out was asked for and did not come. */
  @state() private noHandout = false;

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

  private async print(snapshot: Snapshot, taxon: Taxon): Promise<void> {
    const { words, language } = this.saying;
    const { contactPhone: phone, contactEmail: mail } = this;
    const contact = { ...(phone ? { phone } : {}), ...(mail ? { mail } : {}) };
    try {
      const { printHandout } = await loadHandout();
      this.noHandout = false;
      const { month, prepared } = snapshot;
      await printHandout(this.renderRoot as ShadowRoot, { key: prepared.key, taxon, month, language, words, contact });
    } catch {
      this.noHandout = true;
    }
  }

  private renderTopic(taxon: Taxon, group: TopicGroup): TemplateResult {
    const { words } = this.saying;
    const { topic } = group;
    return html`<section class="topic ${topic}" part=${topic}>
      <div role="heading" aria-level=${Math.min(6, this.level + 1)} class="sub">${markOf(topic)}${words.guidance.topic[topic]}</div>
      ${this.renderStatements(taxon, group)} ${topic === 'who' ? this.renderContact() : nothing}
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
            ${statement.months ? renderSeason(statement.months, statement.season, (this.snapshot as Snapshot).month, words) : nothing}
          </li>`,
        )}
      </ul>
      <details class="sources" @toggle=${(event: Event) => this.tell(taxon, event)}>
        <summary>${words.guidance.sources(sources.length)}</summary>
        <ol>${sources.map((source, i) => html`<li><span class="number">${i + 1}</span> ${sourceLine(source, words)}</li>`)}</ol>
      </details>`;
  }

  private renderContact(): TemplateResult | typeof nothing {
    const { guidance } = this.saying.words;
    const { contactPhone: phone, contactEmail: mail } = this;
    const [call, write] = [phoneLink(phone), mailLink(mail)];
    if (!call && !write) return nothing;
    return html`<p class="contact">
      ${call ? html`<a class="target" href=${call}>${guidance.call(phone)}</a>` : nothing}
      ${write ? html`<a class="target" href=${write}>${guidance.mail(mail)}</a>` : nothing}
    </p>`;
  }

  /** While several plants fit, advice for one could harm another. */
  private renderNotYet(snapshot: Snapshot): TemplateResult | typeof nothing {
    const { kind, taxa } = snapshot.identification.verdict;
    if (kind !== 'open' || snapshot.answered < WORTH_SHOWING) return nothing;
    const { words, language } = this.saying;
    const { key } = snapshot.prepared;
    const names = taxa.map((id) => plantName(key, taxonOf(snapshot.prepared, id), language).text);
    return html`<section part="guidance" class="guidance">
      <div role="heading" aria-level=${this.level} class="heading">${words.guidance.notYet}</div>
      <p>${words.guidance.notYetWhy(words.common.or(names))}</p>
      ${taxa.length > 1 ? html`<p>${compareButton(taxa.slice(0, MOST_COMPARED), words.comparison.open, 'outline')}</p>` : nothing}
      <div><p>${words.guidance.askPerson}</p>${this.renderContact()}</div>
    </section>`;
  }

  override render() {
    const { snapshot, shown: taxon } = this;
    if (!snapshot) return nothing;
    if (!taxon) return this.renderNotYet(snapshot);
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
      <p class="rests">${words.guidance.rests(snapshot.answered)}</p>
      ${found === undefined ? html`<div><p>${words.guidance.none(name)}</p>${this.renderContact()}</div>` : nothing}
      ${repeat(first, keyOf, (group) => this.renderTopic(taxon, group))}
      ${found && !first.some(({ topic }) => topic === 'who') ? this.renderContact() : nothing}
      ${repeat(rest, keyOf, (group) => this.renderClosed(taxon, group))}
      ${found === undefined ? nothing : html`<p class="quiet">${words.guidance.reviewed(dateOf(found.reviewed, language))}</p>`}
      <div class="handout">
        <button class="outline" type="button" @click=${() => void this.print(snapshot, taxon)}>${words.guidance.handout}</button>
        <p role="status">${this.noHandout ? words.guidance.noHandout : nothing}</p>
      </div>
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
