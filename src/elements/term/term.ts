import { html, nothing, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { type Term, termIn, termsIn } from '../../key/index.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { LeadwortPart } from '../shared/part.ts';
import { altOf, isPictured, pictureOf } from '../shared/picture.ts';
import { sourceLine } from '../shared/source.ts';
import { shared } from '../shared/styles.ts';
import { termStyles } from './term.styles.ts';

/**
 * A trade term that says what it means: in plain words, as a picture, as the trade defines it, and where to look.
 *
 * It stands inside a `<leadwort-session>` or `<leadwort-key>`. A word that the key's glossary lacks is plain text.
 *
 * @tag leadwort-term
 * @attr {boolean} alone - It stands alone, not in a sentence: as large as a thumb.
 * @slot - The word as the sentence has it.
 * @csspart word - The word that can be pressed.
 * @csspart panel - What opens.
 */
export class LeadwortTerm extends LeadwortPart {
  static override styles = [shared, drawingStyles, termStyles];

  /** Where the browser has no popovers, the panel opens below the line. */
  static popovers = typeof HTMLElement !== 'undefined' && 'popover' in HTMLElement.prototype;

  /** The term: one of its forms, in the language shown. */
  @property() word = '';

  @state() private open = false;
  /** Opened once, what it says stays: taken away on closing, it would take the focus along. */
  #filled = false;
  @query('#panel') private panel!: HTMLElement | null;
  @query('[part=word]') private button!: HTMLButtonElement | null;

  /** A browser with popovers closes one for Escape, for a tap elsewhere and for the next by itself. */
  readonly #away = (event: Event): void => {
    const key = event instanceof KeyboardEvent;
    if (key ? event.key === 'Escape' : !event.composedPath().includes(this)) this.#close(key);
  };

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.open = false;
  }

  protected override willUpdate(): void {
    this.#filled ||= this.open;
  }

  protected override updated(): void {
    if (LeadwortTerm.popovers && this.button) this.button.popoverTargetElement = this.panel;
    else
      for (const name of ['keydown', 'pointerdown'])
        document[this.open ? 'addEventListener' : 'removeEventListener'](name, this.#away);
  }

  #close(focus: boolean): void {
    if (LeadwortTerm.popovers) this.panel?.hidePopover();
    this.open = false;
    if (focus) this.button?.focus();
  }

  #toggle({ newState }: ToggleEvent): void {
    // Before the panel goes, with what has the focus in it.
    if (newState === 'closed' && this.panel?.contains(this.shadowRoot?.activeElement ?? null)) this.button?.focus();
    this.open = newState === 'open';
  }

  get #term(): Term | undefined {
    const { album, settings, word } = this;
    return album && settings ? termsIn(word, album.glossary, settings.language)[0]?.term : undefined;
  }

  override render(): TemplateResult {
    const term = this.#term;
    if (term === undefined) return html`<slot></slot>`;
    const pops = LeadwortTerm.popovers;
    return html`<button
        part="word"
        type="button"
        aria-expanded=${this.open ? 'true' : 'false'}
        aria-controls="panel"
        @click=${() => {
          if (!pops) this.open = !this.open;
        }}
      ><slot></slot></button
      ><div
        part="panel"
        id="panel"
        role="group"
        aria-labelledby="term"
        .popover=${pops ? 'auto' : null}
        ?hidden=${!pops && !this.open}
        @beforetoggle=${this.#toggle}
      >${this.#filled ? this.#renderPanel(term) : nothing}</div>`;
  }

  #renderPanel(term: Term): TemplateResult {
    const { words, language } = this.saying;
    const { term: name, plain, definition, where } = termIn(term, language);
    const sources = term.source.flatMap((id) => this.snapshot?.prepared.key.sources.get(id) ?? []);
    return html`
      <p class="name" id="term">${name}</p>
      ${this.#renderPicture(term)}
      <p>${plain}</p>
      <p>${where}</p>
      <p class="quiet"><b>${words.term.definition}</b> ${definition}</p>
      ${
        sources.length > 0
          ? html`<ul class="quiet sources">${sources.map((source) => html`<li>${sourceLine(source, words)}</li>`)}</ul>`
          : nothing
      }
      <button class="plain close" type="button" @click=${() => this.#close(true)}>${words.common.close}</button>`;
  }

  #renderPicture({ picture }: Term) {
    if (!picture) return nothing;
    const place = `${picture.character}/${picture.state}`;
    const { pictures } = this;
    if (!isPictured(pictures, place)) return nothing;
    return html`<div class="place">${pictureOf(pictures, place, { label: altOf(pictures, place) })}</div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-term': LeadwortTerm;
  }
}
