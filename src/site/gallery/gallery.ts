// A contact sheet of the key: its drawings, its plants and its look-alikes, to look over and to print.
import { html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { drawingStyles } from '../../elements/shared/drawing.styles.ts';
import { LeadwortPart } from '../../elements/shared/part.ts';
import { altOf, pictureOf } from '../../elements/shared/picture.ts';
import { plantName } from '../../elements/shared/plant.ts';
import { shared } from '../../elements/shared/styles.ts';
import type { Character, Month } from '../../key/index.ts';
import { galleryStyles } from './gallery.styles.ts';

const SHEETS = { drawings: 'Answers', portraits: 'Plants', pairs: 'Look-alikes' } as const;
type Sheet = keyof typeof SHEETS;
const isSheet = (name: string): name is Sheet => Object.hasOwn(SHEETS, name);

export class StewardsGallery extends LeadwortPart {
  static override styles = [shared, drawingStyles, galleryStyles];

  @state() private sheet: Sheet = 'drawings';
  @state() private month: Month | undefined;
  @state() private seed = 0;

  readonly #follow = () => {
    const name = location.hash.slice(1);
    if (isSheet(name)) this.sheet = name;
  };

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.#follow);
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.#follow);
  }

  #speak(language: string): void {
    const holder = this.closest('leadwort-session');
    if (holder) holder.lang = language;
  }

  override render() {
    const { snapshot, settings } = this;
    if (!snapshot || !settings) return nothing;
    const { key } = snapshot.prepared;
    return html`
      <nav aria-label="Sheets">
        ${Object.entries(SHEETS).map(
          ([id, name]) =>
            html`<a class="target" href=${`#${id}`} aria-current=${id === this.sheet ? 'page' : nothing}>${name}</a>`,
        )}
        <span class="languages">
          ${key.languages.map(
            (language) => html`<button
              class="plain"
              type="button"
              lang=${language}
              aria-pressed=${settings.words.language === language ? 'true' : 'false'}
              @click=${() => this.#speak(language)}
            >
              ${new Intl.DisplayNames(language, { type: 'language' }).of(language)}
            </button>`,
          )}
        </span>
      </nav>
      <div class="sheet" lang=${settings.words.language}>
        ${this.sheet === 'drawings' ? key.characters.map((one) => this.#renderCharacter(one)) : nothing}
        ${this.sheet === 'portraits' ? this.#renderPortraits() : nothing}
        ${this.sheet === 'pairs' ? this.#renderPairs() : nothing}
      </div>
    `;
  }

  #renderCharacter(character: Character): TemplateResult {
    const { pictures } = this;
    return html`<section>
      <h2>${this.say(character.label)} <small>${character.states.length}</small></h2>
      <div class="drawings">
        ${character.states.map(({ id, label, help }) => {
          const alt = altOf(pictures, `${character.id}/${id}`);
          return html`<figure>
            <div class="frame">${pictureOf(pictures, `${character.id}/${id}`, { label: alt, large: true, sizes: '8em' })}</div>
            <figcaption><b>${this.say(label)}</b>${help ? html` ${this.say(help)}` : nothing}<span class="alt">${alt}</span></figcaption>
          </figure>`;
        })}
      </div>
    </section>`;
  }

  #renderPortraits(): TemplateResult {
    const { snapshot, settings } = this;
    const months = settings?.words.common.months;
    const shown = this.month ?? snapshot?.month ?? 1;
    return html`
      <p class="choose">
        <label>
          Month
          <select
            @change=${(event: Event) => {
              this.month = Number((event.target as HTMLSelectElement).value) as Month;
            }}
          >
            ${([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const).map(
              (month) => html`<option value=${month} ?selected=${month === shown}>${months?.[month]}</option>`,
            )}
          </select>
        </label>
        <button
          class="outline"
          type="button"
          @click=${() => {
            this.seed += 1;
          }}
        >
          Another plant of each kind
        </button>
        ${
          this.seed > 0
            ? html`<button
                class="plain"
                type="button"
                @click=${() => {
                  this.seed = 0;
                }}
              >
                As they usually are
              </button>`
            : nothing
        }
      </p>
      <div class="portraits">
        ${snapshot?.prepared.key.taxa.map(
          ({ id }) => html`<div class="plant" id=${id}>
            <leadwort-portrait taxon=${id} month=${shown} seed=${this.seed} ?varied=${this.seed > 0}></leadwort-portrait>
          </div>`,
        )}
      </div>
    `;
  }

  #renderPairs(): TemplateResult {
    const { key } = this.snapshot?.prepared ?? {};
    const name = (id: string): string => {
      const taxon = key?.taxa.find((one) => one.id === id);
      return key && taxon ? plantName(key, taxon, this.saying.language).text : id;
    };
    return html`
      <ol class="contents">
        ${key?.lookalikes.map(({ taxa: [a, b] }, i) => html`<li><a href=${`#pair-${i + 1}`} @click=${(event: Event) => this.#go(event, `pair-${i + 1}`)}>${name(a)} · ${name(b)}</a></li>`)}
      </ol>
      ${key?.lookalikes.map(
        ({ taxa }, i) => html`<section class="pair" id=${`pair-${i + 1}`} tabindex="-1">
          <leadwort-comparison taxa=${taxa.join(' ')}></leadwort-comparison>
        </section>`,
      )}
    `;
  }

  /** The address keeps the name of the sheet; a pair is only gone to. */
  #go(event: Event, id: string): void {
    event.preventDefault();
    const pair = this.renderRoot.querySelector<HTMLElement>(`#${id}`);
    pair?.scrollIntoView();
    pair?.focus({ preventScroll: true });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'stewards-gallery': StewardsGallery;
  }
}
