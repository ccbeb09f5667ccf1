import { html, nothing, type PropertyValues, svg, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { type Detail, type Figure, portraitOf, sharedScale } from '../../drawing/portrait/index.ts';
import { formatMeasure, type Month, type Taxon } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { asClause } from '../../words/clause.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { flag } from '../shared/flag.ts';
import { LeadwortPart } from '../shared/part.ts';
import { hasRoom, pictureOf, renderMarks, renderPhoto } from '../shared/picture.ts';
import { plant, plantName } from '../shared/plant.ts';
import { clauses, said } from '../shared/said.ts';
import { statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { styles } from './portrait.styles.ts';
import { renderTraits } from './traits.ts';

const MONTHS: readonly Month[] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const isMonth = (month: number | undefined): month is Month => MONTHS.some((one) => one === month);

/** All states that are usual, where several are; for a size the class that it falls into. */
function usualStates({ traits }: Taxon, character: string, state: string): readonly string[] {
  const trait = traits.get(character);
  const usual = trait?.kind === 'states' ? trait.states.filter(({ how }) => how === 'usually') : [];
  return usual.length > 0 ? usual.map((one) => one.state) : [state];
}

/**
 * A plant drawn from what the key knows of it: to scale beside a person, where it stands, as it looks in a month, with
 * its details in close-up. What is not known is left out, drawn in broken lines, and said. Photographs of the plant,
 * where the page has them, come first.
 *
 * @tag leadwort-portrait
 * @csspart portrait - The whole.
 * @csspart figure - The drawing of the whole plant.
 */
export class LeadwortPortrait extends LeadwortPart {
  static override styles = [shared, statusStyles, drawingStyles, styles];

  /** Id of the plant in the key. */
  @property() taxon = '';
  /** Month in which it is drawn, 1 to 12; that of the session when left out. */
  @property({ type: Number }) month: number | undefined;
  /** Any whole number: the same number draws the same plant. */
  @property({ type: Number }) seed = 1;
  /** Draws one plant out of all that the key's data allow, instead of the usual one. */
  @property({ converter: flag }) varied = false;
  /** `off` leaves out the plant's name, for a page that says it already. */
  @property() heading = '';
  /** Ids of plants that stand beside it on the page: it is drawn at the one scale at which all find room. */
  @property() among = '';
  /** Only the drawing. */
  @property({ converter: flag }) bare = false;

  #figure: Figure | undefined;
  #plant: Taxon | undefined;
  #made = '';

  protected override willUpdate(changed: PropertyValues): void {
    const key = this.snapshot?.prepared.key;
    const index = this.snapshot?.prepared.taxonIndex.get(this.taxon) ?? -1;
    const found = key?.taxa[index];
    const made = [key?.hash ?? key?.version, this.taxon, this.shownMonth, this.seed, this.varied, this.among].join(' ');
    if (found === this.#plant && made === this.#made && !changed.has('album')) return;
    this.#plant = found;
    this.#made = made;
    const { varied, shownMonth: month } = this;
    const seed = Number.isInteger(this.seed) ? this.seed : 1;
    const asked = { month, seed, varied };
    const ids = new Set([this.taxon, ...this.among.split(/\s+/)]);
    const scale =
      key && this.among
        ? sharedScale(
            key,
            key.taxa.filter(({ id }) => ids.has(id)),
            asked,
          )
        : undefined;
    this.#figure = key && found && portraitOf(key, found, { ...asked, scale, album: this.album });
  }

  private get shownMonth(): Month | undefined {
    return isMonth(this.month) ? this.month : this.snapshot?.month;
  }

  /** One state of one character with its label: without it "in two flat rows" would be of anything. */
  private clause({ character, state }: Detail, i: number): string {
    const saying = clauses(this.saying);
    const label = this.say(character.label);
    const answer = said(character, { character: character.id, states: [state], sureness: 'sure' }, saying);
    return `${i > 0 ? asClause(label, saying.language) : label}: ${answer}`;
  }

  private sentence(snapshot: Snapshot, taxon: Taxon, figure: Figure): string {
    const { words, language, units } = this.saying;
    const { text } = plantName(snapshot.prepared.key, taxon, language);
    const { height, beside } = figure;
    const size = height === undefined ? '' : formatMeasure(height, 'm', { system: units, locale: language });
    const first = size === '' ? text : words.portrait.picture(text, size, words.portrait.beside[beside]);
    return `${first}. ${figure.said.map((one, i) => this.clause(one, i)).join('; ')}.`;
  }

  private renderFigure(snapshot: Snapshot, taxon: Taxon, figure: Figure): TemplateResult {
    const [width, height] = figure.box;
    return html`<div class="scene" part="figure">
      <svg class="drawing" viewBox=${`0 0 ${width} ${height}`} role="img" aria-label=${this.sentence(snapshot, taxon, figure)}>
        ${figure.parts.map(({ group, at, marks, unsure }) => svg`<g class=${unsure ? `${group} unsure` : group} transform=${at ?? nothing}>${renderMarks(marks)}</g>`)}
      </svg>
    </div>`;
  }

  private renderPhotos(): TemplateResult | typeof nothing {
    const { pictures } = this;
    const photos = pictures.images ? (pictures.album?.taxa.get(this.taxon) ?? []) : [];
    if (photos.length === 0) return nothing;
    const alt = (texts: ReadonlyMap<string, string>) =>
      texts.get(pictures.language) ??
      texts.get(pictures.language.split('-')[0] ?? '') ??
      texts.values().next().value ??
      '';
    return html`<ul class="photos" aria-label=${this.saying.words.portrait.photos} tabindex="0">
      ${photos.map(
        (photo) => html`<li>
          <span class="picture">${renderPhoto(photo, pictures, { label: alt(photo.alt), sizes: '18em' })}</span>
          <small class="credit">${photo.credit}, ${photo.licence}</small>
        </li>`,
      )}
    </ul>`;
  }

  private renderMonths(figure: Figure): TemplateResult | typeof nothing {
    const { words } = this.saying;
    const month = this.shownMonth;
    if (month === undefined) return nothing;
    const step = (by: 1 | -1, label: string) => html`<button
      class="step"
      type="button"
      aria-label=${label}
      @click=${() => {
        this.month = ((month + by + 11) % 12) + 1;
      }}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true"><path d=${by < 0 ? 'm15 5-7 7 7 7' : 'm9 5 7 7-7 7'} /></svg>
    </button>`;
    return html`<div class="months">
      ${step(-1, words.portrait.previous)}
      <span role="status">${words.portrait.month(words.common.months[month], figure.inSeed ? 'seed' : figure.flowering)}</span>
      ${step(1, words.portrait.next)}
    </div>`;
  }

  /** The first month from the shown one on in which it flowers. */
  private nextFlowering(): Month | undefined {
    const { snapshot, shownMonth: month } = this;
    const plant = this.#plant;
    if (!snapshot || !plant || month === undefined || this.#figure?.flowering !== false) return undefined;
    return MONTHS.map((one) => (((month + one - 1) % 12) + 1) as Month).find(
      (one) => portraitOf(snapshot.prepared.key, plant, { month: one }).flowering,
    );
  }

  private renderButtons(): TemplateResult {
    const { portrait } = this.saying.words;
    const flowering = this.nextFlowering();
    const button = (text: string, press: () => void) =>
      html`<button class="outline" type="button" @click=${press}>${text}</button>`;
    return html`<div class="buttons">
      ${
        flowering === undefined
          ? nothing
          : button(portrait.inFlower, () => {
              this.month = flowering;
            })
      }
      ${button(portrait.another, () => {
        this.seed = this.varied ? this.seed + 1 : this.seed;
        this.varied = true;
      })}
      ${
        this.varied
          ? button(portrait.usual, () => {
              this.varied = false;
            })
          : nothing
      }
    </div>`;
  }

  private renderDetails(taxon: Taxon, figure: Figure): TemplateResult | typeof nothing {
    if (figure.details.length === 0) return nothing;
    const { saying, pictures } = this;
    return html`<details open>
      <summary>${saying.words.portrait.close}</summary>
      <ul class="close">
        ${figure.details.map(({ character, state }) => {
          const states = this.varied ? [state] : usualStates(taxon, character.id, state);
          const answer = said(character, { character: character.id, states, sureness: 'sure' }, saying);
          return html`<li>
            ${hasRoom(pictures, character, state) ? html`${pictureOf(pictures, `${character.id}/${state}`)}` : nothing}
            <b>${this.say(character.label)}</b> <span>${answer}</span>
          </li>`;
        })}
      </ul>
    </details>`;
  }

  private renderNotes(figure: Figure): TemplateResult {
    const { portrait, common } = this.saying.words;
    const broken = figure.broken ? ` ${portrait.broken}` : '';
    return html`<p class="quiet">${portrait.honest}${this.varied ? ` ${portrait.varied}` : ''}</p>
      ${
        figure.unknown.length > 0
          ? html`<p class="quiet unknown">
              ${portrait.unknown(common.list(figure.unknown.map(({ label }) => this.say(label))))}${broken}
            </p>`
          : nothing
      }`;
  }

  override render() {
    const { snapshot } = this;
    const figure = this.#figure;
    const taxon = this.#plant;
    if (snapshot === undefined) return nothing;
    const { words, language } = this.saying;
    const { key } = snapshot.prepared;
    if (figure === undefined || taxon === undefined)
      return html`<p role="status">${this.taxon === '' ? nothing : words.portrait.missing(this.taxon)}</p>`;
    if (this.bare)
      return figure.parts.length > 0
        ? html`<div part="portrait">${this.renderFigure(snapshot, taxon, figure)}</div>`
        : nothing;
    return html`<figure part="portrait">
      ${this.renderPhotos()} ${figure.parts.length > 0 ? this.renderFigure(snapshot, taxon, figure) : nothing}
      <figcaption>
        ${this.heading === 'off' ? nothing : html`<p>${plant(key, taxon, words, language)}</p>`} ${this.renderNotes(figure)}
      </figcaption>
      ${this.renderMonths(figure)} ${this.renderButtons()} ${this.renderDetails(taxon, figure)}
      <details class="words">
        <summary>${words.portrait.inWords}</summary>
        ${renderTraits(key.characters, taxon, this.saying)}
      </details>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-portrait': LeadwortPortrait;
  }
}
