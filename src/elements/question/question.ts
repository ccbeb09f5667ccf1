import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Settings } from '../../contexts/index.ts';
import type { Character, KeyAnswer, State } from '../../key/index.ts';
import type { Question } from '../../session/index.ts';
import type { QuestionWords } from '../../words/index.ts';
import { askingStyles } from '../shared/asking.styles.ts';
import { barOf, cautionOf, headingOf, helpOf, type Sureness, stepOf } from '../shared/asking.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { LeadwortPart } from '../shared/part.ts';
import { altOf, hasRoom, pictureOf } from '../shared/picture.ts';
import { classWords } from '../shared/sizes.ts';
import { shared } from '../shared/styles.ts';
import { answerOf, checked, type Draft, draftOf, isBlank, tick } from './draft.ts';
import { renderFeatures } from './features.ts';
import { questionStyles } from './question.styles.ts';
import { renderTyped } from './typed.ts';

/** Most answers shown at once; what would hide a single one shows it instead. */
const SHOWN = 6;
/** More answers than this, each of so few letters, stand in columns below their pictures; others beside them (ours). */
const FEW = 4;
const SHORT = 30;

/**
 * One question with its answers as large cards, how to look, and what is unsafe about looking.
 *
 * @summary Asks what a person sees, and takes the answer with how sure they are of it.
 *
 * @tag leadwort-question
 * @fires {CustomEvent} leadwort-answer - A question was answered or passed over: the character with states, a value, or skipped.
 * @csspart step - The line with the number of the question and the part of the plant.
 * @csspart heading - The question.
 * @csspart caution - What is unsafe about looking.
 * @csspart choices - The answers.
 * @csspart card - One answer.
 * @csspart bar - The buttons that send the answer.
 */
export class LeadwortQuestion extends LeadwortPart {
  static override styles = [shared, drawingStyles, askingStyles, questionStyles];

  protected override readonly early = true;

  @state() private draft: Draft = draftOf();
  @state() private showsAll = false;
  @query('[role=heading]') private heading!: HTMLElement | null;

