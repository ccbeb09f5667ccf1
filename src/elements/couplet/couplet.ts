import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Settings } from '../../contexts/index.ts';
import type { Character, Lead } from '../../key/index.ts';
import type { Asked, Snapshot } from '../../session/index.ts';
import { askingStyles } from '../shared/asking.styles.ts';
import { barOf, cautionOf, headingOf, helpOf, type Sureness, stepOf } from '../shared/asking.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { type LeadWords, leadWords } from '../shared/leads.ts';
import { LeadwortPart } from '../shared/part.ts';
import { altOf, hasRoom, pictureOf } from '../shared/picture.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';
import { shared } from '../shared/styles.ts';
import { coupletStyles } from './couplet.styles.ts';

/** Most pictures in one lead (ours). */
const DRAWN = 4;

/**
 * One couplet of the branching key: its leads side by side, each a large card, and how sure a person is of the one taken.
 *
 * @summary Asks which of two statements fits the plant.
 *
 * @tag leadwort-couplet
 * @fires {CustomEvent} leadwort-answer - A lead was taken or the couplet passed over: the answer, with the number of the `couplet`.
 * @csspart step - The line with the number of the question and the part of the plant.
 * @csspart heading - What is asked.
 * @csspart caution - What is unsafe about looking.
 * @csspart choices - The leads.
 * @csspart card - One lead.
 * @csspart bar - The buttons that send the answer.
 */
export class LeadwortCouplet extends LeadwortPart {
  static override styles = [shared, drawingStyles, askingStyles, coupletStyles];

  protected override readonly early = true;

  /** Index of the lead that is marked and not yet sent. */
  @state() private marked: number | undefined;
  @query('[role=heading]') private heading!: HTMLElement | null;

