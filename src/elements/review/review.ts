import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { PreparedKey } from '../../key/index.ts';
import {
  type Find,
  FindError,
  PHOTOS,
  type PhotoKind,
  readFind,
  stampOf,
  wantedPhotos,
  writeFind,
} from '../../report/find/index.ts';
import { type Dossier, dossierOf, type Entered, lackingIn, reviewedFind, taxonIn } from '../../report/review/index.ts';
import { type ReportWords, reportWords } from '../../words/report/index.ts';
import { type ReviewWords, reviewWords } from '../../words/review/index.ts';
import { fire } from '../shared/events.ts';
import { languageAt } from '../shared/language.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName } from '../shared/plant-name.ts';
import { shared } from '../shared/styles.ts';
import { renderEntry } from './entry.ts';
import { renderAnswers, renderApart, renderStanding } from './evidence.ts';
import { type Fault, renderList, renderOpening } from './opening.ts';
import { renderReply } from './reply.ts';
import { styles } from './review.styles.ts';
import { save } from './save.ts';
import { paintPhotos, renderPhotos, renderPlace } from './sheet.ts';

const BLANK: Entered = {
  status: '',
  taxon: '',
  by: '',
  remarks: '',
  wanted: [],
};
type Told = 'written' | 'copied' | 'notCopied';

