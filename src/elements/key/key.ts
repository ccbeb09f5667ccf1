import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import type { Settings } from '../../contexts/index.ts';
import type { Snapshot } from '../../session/index.ts';
import type { LeadwortQuestion } from '../question/question.ts';
import { LeadwortHolder } from '../shared/holder.ts';
import { bring, type LatePart } from '../shared/late.ts';
import { shared } from '../shared/styles.ts';
import { keyStyles } from './key.styles.ts';
import { renderSettings } from './settings.ts';

/** What an answer may bring to the screen. */
const AFTER_ANSWERS: readonly LatePart[] = ['verdict', 'guidance'];

/**
 * The whole: question, answers so far, what it could be, the verdict and what to do, from one address.
 *
 * @summary A plant identification key.
 *
 * @tag leadwort-key
 * @slot - Shown until the key is there, and beside what is said when it does not come.
 * @csspart status - What is said while the key loads, or why it did not.
 * @csspart trail - The answers so far.
 * @csspart question - The question.
 * @csspart question-heading - Its words.
 * @csspart question-caution - What is unsafe about looking.
 * @csspart question-card - One answer.
 * @csspart question-bar - The buttons that send the answer.
 * @csspart standing - What it could be.
 * @csspart verdict - What may be said.
 * @csspart guidance - What to do and not to do.
 * @csspart foot - Settings, names, and the start with a new plant.
 * @fires {CustomEvent} leadwort-answer - A question was answered or passed over.
 * @fires {CustomEvent} leadwort-verdict - The kind of verdict or the leading taxon changed: `{kind, taxa}`.
 * @fires {CustomEvent} leadwort-guidance - What to do about a taxon was opened: `{taxon}`.
 * @attr {string} lang - Language of the words; else the nearest `lang` on the page.
 * @cssprop --leadwort-ink - Colour of text.
 * @cssprop --leadwort-paper - Colour behind it.
 * @cssprop --leadwort-reed - Colour of what can be pressed.
 * @cssprop --leadwort-silt - Colour of cards.
 * @cssprop --leadwort-mud - Colour of quiet text.
 * @cssprop --leadwort-rust - Colour of "stop".
 * @cssprop --leadwort-line - Colour of lines.
 * @cssprop --leadwort-radius - How round the corners are.
 */
export class LeadwortKey extends LeadwortHolder {
  static override styles = [shared, keyStyles];

  /** Parts that were asked for and did not come, for want of a connection. */
  @state() private missing: ReadonlySet<LatePart> = new Set();
  /** "Start with a new plant" was pressed once. */
  @state() private restarting = false;
  @state() private looksUp = false;
  @query('leadwort-question') private question!: LeadwortQuestion | null;

  protected override updated(_changed: PropertyValues): void {
    if (this.provider.state.phase !== 'ready') return;
    // The first question is on the screen; what follows the answers comes while a person reads it.
    this.#bring(AFTER_ANSWERS);
  }

  #bring(parts: readonly LatePart[]): void {
    for (const part of parts)
      bring(part).then(
        () => this.#lacks(part, false),
        () => this.#lacks(part, true),
      );
  }

  #lacks(part: LatePart, lacking: boolean): void {
    if (this.missing.has(part) === lacking) return;
    const missing = new Set(this.missing);
    if (lacking) missing.add(part);
    else missing.delete(part);
    this.missing = missing;
  }

  #restart(): void {
    if (!this.restarting) {
      this.restarting = true;
      return;
    }
    this.restarting = false;
    const { state } = this.provider;
    if (state.phase !== 'ready') return;
    state.store.request('restart', {});
    void this.updateComplete.then(() => this.question?.updateComplete).then(() => this.question?.focus());
  }

  #lookUp(event: Event): void {
    this.looksUp = (event.currentTarget as HTMLDetailsElement).open;
    if (this.looksUp) this.#bring(['names']);
  }

  override render(): TemplateResult {
    const { state, settings } = this.provider;
    const ready = state.phase === 'ready' && settings;
    return html`${this.renderStatus()}${ready ? this.#renderKey(state.store.snapshot, settings) : html`<slot></slot>`}`;
  }

  #renderKey(snapshot: Snapshot, settings: Settings): TemplateResult {
    const { words } = settings;
    return html`
      <div class=${snapshot.question ? 'page asking' : 'page done'} lang=${words.language}>
        <leadwort-trail part="trail"></leadwort-trail>
        <leadwort-question
          part="question"
          exportparts="heading:question-heading, caution:question-caution, card:question-card, bar:question-bar"
        ></leadwort-question>
        <div class="verdict">
          <leadwort-verdict part="verdict"></leadwort-verdict>
          ${this.#renderMissing(AFTER_ANSWERS, settings)}
        </div>
        <leadwort-standing part="standing"></leadwort-standing>
        <div class="guidance">
          <leadwort-guidance part="guidance"></leadwort-guidance>
        </div>
        ${this.#renderFoot(snapshot, settings)}
      </div>
    `;
  }

  #renderMissing(parts: readonly LatePart[], { words }: Settings): TemplateResult {
    return html`<div role="status">
      ${
        parts.some((part) => this.missing.has(part))
          ? html`<p>${words.key.missing}</p>
            <button class="outline" type="button" @click=${() => this.#bring(parts)}>${words.common.retry}</button>`
          : nothing
      }
    </div>`;
  }

  #renderFoot(snapshot: Snapshot, settings: Settings): TemplateResult {
    const { words } = settings;
    const restart = html`<button
      class=${this.restarting ? 'outline' : 'plain'}
      type="button"
      @click=${() => this.#restart()}
      @blur=${() => {
        this.restarting = false;
      }}
    >
      ${this.restarting ? words.key.restartSure : words.key.restart}
    </button>`;
    return html`<div class="foot" part="foot">
      <details class="names" @toggle=${(event: Event) => this.#lookUp(event)}>
        <summary>${words.key.lookup}</summary>
        ${this.looksUp ? html`<leadwort-names></leadwort-names>` : nothing} ${this.#renderMissing(['names'], settings)}
      </details>
      ${renderSettings(this, snapshot, settings, (name, detail) => {
        const { state } = this.provider;
        if (state.phase === 'ready') state.store.request(name, detail);
      })}
      ${snapshot.trail.length > 0 ? restart : nothing}
      <p class="unseen" role="status">${this.restarting ? words.key.restartSure : nothing}</p>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-key': LeadwortKey;
  }
}
