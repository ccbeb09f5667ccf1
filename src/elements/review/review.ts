import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { mailLink } from '../../guidance/index.ts';
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
import { fromBase64 } from '../../report/photos/index.ts';
import {
  claimOf,
  type Dossier,
  dossierOf,
  type Entered,
  lackingIn,
  reviewedFind,
  taxonIn,
} from '../../report/review/index.ts';
import { type ReportWords, reportWords } from '../../words/report/index.ts';
import { type ReviewWords, reviewWords } from '../../words/review/index.ts';
import { paint } from '../report/photos.ts';
import { coordinatesOf } from '../report/where.ts';
import { fire } from '../shared/events.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName } from '../shared/plant-name.ts';
import { shared } from '../shared/styles.ts';
import { renderEntry } from './entry.ts';
import { renderAnswers, renderApart, renderStanding } from './evidence.ts';
import { styles } from './review.styles.ts';
import { save } from './save.ts';

const BLANK: Entered = { status: '', taxon: '', by: '', remarks: '', wanted: [] };
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
  @state() private text: ReviewWords | undefined;
  @state() private reportText: ReportWords | undefined;
  @state() private faults: readonly string[] = [];
  @state() private entered: ReadonlyMap<string, Entered> = new Map();
  @state() private left = false;
  @state() private query = '';
  @state() private refused = '';
  @state() private told: Told | undefined;

  #language = '';
  #fetched = '';
  #made: { find: Find; prepared: PreparedKey; dossier: Dossier } | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { language } = this.saying;
    if (language !== this.#language) {
      this.#language = language;
      Promise.all([reviewWords(language), reportWords(language)]).then(
        ([text, reportText]) => {
          if (language === this.#language) Object.assign(this, { text, reportText });
        },
        () => {
          this.#language = '';
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
    if (!find) return;
    const pictures = find.photos.flatMap(({ id, data, type }) =>
      data === undefined ? [] : [{ id, blob: fromBase64(data, type) }],
    );
    void paint(this.renderRoot, pictures);
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

  #take(text: string, name: string): void {
    try {
      const find = readFind(text);
      const there = this.finds.findIndex(({ id }) => id === find.id);
      this.finds = there < 0 ? [...this.finds, find] : this.finds.with(there, find);
      if (there >= 0) this.#forget(find.id);
      this.#turnTo(there < 0 ? this.finds.length - 1 : there);
    } catch (error) {
      if (!(error instanceof FindError)) throw error;
      this.faults = [...this.faults, `${name}\n${error.message}`];
    }
  }

  async #fetch(address: string): Promise<void> {
    this.faults = [];
    try {
      const response = await fetch(new URL(address, document.baseURI), { credentials: 'same-origin' });
      if (!response.ok) throw new TypeError(String(response.status));
      const text = await response.text();
      if (address === this.findAt) this.#take(text, address);
    } catch {
      this.faults = [...this.faults, address];
    }
  }

  async #open(files: readonly File[]): Promise<void> {
    this.faults = [];
    for (const file of files) this.#take(await file.text().catch(() => ''), file.name);
    this.#turnTo(Math.max(0, this.finds.length - files.length));
  }

  #paste(): void {
    const area = this.renderRoot.querySelector<HTMLTextAreaElement>('#pasted');
    if (!area) return;
    this.faults = [];
    this.#take(area.value, this.text?.pasted ?? '');
    if (this.faults.length === 0) area.value = '';
  }

  // ---- what is said

  #turnTo(at: number): void {
    Object.assign(this, { at, left: false, query: '', refused: '', told: undefined });
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
    this.entered = new Map(this.entered).set(find.id, { ...this.entry, ...change });
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
      fire(this, 'leadwort-review', { find: find.id, status: entry.status as 'confirmed' });
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

  override render() {
    const { snapshot, text, reportText, find } = this;
    if (!snapshot || !text || !reportText) return nothing;
    const { prepared } = snapshot;
    const level = this.settings?.headingLevel ?? 2;
    return html`<div class="review" lang=${text.language}>
      <div role="heading" aria-level=${level} class="heading">${text.heading}</div>
      <div class="opening">${this.#renderOpening(text)}</div>
      ${this.finds.length > 1 ? this.#renderList(text, prepared) : nothing}
      ${find ? this.#renderFind(prepared, find, text, reportText, Math.min(6, level + 1)) : nothing}
    </div>`;
  }

  #renderOpening(text: ReviewWords): TemplateResult {
    const chosen = (event: Event) => {
      const input = event.currentTarget as HTMLInputElement;
      const files = [...(input.files ?? [])];
      input.value = '';
      void this.#open(files);
    };
    return html`<p>${text.intro}</p>
      <label class="picker outline target">
        <input class="unseen" type="file" multiple accept="application/json,.json" @change=${chosen} /><span>${text.open}</span>
      </label>
      <details>
        <summary>${text.paste}</summary>
        <textarea id="pasted" rows="4" aria-label=${text.paste}></textarea>
        <button class="outline" type="button" @click=${() => this.#paste()}>${text.pasteOpen}</button>
      </details>
      <div role="alert">${this.faults.map((fault) => html`<p class="wrong">${fault === this.findAt ? text.notFetched : text.bad('')}</p><pre>${fault}</pre>`)}</div>`;
  }

  #renderList(text: ReviewWords, prepared: PreparedKey): TemplateResult {
    const { at, finds } = this;
    const step = (by: number) => this.#turnTo((at + by + finds.length) % finds.length);
    return html`<nav aria-label=${text.list}>
      <ol class="list">
        ${finds.map((find, i) => {
          const claim = claimOf(find);
          const status = find.review ? text.status[find.review.status] : text.unreviewed;
          return html`<li><button class="outline" type="button" aria-current=${i === at ? 'true' : 'false'} @click=${() => this.#turnTo(i)}>
            ${i + 1}. ${this.#nameOf(prepared, find)(claim ?? find.verdict.taxa[0] ?? 'outside')}: ${status}
          </button></li>`;
        })}
      </ol>
      <div class="row">
        <button class="plain" type="button" @click=${() => step(-1)}>${text.previous}</button>
        <span role="status">${text.nth(at + 1, finds.length)}</span>
        <button class="plain" type="button" @click=${() => step(1)}>${text.next}</button>
      </div>
    </nav>`;
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
    const view = { find, dossier, text, level, nameOf: this.#nameOf(prepared, find, false), saying: this.saying };
    return html`<div class="sheet" part="evidence">
        ${dossier.keyDiffers ? html`<p class="warn">${text.keyDiffers(`${find.key.id} ${find.key.version}`, `${prepared.key.id} ${prepared.key.version}`)}</p>` : nothing}
        ${this.#renderPhotos(find, text, reportText, level)} ${this.#renderPlace(find, text, level)}
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
          ${find.review ? this.#renderMail(find, text, reportText, nameOf) : nothing}
        </div>
      </div>`;
  }

  /** Every photograph of the checklist, those first that would settle most. */
  #asked(prepared: PreparedKey, find: Find): readonly PhotoKind[] {
    const first = wantedPhotos(prepared, find.standing, find.month).map(({ id }) => id);
    return [...new Set([...first, ...PHOTOS])];
  }

  #renderPhotos(
    { photos, noPhotos }: Find,
    text: ReviewWords,
    { photos: { wants } }: ReportWords,
    level: number,
  ): TemplateResult {
    return html`<section>
      <div role="heading" aria-level=${level} class="sub">${text.photos}</div>
      ${photos.length === 0 ? html`<p>${text.noPhotos} ${noPhotos ?? nothing}</p>` : nothing}
      <ul class="photos">
        ${photos.map((photo) => {
          const kind = PHOTOS.find((one) => one === photo.wants);
          const words = [kind && wants[kind], photo.caption].filter(Boolean).join(': ') || text.photos;
          return html`<li>
            ${photo.data === undefined ? html`<p class="quiet">${text.noPicture}</p>` : html`<canvas data-photo=${photo.id} role="img" aria-label=${words}></canvas>`}
            <p>${words}</p>
          </li>`;
        })}
      </ul>
    </section>`;
  }

  #renderPlace({ place, date }: Find, text: ReviewWords, level: number): TemplateResult {
    const words = place && coordinatesOf(place);
    return html`<section>
      <div role="heading" aria-level=${level} class="sub">${text.place}</div>
      ${
        place && words
          ? html`<p><span class="coordinates">${words}</span>, ${text.within(Math.ceil(place.uncertainty))}</p>
              ${place.words ? html`<p>${place.words}</p>` : nothing}
              <div><button class="plain" type="button" @click=${() => void this.#copy(words)}>${text.copy}</button></div>`
          : html`<p>${text.noPlace}</p>`
      }
      ${date ? html`<p>${text.date}: ${date}</p>` : nothing}
    </section>`;
  }

  #renderMail(
    { contact, consent, review }: Find,
    text: ReviewWords,
    reportText: ReportWords,
    nameOf: (id: string) => string,
  ) {
    const link = consent.contact ? mailLink(contact?.email ?? '') : undefined;
    if (!link || !review) return html`<p>${text.noMail}</p>`;
    const plant = review.taxon === undefined ? text.status[review.status] : nameOf(review.taxon);
    const wanted = (review.wanted ?? []).map((id) => {
      const kind = PHOTOS.find((one) => one === id);
      return kind ? reportText.photos.wants[kind] : id;
    });
    const body = text.replyText(`${plant}.`, review.by, review.remarks ?? '', wanted).replace(/\n/g, '\r\n');
    const query = `subject=${encodeURIComponent(text.reply(plant))}&body=${encodeURIComponent(body)}`;
    return html`<a class="target" href=${`${link}?${query}`}>${text.mail}</a>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-review': LeadwortReview;
  }
}