  #asked: Question | undefined;
  /** Which answers matter most, as it was when the question came, so that none goes while a person reads. */
  #order: readonly string[] = [];
  /** Room for pictures, as it was when the question came, so that nothing moves under a finger. */
  #room = false;
  #sent = false;
  #fresh = true;

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('snapshot')) return;
    const question = this.snapshot?.question;
    const same = question?.character === this.#asked?.character && question?.reason === this.#asked?.reason;
    if (same && !this.#sent) return;
    this.#asked = question;
    this.#order = question?.order ?? [];
    const character = this.#character(question?.character ?? '');
    this.#room = character?.states.some(({ id }) => hasRoom(this.pictures, character, id)) ?? false;
    this.draft = draftOf(question?.answer);
    this.showsAll = false;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('snapshot') || this.snapshot === undefined) return;
    // Whoever answered, or asked for this one elsewhere on the page, is taken to it; a page that has just opened is not.
    const asked = this.#asked !== undefined && this.#asked.reason !== 'proposed' && this.#asked !== this.#shown;
    if (this.#sent || (asked && !this.#fresh)) this.focus();
    this.#shown = this.#asked;
    this.#sent = false;
    this.#fresh = false;
  }
  #shown: Question | undefined;

  /** A verdict stands and nobody asked to go on. */
  get #settled(): boolean {
    const { question, identification, onward } = this.snapshot ?? {};
    return question === undefined && identification?.verdict.kind === 'settled' && !onward;
  }

  #character(id: string): Character | undefined {
    const { prepared } = this.snapshot ?? {};
    return prepared?.key.characters[prepared.characterIndex.get(id) ?? -1];
  }

  #send(answer: KeyAnswer): void {
    this.request('answer', { answer });
    this.#sent = true;
    fire(this, 'leadwort-answer', answer);
  }

  #go(name: 'propose' | 'onward'): void {
    this.request(name, {});
    this.#sent = true;
  }

  #answer(character: Character, sureness: Sureness): void {
    const answer = answerOf(this.draft, character, sureness);
    if (answer) this.#send(answer);
    else void this.#refuse();
  }

  /** A number that cannot be read: says so where it stands, and loses nothing. */
  async #refuse(): Promise<void> {
    this.draft = checked(this.draft);
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('#size')?.focus();
  }

  async #showRest(first: string | undefined): Promise<void> {
    this.showsAll = true;
    await this.updateComplete;
    const inputs = this.renderRoot.querySelectorAll<HTMLInputElement>('.card input');
    [...inputs].find((input) => input.value === first)?.focus();
  }

  /** Moves the focus to the question's heading. */
  override focus(options?: FocusOptions): void {
    this.heading?.focus(options);
  }

  override render(): TemplateResult | typeof nothing {
    const { snapshot, settings } = this;
    if (!snapshot || !settings) return nothing;
    const { question } = snapshot;
    const character = question && this.#character(question.character);
    const asked = question && character ? this.#renderQuestion(question, character) : this.#renderEnd();
    // After a verdict nothing more is put before a person than the offer to go on.
    const others = this.#settled
      ? nothing
      : renderFeatures(snapshot, settings, {
          say: (sentence) => this.say(sentence),
          ask: (id) => this.request('ask', { character: id }),
        });
    // A new question is a new piece of the page: nothing that was opened for the last one stays open.
    return html`${keyed(`${question?.reason} ${question?.character}`, html`<div class=${question ? 'question' : 'question end'}>${asked}</div>`)}${others}`;
  }

  #renderEnd(): TemplateResult {
    const settings = this.settings as Settings;
    const { question: words } = settings.words;
    if (!this.#settled) return headingOf(words.exhausted, settings);
    return html`
      ${headingOf(words.settled, settings)}
      <button class="outline onward" type="button" @click=${() => this.#go('onward')}>${words.onward}</button>
    `;
  }

  #renderQuestion(question: Question, character: Character): TemplateResult {
    const settings = this.settings as Settings;
    const say = (sentence: string) => this.say(sentence);
    return html`
      ${headingOf(say(character.question), settings, stepOf(question, character, settings))}
      ${helpOf(character, settings, say)} ${cautionOf(character, settings, say)}
      ${this.#renderCards(character)}
      ${
        character.kind === 'measure'
          ? renderTyped(question, character, this.draft, settings, (draft) => {
              this.draft = draft;
            })
          : nothing
      }
      ${this.#renderBar(question, character, settings)}
    `;
  }

  #renderCards(character: Character): TemplateResult {
    const words = this.settings?.words.question as QuestionWords;
    const { states } = character;
    const many = character.kind === 'choice' && states.length > SHOWN + 1 && !this.showsAll;
    const first = this.#order.slice(0, SHOWN);
    // In the author's order in either case: months stay in the order of the year, and nothing changes its place.
    const shown = many ? states.filter(({ id }) => first.includes(id) || this.draft.ticked.has(id)) : states;
    const rest = states.filter((s) => !shown.includes(s));
    const columns = this.#room && shown.length > FEW && shown.every((s) => this.say(s.label).length <= SHORT);
    return html`
      <div class=${`cards ${this.#room ? 'pictured' : ''} ${columns ? 'columns' : ''}`} role="group" aria-labelledby="heading" aria-describedby="tally" part="choices">
        ${shown.map((s) => this.#renderCard(character, s))}
      </div>
      ${
        rest.length > 0
          ? html`<button class="plain" type="button" @click=${() => this.#showRest(rest[0]?.id)}>
            ${words.showAll(states.length)}
          </button>`
          : nothing
      }
    `;
  }

  #renderCard(character: Character, choice: State): TemplateResult {
    const { words, language, units } = this.settings ?? {};
    const size =
      character.kind === 'measure' && words && language && units
        ? classWords(character, choice, words.question, language, units)
        : '';
    const { pictures } = this;
    const picture = `${character.id}/${choice.id}`;
    const alt = this.#room ? altOf(pictures, picture) : '';
    return html`<label class="card" part="card">
      ${this.#room ? html`<span class="place">${pictureOf(pictures, picture)}</span>` : nothing}
      <input
        type="checkbox"
        name="state"
        value=${choice.id}
        aria-describedby=${alt ? `seen-${choice.id}` : nothing}
        .checked=${this.draft.ticked.has(choice.id)}
        @change=${(event: Event) => {
          this.draft = tick(this.draft, choice.id, (event.target as HTMLInputElement).checked);
        }}
      />
      <span class="text">
        <span class="title">${this.say(choice.label)}</span>
        ${size ? html`<span class="size">${size}</span>` : nothing}
        ${choice.help ? html`<span class="detail">${this.say(choice.help)}</span>` : nothing}
      </span>
    </label>${alt ? html`<span id=${`seen-${choice.id}`} hidden>${alt}</span>` : nothing}`;
  }

  #renderBar(question: Question, character: Character, settings: Settings): TemplateResult {
    const { question: words } = settings.words;
    const away = {
      words: question.reason === 'changing' ? words.keep : words.back,
      go: () => this.#go('propose'),
    };
    return barOf(
      {
        said: !isBlank(this.draft),
        tally: words.ticked(this.draft.ticked.size),
        answer: (sureness) => this.#answer(character, sureness),
        skip: () => this.#send({ character: character.id, skipped: true }),
        away: question.reason === 'proposed' ? [] : [away],
      },
      settings,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-question': LeadwortQuestion;
  }
}
