import { html, nothing, type PropertyValues, svg, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { ifDefined } from 'lit/directives/if-defined.js';
import {
  type ComparedRow,
  type Comparison,
  comparisonOf,
  MOST_COMPARED,
  type PairDifference,
  type Taxon,
} from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import type { ComparisonWords } from '../../words/index.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { flag } from '../shared/flag.ts';
import { bring } from '../shared/late.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plant, plantName, taxonOf } from '../shared/plant.ts';
import { said } from '../shared/said.ts';
import { statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { terms } from '../shared/terms.ts';
import { renderShows } from './cell.ts';
import { styles } from './comparison.styles.ts';
import type { Witness } from './witness.ts';

/** How many things to look at now are listed; what is marked as enough always is (ours). */
const AT_ONCE = 6;

/**
 * Two or three plants side by side, by the same features in the same order: what tells them apart first, the surest and
 * easiest of it on top, with what can be seen now without touching. What the person saw is marked. It is no confirmation,
 * and says so.
 *
 * In a `<leadwort-session>` it shows the plants that the verdict, the standing or the name search there ask for.
 *
 * @tag leadwort-comparison
 * @fires leadwort-comparison - It was closed. Detail: `{ taxa: [] }`.
 * @csspart comparison - The whole.
 * @csspart heading - The names of the plants.
 * @csspart now - What can be looked at now.
 * @csspart plants - The plants' names, status and portraits.
 * @csspart row - One feature.
 */
export class LeadwortComparison extends LeadwortPart {
  static override styles = [shared, statusStyles, drawingStyles, styles];

  /** Ids of two or three plants of the key, separated by spaces. */
  @property() taxa = '';
  /** Whether a button closes it: it then asks for no plants. */
  @property({ converter: flag }) closable = false;
  /** Who saw the plant, where it is not the person in front of the page: this then has no heading and asks for no looks. */
  @property({ attribute: false }) witness: Witness | undefined;

  /** One plant below the other, where there is little room. */
  @state() private stacked = false;
  /** The columns do not fit, and are moved sideways. */
  @state() private wider = false;

  #session: Element | null = null;
  readonly #asked = ({ detail }: CustomEvent<{ readonly taxa: readonly string[] }>): void => {
    this.taxa = detail.taxa.join(' ');
  };
  /** Of the columns: whatever is folded, turned or drawn changes their size. */
  readonly #size = new ResizeObserver(() => {
    const board = this.renderRoot.querySelector('.board');
    this.wider = board !== null && board.scrollWidth > board.clientWidth + 1;
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.#session = this.closest('leadwort-session');
    this.#session?.addEventListener('leadwort-comparison', this.#asked as EventListener);
    // Portraits come with a comparison; without a connection names must do.
    bring('portrait').then(
      () => this.requestUpdate(),
      () => undefined,
    );
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#size.disconnect();
    this.#session?.removeEventListener('leadwort-comparison', this.#asked as EventListener);
  }

  protected override updated(_changed: PropertyValues): void {
    const board = this.renderRoot.querySelector('.board');
    if (board) this.#size.observe(board);
  }

  private get own(): ComparisonWords {
    const { comparison } = this.saying.words;
    return this.witness ? { ...comparison, saw: this.witness.saw } : comparison;
  }

  private get level(): number {
    return this.settings?.headingLevel ?? 2;
  }

  private heading(below: number, text: unknown): TemplateResult {
    return html`<div role="heading" class="sub" aria-level=${Math.min(6, this.level + below)}>${text}</div>`;
  }

  private nameOf(taxon: Taxon): { readonly text: string; readonly lang: string } {
    return plantName((this.snapshot as Snapshot).prepared.key, taxon, this.saying.language);
  }

  private renderHead(words: string): TemplateResult | typeof nothing {
    if (this.witness) return nothing;
    return html`<div class="head">
      <div role="heading" id="heading" class="heading" part="heading" tabindex="-1" aria-level=${this.level}>${words}</div>
      ${this.closable ? this.renderClose() : nothing}
    </div>`;
  }

  private renderClose(): TemplateResult {
    return html`<button class="outline close" type="button" @click=${() => fire(this, 'leadwort-comparison', { taxa: [] })}>
      ${this.saying.words.common.close}
    </button>`;
  }

  /** What can be checked from where a person stands, and which of all that is enough. */
  private renderNow({ telling, taxa, enough }: Comparison): TemplateResult {
    const { own } = this;
    const { verdict } = this.saying.words;
    const chosen = ({ character }: ComparedRow) => enough?.characters.includes(character.id) ?? false;
    const now = telling
      .filter((row) => row.looking === 'now' && row.answer === undefined && isClear(row))
      .filter((row, i) => i < AT_ONCE || chosen(row));
    return html`<div class="now" part="now">
      ${this.heading(1, own.now)}
      ${
        now.length > 0
          ? html`<ul>
              ${now.map(
                (row) => html`<li>
                  <button class="plain" type="button" @click=${() => this.request('ask', { character: row.character.id })}>
                    ${chosen(row) ? star : nothing}${this.say(row.character.label)}<span class="unseen">: ${verdict.look}</span>
                  </button>
                </li>`,
              )}
            </ul>`
          : html`<p>${own.nowNone}</p>`
      }
      <p>${enough ? own.enough(enough.characters.length, taxa.length) : own.notEnough}</p>
      <p class="unsure">${own.unsure}</p>
    </div>`;
  }

  private renderPlants(taxa: readonly Taxon[]): TemplateResult {
    const { words, language } = this.saying;
    const { key } = (this.snapshot as Snapshot).prepared;
    const portrait = customElements.get('leadwort-portrait') !== undefined;
    return html`<ul class="plants cells" part="plants">
      ${taxa.map(
        (taxon) => html`<li class="cell">
          ${portrait ? html`<leadwort-portrait bare month=${ifDefined(this.witness?.month)} taxon=${taxon.id} among=${taxa.map(({ id }) => id).join(' ')}></leadwort-portrait>` : nothing}
          ${plant(key, taxon, words, language)}
        </li>`,
      )}
    </ul>`;
  }

  private renderRow(row: ComparedRow, { taxa, enough }: Comparison): TemplateResult {
    const { own, saying } = this;
    const { character, pairs, shows } = row;
    const chosen = enough?.characters.includes(character.id) ?? false;
    return html`<li class="row ${chosen ? 'chosen' : ''}" part="row">
      <div class="about">
        ${this.heading(2, html`${chosen ? star : nothing}${this.say(character.label)}`)}
        ${chosen ? html`<p class="one">${own.one(enough?.characters.length ?? 0)}</p>` : nothing}
        ${pairs.length > 0 ? html`<p class="quiet">${this.differences(pairs, taxa)}. ${this.looking(row)}.</p>` : nothing}
        ${pairs.map(({ words }) => (words === undefined ? nothing : html`<p>${terms(this.say(words))}</p>`))}
        ${
          character.caution && pairs.length > 0
            ? html`<p class="caution"><b>${saying.words.question.careful}</b> ${this.say(character.caution)}</p>`
            : nothing
        }
        ${this.answered(row)}
      </div>
      <ul class="cells">
        ${taxa.map((taxon, i) => {
          const { text, lang } = this.nameOf(taxon);
          const one = shows[i];
          return html`<li class="cell">
            <span class="who" lang=${lang}>${text}</span>
            ${one ? renderShows(one, character, { saying, own, pictures: this.pictures }) : nothing}
          </li>`;
        })}
      </ul>
    </li>`;
  }

  /** How two plants differ; of three, said of each pair, or once when it holds of all. */
  private differences(pairs: readonly PairDifference[], taxa: readonly Taxon[]): string {
    const { own } = this;
    const [first] = pairs as readonly [PairDifference, ...PairDifference[]];
    const all = (taxa.length * (taxa.length - 1)) / 2;
    if (pairs.length === all && pairs.every(({ difference }) => difference === first.difference))
      return own.difference[first.difference];
    const { prepared } = this.snapshot as Snapshot;
    const name = (id: string) => this.nameOf(taxonOf(prepared, id)).text;
    const kinds = [...new Set(pairs.map(({ difference }) => difference))];
    const clear = kinds.filter((kind) => kind !== 'partly');
    return (['always', 'usually', 'partly'] as const)
      .filter((kind) => (clear.length > 0 ? clear : kinds).includes(kind))
      .map((kind) => {
        const some = pairs.filter(({ difference }) => difference === kind);
        // The one that differs from both others says it shorter than two pairs.
        const odd = taxa.find(({ id }) => some.length === 2 && some.every((pair) => pair.taxa.includes(id)));
        const who = odd ? name(odd.id) : some.map((pair) => own.from(...(pair.taxa.map(name) as [string, string])));
        return own.pair(own.difference[kind], [who].flat().join('; '));
      })
      .join('. ');
  }

  private answered(row: ComparedRow): TemplateResult | typeof nothing {
    if (this.witness) return this.witness.answered(row);
    const { character, answer } = row;
    if (!answer) return nothing;
    const { saying } = this;
    return html`<p class="answer">${saying.words.verdict.answered(said(character, answer, saying))}</p>`;
  }

  private looking(row: ComparedRow): string {
    const { own, saying, witness } = this;
    if (witness) return witness.looking(row);
    const { looking } = row;
    if (looking !== 'season') return own.looking[looking];
    return own.looking.season(saying.words.common.months[(this.snapshot as Snapshot).month]);
  }

  private renderBoard(comparison: Comparison): TemplateResult {
    const { own, saying } = this;
    const { taxa, telling, alike, unknown } = comparison;
    const rows = (some: readonly ComparedRow[]) =>
      html`<ul class="rows">${some.map((row) => this.renderRow(row, comparison))}</ul>`;
    const folded = (some: readonly ComparedRow[], summary: (features: number) => string) =>
      some.length > 0 ? html`<details><summary>${summary(some.length)}</summary>${rows(some)}</details>` : nothing;
    const moved = this.wider && !this.stacked;
    return html`<button class="outline turn" type="button" aria-pressed=${this.stacked} @click=${() => {
      this.stacked = !this.stacked;
    }}>${own.stack}</button>
      <div class="board ${this.stacked ? 'stacked' : ''} of-${taxa.length}" tabindex=${ifDefined(moved ? 0 : undefined)}
        role="region" aria-label=${own.unstack}>
        ${this.renderPlants(taxa)} ${rows(telling.filter(isClear))}
        ${folded(
          telling.filter((row) => !isClear(row)),
          own.partly,
        )}
        ${folded(alike, own.alike)}
        ${
          unknown.length > 0
            ? html`<p class="quiet about">${own.unknownOf(saying.words.common.list(unknown.map(({ label }) => this.say(label))))}</p>`
            : nothing
        }
      </div>`;
  }

  /** Moves the focus to the heading, once it is there. */
  override focus(options?: FocusOptions): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#heading')?.focus(options));
  }

  override render() {
    const { snapshot } = this;
    const ids = [...new Set(this.taxa.split(/\s+/).filter((id) => id !== ''))];
    if (!snapshot || ids.length === 0) return nothing;
    const { own, saying } = this;
    const { prepared, month, trail } = snapshot;
    const missing = ids.filter((id) => !prepared.taxonIndex.has(id));
    const known = ids.filter((id) => prepared.taxonIndex.has(id));
    const comparison =
      known.length >= 2 && known.length <= MOST_COMPARED
        ? comparisonOf(prepared, known, this.witness ?? { month, answers: trail })
        : undefined;
    const names = known.map((id) => this.nameOf(taxonOf(prepared, id)).text);
    const heading = own.heading(saying.words.common.list([...names, ...missing]));
    return html`<section part="comparison" aria-label=${heading}>
      ${this.renderHead(heading)}
      ${missing.length > 0 ? html`<p role="alert" class="fault">${own.missing(missing.join(', '), missing.length)}</p>` : nothing}
      ${comparison ? html`${this.witness ? nothing : this.renderNow(comparison)} ${this.renderBoard(comparison)}` : html`<p>${own.few}</p>`}
    </section>`;
  }
}

/** Worth a place in front: it tells two of them apart usually or always, or the author writes of it. */
const isClear = ({ pairs, looking }: ComparedRow): boolean =>
  looking !== 'fact' && pairs.some(({ difference, words }) => difference !== 'partly' || words !== undefined);

const star = svg`<svg class="star" viewBox="0 0 24 24" aria-hidden="true"><path d="M12 2.500l2.900 6.300 6.900.700-5.200 4.600 1.500 6.800L12 17.400l-6.100 3.500 1.500-6.800L2.200 9.500l6.900-.700Z" /></svg>`;

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-comparison': LeadwortComparison;
  }
}
