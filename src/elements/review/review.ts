import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { PreparedKey } from '../../key/index.ts';
import {
  type Find,
  FindError,
  PHOTOS,
  type PhotoKind,
  type Review,
  stampOf,
  wantedPhotos,
  writeFind,
} from '../../report/find/index.ts';
import { type Dossier, dossierOf, type Entered, lackingIn, reviewedFind } from '../../report/review/index.ts';
import type { Witness } from '../comparison/witness.ts';
import { fire } from '../shared/events.ts';
import { languageAt } from '../shared/language.ts';
import { bring } from '../shared/late.ts';
import { LeadwortPart } from '../shared/part.ts';
import { shared } from '../shared/styles.ts';
import { isAlone } from './alone.ts';
import { enteredFor } from './entered.ts';
import { renderEntry } from './entry.ts';
import { renderAnswers, renderApart, renderStanding } from './evidence.ts';
import { type Coming, fetched, takeIn, textsOf } from './intake.ts';
import { namesIn } from './names.ts';
import { type Fault, renderList, renderOpening } from './opening.ts';
import { renderReply } from './reply.ts';
import { bringForms, type Forms, type Rest, renderRest, restOf } from './rest.ts';
import { styles } from './review.styles.ts';
import { save } from './save.ts';
import { paintPhotos, renderPhotos, renderPlace } from './sheet.ts';
import { TextShelf, type Texts } from './texts.ts';
import { witnessOf } from './witness.ts';

/** What follows from a find; `from`: what it was made from. */
interface Made {
  readonly from: readonly unknown[];
  readonly dossier: Dossier;
  readonly witness: Witness;
  readonly rest: Rest;
}
type Told = 'written' | 'copied' | 'notCopied';

/**
 * What a specialist needs to confirm a report, correct it or ask for a photograph. Reports come from files, pasted, from an
 * address that the page's owner gives, or as a property; the review is written into the report. Nothing is sent from here.
 *
 * @tag leadwort-review
 * @fires leadwort-review - A review was written into a report. Detail: `{ find, status }`.
 * @csspart evidence - What the report says.
 * @csspart entry - What the specialist says.
 */
export class LeadwortReview extends LeadwortPart {
  static override styles = [shared, styles];

  /** Address of a report that the page's owner gives; nothing else is fetched. */
  @property({ attribute: 'find' }) findAt = '';
  /** The reports that are open, with the reviews written so far. */
  @property({ attribute: false }) finds: readonly Find[] = [];
  /** Milliseconds since 1970. */
  @property({ attribute: false }) clock: () => number = () => Date.now();

  @state() private at = 0;
  @state() private faults: readonly Fault[] = [];
  @state() private entered: ReadonlyMap<string, Entered> = new Map();
  @state() private left = false;
  @state() private query = '';
  @state() private refused = '';
  @state() private told: Told | undefined;
  /** Whether answers are shown as the person saw them too. */
  @state() private theirs = false;

  /** Undefined until they are there; without a connection the rest must do. */
  @state() private forms: Forms | undefined;