/** What may hand down a key: the elements that do, through shadow roots; one that is not defined yet counts. */
function holderOf(element: Element): Element | undefined {
  const found = element.closest('leadwort-session, leadwort-key');
  const root = element.getRootNode();
  return found ?? (root instanceof ShadowRoot ? holderOf(root.host) : undefined);
}

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
  @state() private text: ReviewWords | undefined;
  @state() private reportText: ReportWords | undefined;
  @state() private faults: readonly Fault[] = [];
  @state() private entered: ReadonlyMap<string, Entered> = new Map();
  @state() private left = false;
  @state() private query = '';
  @state() private refused = '';
  @state() private told: Told | undefined;

  #language: string | undefined;
  #fetched = '';
  #made: { find: Find; prepared: PreparedKey; dossier: Dossier } | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const language = this.settings?.language ?? languageAt(this);
    if (language !== this.#language) {
      this.#language = language;
      Promise.all([reviewWords(language), reportWords(language)]).then(
        ([text, reportText]) => {
          if (language === this.#language) Object.assign(this, { text, reportText });
        },
        () => {
          this.#language = undefined;
        },
      );
    }
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
    const { find } = this;
    if (!find) return BLANK;
    const { review } = find;
    // Whoever reviews one report is likely to review the next.
    const by = review?.by ?? [...this.entered.values()].at(-1)?.by ?? '';
    const written = review && {
      ...BLANK,
      ...review,
      taxon: review.taxon ?? '',
      wanted: review.wanted ?? [],
      remarks: review.remarks ?? '',
    };
    return this.entered.get(find.id) ?? written ?? { ...BLANK, by };
  }

  // ---- what comes in

  /** Where the report is then; undefined when it cannot be read, which is told, and the others stay. */
  #take(text: string, name: string): number | undefined {
    try {
      const find = readFind(text);
      const there = this.finds.findIndex(({ id }) => id === find.id);
      this.finds = there < 0 ? [...this.finds, find] : this.finds.with(there, find);
      if (there >= 0) this.#forget(find.id);
      return there < 0 ? this.finds.length - 1 : there;
    } catch (error) {
      if (!(error instanceof FindError)) throw error;
      this.faults = [...this.faults, { name, wrong: error.message }];
      return undefined;
    }
  }

  async #fetch(address: string): Promise<void> {
    this.faults = [];
    const text = await fetch(new URL(address, document.baseURI), {
      credentials: 'same-origin',
    }).then(
      (response) => (response.ok ? response.text() : undefined),
      () => undefined,
    );
    // Another address may have been given meanwhile.
    if (address !== this.findAt) return;
    if (text === undefined) this.faults = [{ name: address }];
    else this.#turnTo(this.#take(text, address));
  }

  /** Opens all that can be read, and turns to the first of them. */
  async #open(files: readonly File[]): Promise<void> {
    this.faults = [];
    const texts = await Promise.all(files.map((file) => file.text().catch(() => '')));
    const places = texts.map((text, i) => this.#take(text, files[i]?.name ?? ''));
    this.#turnTo(places.find((at) => at !== undefined));
  }

  #paste(): void {
    const area = this.renderRoot.querySelector<HTMLTextAreaElement>('#pasted');
    if (!area) return;
    this.faults = [];
    this.#turnTo(this.#take(area.value, this.text?.pasted ?? ''));
    if (this.faults.length === 0) area.value = '';
  }

  // ---- what is said

  #turnTo(at: number | undefined): void {
    if (at !== undefined)
      Object.assign(this, {
        at,
        left: false,
        query: '',
        refused: '',
        told: undefined,
      });
  }

  #forget(id: string): void {
    const entered = new Map(this.entered);
    entered.delete(id);
    this.entered = entered;
  }

  #set(change: Partial<Entered>): void {
    const { find } = this;
    if (!find) return;
    this.told = undefined;
    this.entered = new Map(this.entered).set(find.id, {
      ...this.entry,
      ...change,
    });
  }

  #write(prepared: PreparedKey): void {
    const { find, entry } = this;
    if (!find) return;
    this.left = true;
    this.refused = '';
    if (lackingIn(entry).length > 0) return;
    const ms = this.clock();
    try {
      const written = reviewedFind(prepared, find, entry, stampOf(ms, -new Date(ms).getTimezoneOffset()));
      this.finds = this.finds.with(this.at, written);
      this.told = 'written';
      fire(this, 'leadwort-review', {
        find: find.id,
        status: entry.status as 'confirmed',
      });
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
    const { darwinCoreCsv } = await import('../../report/forms/index.ts');
    const table = darwinCoreCsv(this.finds, (find) => (find.key.id === key.id ? key : undefined));
    save(table, 'text/csv', 'finds.csv');
  }

  // ---- drawing

  #dossier(prepared: PreparedKey, find: Find): Dossier {
    const made = this.#made;
    if (made?.find === find && made.prepared === prepared) return made.dossier;
    const dossier = dossierOf(prepared, find);
    this.#made = { find, prepared, dossier };
    return dossier;
  }

  /** Plants by the name in a sentence, with the scientific one behind it where `both`. */
  #nameOf(prepared: PreparedKey, find: Find, both = true): (id: string) => string {
    return (id) => {
      if (id === 'outside') return this.text?.outside ?? '';
      const taxon = taxonIn(prepared, id);
      if (taxon === undefined) return find.standing.find((one) => one.taxon === id)?.name ?? id;
      const { text } = plantName(prepared.key, taxon, this.saying.language);
      return text === taxon.name || !both ? text : `${text} (${taxon.name})`;
    };
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.requestUpdate();
  }

  /** Without a key around it nothing can be held against anything: that is said, instead of nothing at all. */
  protected override shouldUpdate(changed: PropertyValues): boolean {
    return this.#alone || super.shouldUpdate(changed);
  }

  get #alone(): boolean {
    return this.settings === undefined && holderOf(this) === undefined;
  }

  override render() {
    const { snapshot, text, reportText, find } = this;
    if (this.#alone)
      return text ? html`<p class="warn" role="alert" lang=${text.language}>${text.noSession}</p>` : nothing;
    if (!snapshot || !text || !reportText) return nothing;
    const { prepared } = snapshot;
    const level = this.settings?.headingLevel ?? 2;
    return html`<div class="review" lang=${text.language}>
      <div role="heading" aria-level=${level} class="heading">${text.heading}</div>
      <div class="opening">${renderOpening({ text, faults: this.faults, open: (files) => void this.#open(files), paste: () => this.#paste() })}</div>
      ${this.finds.length > 1 ? renderList({ text, finds: this.finds, at: this.at, nameOf: (one) => this.#nameOf(prepared, one), turnTo: (at) => this.#turnTo(at) }) : nothing}
      ${find ? this.#renderFind(prepared, find, text, reportText, Math.min(6, level + 1)) : nothing}
    </div>`;
  }

  #renderFind(
    prepared: PreparedKey,
    find: Find,
    text: ReviewWords,
    reportText: ReportWords,
    level: number,
  ): TemplateResult {
    const dossier = this.#dossier(prepared, find);
    const nameOf = this.#nameOf(prepared, find);
    const view = {
      find,
      dossier,
      text,
      level,
      nameOf: this.#nameOf(prepared, find, false),
      saying: this.saying,
    };
    return html`<div class="sheet" part="evidence">
        ${dossier.keyDiffers ? html`<p class="warn">${text.keyDiffers(`${find.key.id} ${find.key.version}`, `${prepared.key.id} ${prepared.key.version}`)}</p>` : nothing}
        ${renderPhotos(find, text, reportText, level)} ${renderPlace(find, text, level, (words) => void this.#copy(words))}
        ${renderAnswers(view)} ${renderApart(view)} ${renderStanding(view)}
      </div>
      <div part="entry">
        ${renderEntry({
          ...view,
          nameOf,
          prepared,
          entry: this.entry,
          photos: this.#asked(prepared, find).map((id) => [id, reportText.photos.wants[id]] as const),
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
          ${find.review ? renderReply(find, text, reportText, nameOf) : nothing}
        </div>
      </div>`;
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
