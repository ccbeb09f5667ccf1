import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Character, KeyAnswer } from '../../key/index.ts';
import { clauseOf, joined } from '../shared/clause.ts';
import { LeadwortPart } from '../shared/part.ts';
import { clauses, said } from '../shared/said.ts';
import { shared } from '../shared/styles.ts';
import { trailStyles } from './trail.styles.ts';

/** Answers that the line of words holds before it says how many more there are. */
const IN_LINE = 4;

/**
 * What has been said so far: a line of words that opens to the list, where each answer can be changed or taken back.
 *
 * @summary The answers so far.
 *
 * @tag leadwort-trail
 * @csspart line - The line of words.
 * @csspart list - The list of answers.
 */
export class LeadwortTrail extends LeadwortPart {
  static override styles = [shared, trailStyles];

  /** Where the focus goes once an answer was taken back: the place of the one that followed it. */
  @state() private gone: number | undefined;

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('snapshot') || this.gone === undefined) return;
    const buttons = this.renderRoot.querySelectorAll<HTMLElement>('.change');
    const next = buttons[Math.min(this.gone, buttons.length - 1)];
    (next ?? this.renderRoot.querySelector<HTMLElement>('.empty'))?.focus();
    this.gone = undefined;
  }

  #change(character: string): void {
    this.renderRoot.querySelector('details')?.removeAttribute('open');
    this.request('ask', { character });
  }

  #takeBack(character: string, place: number): void {
    this.gone = place;
    this.request('withdraw', { character });
  }

  override render(): TemplateResult | typeof nothing {
    const { snapshot, settings } = this;
    if (!snapshot || !settings) return nothing;
    const { trail, prepared } = snapshot;
    const { words, language } = settings;
    if (trail.length === 0)
      return html`<p class="empty" tabindex="-1"><span class="unseen">${words.trail.empty}</span></p>`;
    const saying = clauses(this.saying);
    const steps = trail.flatMap((answer) => {
      const character = prepared.key.characters[prepared.characterIndex.get(answer.character) ?? -1];
      return character ? [{ character, answer, text: said(character, answer, saying) }] : [];
    });
    const told = steps
      .filter(({ text }) => text !== '')
      .map(({ character, text }) => clauseOf(character, this.say(character.label), text, language));
    const rest = told.length - IN_LINE;
    const line = told.length === 0 ? words.trail.skipped : joined(told.slice(0, IN_LINE));
    return html`<details>
      <summary part="line">
        <span class="unseen">${words.trail.heading}: </span>
        <span class="line">${line}${rest > 0 ? html` <span class="quiet">${words.trail.more(rest)}</span>` : nothing}</span>
      </summary>
      <ol part="list">
        ${steps.map(({ character, answer, text }, place) => this.#renderStep(character, answer, text, place))}
      </ol>
    </details>`;
  }

  #renderStep(character: Character, answer: KeyAnswer, text: string, place: number): TemplateResult {
    const { words } = this.settings ?? {};
    if (!words) return html``;
    const label = this.say(character.label);
    const what =
      'skipped' in answer
        ? html`<span class="quiet">${words.trail.skipped}</span>`
        : html`${text} <span class="quiet">(${words.trail.sureness[answer.sureness]})</span>`;
    return html`<li>
      <span class="what"><span class="label">${label}:</span> ${what}</span>
      <span class="buttons">
        <button class="plain change" type="button" @click=${() => this.#change(character.id)}>
          ${words.common.change}<span class="unseen">: ${label}</span>
        </button>
        <button class="plain" type="button" @click=${() => this.#takeBack(character.id, place)}>
          ${words.common.remove}<span class="unseen">: ${label}</span>
        </button>
      </span>
    </li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-trail': LeadwortTrail;
  }
}