  readonly #shelf = new TextShelf(() => this.requestUpdate());
  #fetched = '';
  #made: Made | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.find && !this.forms)
      bringForms().then(
        (forms) => {
          this.forms = forms;
        },
        () => undefined,
      );
    if (changed.has('finds')) this.at = Math.max(0, Math.min(this.at, this.finds.length - 1));
    if (this.findAt !== this.#fetched) {
      this.#fetched = this.findAt;
      if (this.findAt !== '') void this.#fetch(this.findAt);
    }
  }

  protected override updated(): void {
    const { find } = this;
    if (find) void paintPhotos(this.renderRoot, find);
  }

  private get find(): Find | undefined {
    return this.finds[this.at];
  }

  private get entry(): Entered {
    return enteredFor(this.find as Find, this.entered);
  }

  private get texts(): Texts | undefined {
    return this.#shelf.in(this.settings?.language ?? languageAt(this));
  }

  // ---- what comes in

  /** Opens all that can be read, and turns to the first of them. */
  #take(coming: readonly Coming[]): void {
    const { finds, faults, ids } = takeIn(this.finds, coming);
    // What was entered of one that was open before is gone with it.
    this.entered = new Map([...this.entered].filter(([id]) => !ids.includes(id)));
    Object.assign(this, { finds, faults });
    const at = finds.findIndex(({ id }) => id === ids[0]);
    if (at >= 0) this.#turnTo(at);
  }

  async #fetch(address: string): Promise<void> {
    this.faults = [];
    const text = await fetched(address);
    // Another address may have been given meanwhile.
    if (address === this.findAt) this.#take([{ name: address, text }]);
  }

  async #open(files: readonly File[]): Promise<void> {
    this.#take(await textsOf(files));
  }

  #paste(): void {
    const area = this.renderRoot.querySelector<HTMLTextAreaElement>('#pasted');
    if (!area) return;
    this.#take([{ name: this.texts?.review.pasted ?? '', text: area.value }]);
    if (this.faults.length === 0) area.value = '';
  }

  // ---- what is said

  #turnTo(at: number): void {
    Object.assign(this, { at, left: false, query: '', refused: '', told: undefined });
  }

  #set(change: Partial<Entered>): void {
    const { find } = this;
    if (!find) return;
    this.told = undefined;
    this.entered = new Map(this.entered).set(find.id, { ...this.entry, ...change });
  }

  #write(prepared: PreparedKey): void {
    const { find } = this;
    if (!find) return;
    const { entry } = this;
    this.left = true;
    this.refused = '';
    if (lackingIn(entry).length > 0) return;
    const ms = this.clock();
    try {
      const written = reviewedFind(prepared, find, entry, stampOf(ms, -new Date(ms).getTimezoneOffset()));
      const status = written.review?.status as Review['status'];
      this.finds = this.finds.with(this.at, written);
      this.told = 'written';
      fire(this, 'leadwort-review', { find: find.id, status });
    } catch (error) {
      if (!(error instanceof FindError)) throw error;
      this.refused = error.message;
    }
  }

  async #copy(words: string): Promise<void> {
    this.told = await navigator.clipboard.writeText(words).then(
      () => 'copied' as const,
      () => 'notCopied' as const,
    );
  }

  async #saveTable({ key }: PreparedKey): Promise<void> {
    const { darwinCoreCsv } = await bringForms();
    const table = darwinCoreCsv(this.finds, (find) => (find.key.id === key.id ? key : undefined));
    save(table, 'text/csv', 'finds.csv');
  }

  // ---- drawing

  /** Typing leaves it as it is. */
  #make(prepared: PreparedKey, find: Find, texts: Texts): Made {
    const { forms, saying } = this;
    const from = [prepared, find, texts, this.settings, forms];
    if (this.#made && from.every((one, i) => one === this.#made?.from[i])) return this.#made;
    const dossier = dossierOf(prepared, find);
    const rest = forms ? restOf(forms, prepared, find, saying) : [];
    this.#made = { from, dossier, witness: witnessOf(find, dossier, texts, saying), rest };
    return this.#made;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.requestUpdate();
    bring('comparison').catch(() => undefined);
  }

  /** Without a key around it nothing can be held against anything: that is said, instead of nothing at all. */
  protected override shouldUpdate(changed: PropertyValues): boolean {
    return this.#alone || super.shouldUpdate(changed);
  }

  get #alone(): boolean {
    return this.settings === undefined && isAlone(this);
  }

  override render() {
    const { snapshot, texts, find } = this;
    if (!texts) return nothing;
    const text = texts.review;
    if (this.#alone) return html`<p class="warn" role="alert" lang=${text.language}>${text.noSession}</p>`;
    if (!snapshot) return nothing;
    const { prepared } = snapshot;
    const level = this.settings?.headingLevel ?? 2;
    return html`<div class="review" lang=${text.language}>
      <div role="heading" aria-level=${level} class="heading">${text.heading}</div>
      <div class="opening">${renderOpening({ text, faults: this.faults, open: (files) => void this.#open(files), paste: () => this.#paste() })}</div>
      ${this.finds.length > 1 ? renderList({ text, finds: this.finds, at: this.at, nameOf: (one) => namesIn(prepared, one, text, true), turnTo: (at) => this.#turnTo(at) }) : nothing}
      ${find ? this.#renderFind(prepared, find, texts, Math.min(6, level + 1)) : nothing}
    </div>`;
  }

  #renderFind(prepared: PreparedKey, find: Find, texts: Texts, level: number): TemplateResult {
    const { review: text, report } = texts;
    const { dossier, witness, rest } = this.#make(prepared, find, texts);
    const view = { find, dossier, text, level, nameOf: namesIn(prepared, find, text, false), saying: this.saying };
    const shown = {
      theirs: this.theirs,
      turn: () => {
        this.theirs = !this.theirs;
      },
    };
    return html`<div class="sheet" part="evidence">
        ${dossier.keyDiffers ? html`<p class="warn">${text.keyDiffers(`${find.key.id} ${find.key.version}`, `${prepared.key.id} ${prepared.key.version}`)}</p>` : nothing}
        ${renderPhotos(find, text, report, level)} ${renderPlace(find, text, level, (words) => void this.#copy(words))}
        ${renderAnswers(view, shown)} ${renderApart(view, witness)} ${renderStanding(view)}
        ${renderRest(rest, find, level)}
      </div>
      <div part="entry">
        ${renderEntry({
          ...view,
          nameOf: namesIn(prepared, find, text, true),
          prepared,
          entry: this.entry,
          photos: this.#asked(prepared, find).map((id) => [id, report.photos.wants[id]] as const),
          lacking: this.left ? lackingIn(this.entry) : [],
          set: (change) => this.#set(change),
          query: this.query,
          search: (query) => {
            this.query = query;
          },
          write: () => this.#write(prepared),
        })}
        <p role="status">${this.told ? text[this.told] : nothing}</p>
        <div role="alert">${this.refused ? html`<p class="wrong">${text.refused}</p><pre>${this.refused}</pre>` : nothing}</div>
        <div class="row">
          <button class="outline" type="button" ?disabled=${!find.review} @click=${() => save(writeFind(find), 'application/json', `find-${find.id.slice(0, 8)}.json`)}>${text.save}</button>
          <button class="outline" type="button" @click=${() => void this.#saveTable(prepared)}>${text.table}</button>
          ${find.review ? this.#renderReply(prepared, find, texts) : nothing}
        </div>
      </div>`;
  }

  /** Whoever reported is answered in the language of the report. */
  #renderReply(prepared: PreparedKey, find: Find, mine: Texts): TemplateResult {
    const texts = this.#shelf.in(find.language) ?? mine;
    return renderReply(find, mine.review, texts, namesIn(prepared, find, texts.review, true));
  }

  /** Every photograph of the checklist, those first that would settle most. */
  #asked(prepared: PreparedKey, find: Find): readonly PhotoKind[] {
    const first = wantedPhotos(prepared, find.standing, find.month).map(({ id }) => id);
    return [...new Set([...first, ...PHOTOS])];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-review': LeadwortReview;
  }
}