  #asked: Asked | undefined;
  /** Pictures of each lead, as `character/state`: those there was room for when the couplet came, so that nothing moves. */
  #places: readonly (readonly string[])[] = [];
  #sent = false;
  #fresh = true;

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('snapshot')) return;
    const asked = this.snapshot?.asked;
    const same = asked?.fork === this.#asked?.fork && asked?.reason === this.#asked?.reason;
    if (same && !this.#sent) return;
    this.#asked = asked;
    this.marked = asked?.lead;
    this.#places = asked?.fork.branches.map(({ lead }) => this.#placesOf(lead)) ?? [];
  }

  #placesOf({ character: id = '', states = [] }: Lead): string[] {
    const character = this.#character(id);
    if (!character) return [];
    const drawn = states.filter((state) => hasRoom(this.pictures, character, state));
    return drawn.slice(0, DRAWN).map((state) => `${id}/${state}`);
  }

  #character(id: string): Character | undefined {
    const { prepared } = this.snapshot ?? {};
    return prepared?.key.characters[prepared.characterIndex.get(id) ?? -1];
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('snapshot') || this.snapshot === undefined) return;
    // As with a question: whoever took a lead, or asked for this couplet elsewhere on the page, is taken to it.
    const called = this.#asked?.reason === 'changing' && this.#asked !== this.#shown;
    if (this.#sent || (called && !this.#fresh)) this.focus();
    this.#shown = this.#asked;
    this.#sent = false;
    this.#fresh = false;
  }
  #shown: Asked | undefined;

  #tell(character: string | undefined, couplet: number): void {
    const answer = this.snapshot?.trail.find((step) => step.character === character);
    if (answer) fire(this, 'leadwort-answer', { ...answer, couplet });
  }

  #take({ fork }: Asked, sureness: Sureness): void {
    const lead = this.marked;
    if (lead === undefined) return;
    this.#sent = true;
    this.request('lead', { couplet: fork.number, lead, sureness });
    this.#tell(fork.branches[lead]?.lead.character, fork.number);
  }

  #pass({ fork }: Asked): void {
    this.#sent = true;
    this.request('pass', { couplet: fork.number });
    this.#tell(fork.character, fork.number);
  }

  #keep(): void {
    this.#sent = true;
    this.request('propose', {});
  }

  /** Moves the focus to the couplet's heading. */
  override focus(options?: FocusOptions): void {
    this.heading?.focus(options);
  }

  override render(): TemplateResult | typeof nothing {
    const { snapshot, settings } = this;
    if (!snapshot || !settings) return nothing;
    const { asked } = snapshot;
    if (asked === undefined) return html`<div class="question end">${this.#renderEnd(snapshot, settings)}</div>`;
    const drawn = this.#renderCouplet(snapshot, asked, settings);
    // A new couplet is a new piece of the page: nothing that was opened for the last one stays open.
    return html`${keyed(`${asked.reason} ${asked.fork.number}`, html`<div class="question">${drawn}</div>`)}`;
  }

  #renderEnd({ walk, prepared }: Snapshot, settings: Settings): TemplateResult {
    const { words, language } = settings;
    const names = (walk?.taxa ?? []).map((id) => plantName(prepared.key, taxonOf(prepared, id), language).text);
    return headingOf(names.length > 0 ? words.couplet.out(words.common.or(names)) : words.question.settled, settings);
  }

  #renderCouplet({ prepared, month }: Snapshot, asked: Asked, settings: Settings): TemplateResult {
    const { couplet } = settings.words;
    const { fork } = asked;
    // A name of its own for each: Chromium holds a group to be answered whose chosen button has left the page.
    const name = `lead-${asked.number}-${fork.number}`;
    const words = (lead: Lead) => leadWords(prepared, lead, this.saying);
    const say = (sentence: string) => this.say(sentence);
    const character = this.#character(fork.character ?? '');
    const hidden = character && !character.months.includes(month);
    return html`
      ${headingOf(character ? say(character.question) : couplet.which, settings, stepOf(asked, character, settings))}
      ${character ? html`${helpOf(character, settings, say)} ${cautionOf(character, settings, say)}` : nothing}
      ${hidden ? this.#renderHidden(character, settings) : nothing}
      <div class="leads" role="radiogroup" aria-labelledby="heading" part="choices">
        ${fork.branches.map(({ lead }, index) => this.#renderLead(words(lead), index, name))}
      </div>
      ${this.#renderBar(asked, settings)}
    `;
  }

  #renderHidden({ label }: Character, { words }: Settings): TemplateResult {
    const month = words.common.months[this.snapshot?.month ?? 1];
    return html`<p class="quiet">${this.say(label)}: ${words.question.mark.hidden(month)}</p>`;
  }

  #renderLead({ label, title, size, also }: LeadWords, index: number, name: string): TemplateResult {
    const { pictures } = this;
    const places = this.#places[index] ?? [];
    const alt = places
      .map((picture) => altOf(pictures, picture))
      .join(' ')
      .trim();
    return html`<label class=${`card lead ${places.length > 1 ? 'several' : ''}`} part="card">
      ${
        places.length > 0
          ? html`<span class="places">
            ${places.map((picture) => html`<span class="place">${pictureOf(pictures, picture)}</span>`)}
          </span>`
          : nothing
      }
      <input
        type="radio"
        name=${name}
        value=${index}
        aria-describedby=${alt ? `seen-${index}` : nothing}
        .checked=${this.marked === index}
        @change=${() => {
          this.marked = index;
        }}
      />
      <span class="text">
        ${label ? html`<span class=${this.#asked?.fork.character ? 'label unseen' : 'label'}>${label}<span class="unseen">: </span></span>` : nothing}
        <span class="title">${title}</span>
        ${size ? html`<span class="size">${size}</span>` : nothing}
        ${also ? html`<span class="detail">${also}</span>` : nothing}
      </span>
    </label>${alt ? html`<span id=${`seen-${index}`} hidden>${alt}</span>` : nothing}`;
  }

  #renderBar(asked: Asked, settings: Settings): TemplateResult {
    const { couplet, question } = settings.words;
    const other = { words: couplet.else, go: () => this.request('way', { way: 'free' }) };
    const keep = { words: question.keep, go: () => this.#keep() };
    return barOf(
      {
        said: this.marked !== undefined,
        tally: '',
        answer: (sureness) => this.#take(asked, sureness),
        skip: () => this.#pass(asked),
        away: asked.reason === 'changing' ? [keep, other] : [other],
      },
      settings,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-couplet': LeadwortCouplet;
  }
}
