import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import {
  type Find,
  FindError,
  findOf,
  lacks,
  readFind,
  sendable,
  stampOf,
  wantedPhotos,
  writeFind,
} from '../../report/find/index.ts';
import type { Report } from '../../report/forms/index.ts';
import { PhotoError, preparePhoto, toBase64 } from '../../report/photos/index.ts';
import type { Outcome } from '../../report/send/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { type PhotoTrouble, type PlaceTrouble, type ReportWords, reportWords } from '../../words/report/index.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';
import { said } from '../shared/said.ts';
import { shared } from '../shared/styles.ts';
import type { Desk } from './desk.ts';
import { blankDraft, type Draft, type DraftPhoto, type Field, hasContent, withField } from './draft.ts';
import { fieldAt } from './faults.ts';
import { type Finding, findingOf } from './finding.ts';
import { type Keeper, memoryKeeper } from './keeper.ts';
import { renderMore } from './more.ts';
import { draftOf, PictureError } from './opened.ts';
import { paint, renderPhotos, type Wanted } from './photos.ts';
import { renderDate, renderPlace } from './place.ts';
import { renderPrinted } from './printed.ts';
import { styles } from './report.styles.ts';
import { renderResult } from './result.ts';
import { type Note, renderSending, type Way } from './sending.ts';
import { coordinatesOf } from './where.ts';

const MOST_PHOTOS = 12;
/** Photographs asked for at once; more would not be taken (ours). */
const MOST_WANTED = 5;
const keeper = memoryKeeper();

/**
 * A report that a specialist can confirm from: photographs, place, date and what the key says; the rest only if somebody
 * likes. Nothing leaves the device before it is sent, and nothing typed is lost when something is refused.
 *
 * Empty until a question of the key was answered.
 *
 * @tag leadwort-report
 * @fires leadwort-report - A report arrived, or was taken out otherwise. Detail: `{ how }`.
 * @csspart photos - The photographs.
 * @csspart place - The place.
 * @csspart date - The date.
 * @csspart result - What the key says.
 * @csspart more - What is told only if somebody likes.
 * @csspart out - Sending, and the other ways out.
 * @csspart receipt - That it arrived.
 * @csspart waiting - That it did not arrive yet.
 * @csspart refused - That it was not taken.
 */
export class LeadwortReport extends LeadwortPart {
  static override styles = [shared, drawingStyles, styles];

  /** Address that a report is sent to; without it, it can be mailed, printed and saved. */
  @property() endpoint = '';
  /** Address that a mail is written to; without it the person fills it in. */
  @property({ attribute: 'contact-email' }) contactEmail = '';
  /** The time now; a test hands in another. */
  @property({ attribute: false }) clock: () => Date = () => new Date();
  /** Where the draft is kept; in memory unless another is handed in. */
  @property({ attribute: false }) keeper: Keeper = keeper;
  /** The readable page stands in for the form: set while it is printed. */
  @property({ type: Boolean, reflect: true }) printing = false;

  @state() private text: ReportWords | undefined;
  @state() private draft: Draft | undefined;
  /** The report that was set aside for this one. */
  @state() private aside: Draft | undefined;
  @state() private left: ReadonlySet<Field> = new Set();
  @state() private working = false;
  @state() private locating = false;
  @state() private photoTrouble: PhotoTrouble | undefined;
  @state() private placeTrouble: PlaceTrouble | undefined;
  @state() private fileTrouble = '';
  @state() private note: Note | undefined;
  @state() private outcome: Outcome | undefined;
  @state() private unkept = false;
  @state() private printed: Report | undefined;

  /** Photographs as they came, for their place and for sending them so; only while the page stays open. */
  readonly #originals = new Map<string, File>();
  #finding: Finding | undefined;
  #stop: AbortController | undefined;
  #language = '';
  #key = '';
  /** How many answers there were when it was last drawn. */
  #answers = 0;

  protected override shouldUpdate(changed: PropertyValues): boolean {
    return super.shouldUpdate(changed) && this.snapshot !== undefined;
  }

  protected override willUpdate(): void {
    const snapshot = this.snapshot as Snapshot;
    this.#fetchWords(this.saying.language);
    const key = snapshot.prepared.key.id;
    if (key !== this.#key) {
      this.#key = key;
      this.draft = undefined;
      void this.#begin(key);
    }
    // A new plant is another report.
    if (snapshot.trail.length === 0 && this.#answers > 0 && this.draft && !this.draft.base) this.#startAnew();
    this.#answers = snapshot.trail.length;
    const { draft, text } = this;
    if (!draft || !text) return;
    const { language, units } = this.saying;
    this.#finding = findingOf(draft, { base: this.#base(draft, snapshot), today: this.#today(), language, units });
  }

  protected override updated(): void {
    if (this.draft) void paint(this.renderRoot, this.draft.photos);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.abort();
  }

  #fetchWords(language: string): void {
    if (this.#language === language) return;
    this.#language = language;
    reportWords(language).then(
      (text) => {
        if (this.#language === language) this.text = text;
      },
      () => {
        // Without a connection the words on the screen stay; they are asked for again at the next change.
        if (this.#language === language) this.#language = '';
      },
    );
  }

  #now(): string {
    const now = this.clock();
    return stampOf(now.getTime(), -now.getTimezoneOffset());
  }

  #today(): string {
    return this.#now().slice(0, 10);
  }

  async #begin(key: string): Promise<void> {
    const kept = await this.keeper.load(key).catch(() => undefined);
    const before = await this.keeper.load(`${key}/before`).catch(() => undefined);
    if (this.#key !== key || this.draft) return;
    this.aside = before;
    this.draft = kept ?? blankDraft(crypto.randomUUID(), this.#now(), this.#today());
  }

  /** The key's part of the find. */
  #base({ id, made, base }: Draft, snapshot: Snapshot): Find {
    const { text, saying } = this;
    if (base) return base;
    return findOf(
      snapshot,
      {
        language: saying.language,
        say: saying.say,
        said: (character, answer) => said(character, answer, saying),
        skipped: text?.skipped ?? '',
      },
      { id, now: made },
    );
  }

  #change(next: Draft): void {
    this.draft = { ...next, changed: this.#now() };
    if (this.note !== 'sending') this.note = undefined;
    this.#keep();
  }

  #keep(): void {
    if (this.draft) this.#keepUnder(this.#key, this.draft);
  }

  #keepUnder(name: string, draft: Draft): void {
    this.keeper.save(name, draft).then(
      () => {
        this.unkept = false;
      },
      () => {
        this.unkept = true;
      },
    );
  }

  #set(field: Field, value: string): void {
    const { draft } = this;
    if (!draft) return;
    let next = withField(draft, field, value);
    // What is typed over a place from elsewhere is typed, and as uncertain as it is written.
    if (field === 'place') next = withField(withField(next, 'source', 'typed'), 'uncertainty', '');
    this.placeTrouble = undefined;
    this.#change(next);
    if (field === 'keep') void this.#rekeep(value === 'yes');
  }

  // ---- photographs

  async #add(files: readonly File[], wants: string | undefined): Promise<void> {
    this.photoTrouble = undefined;
    this.working = true;
    try {
      for (const file of files) {
        if ((this.draft?.photos.length ?? 0) >= MOST_PHOTOS) {
          this.photoTrouble = 'too-many';
          break;
        }
        const id = crypto.randomUUID();
        const photo = await this.#prepared(id, file, this.draft?.fields.keep === 'yes');
        this.#originals.set(id, file);
        if (this.draft)
          this.#change({ ...this.draft, photos: [...this.draft.photos, { ...photo, ...(wants ? { wants } : {}) }] });
      }
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      this.photoTrouble = error.code;
    } finally {
      this.working = false;
    }
  }

  async #prepared(id: string, file: File, keep: boolean): Promise<DraftPhoto> {
    const { blob, type, width, height, sha256, hiddenDataKept } = await preparePhoto(file, keep);
    return { id, type, width, height, bytes: blob.size, sha256, hiddenDataKept, blob };
  }

  /** Makes the photographs anew with or without their hidden data, as far as they are here as they came. */
  async #rekeep(keep: boolean): Promise<void> {
    this.working = true;
    try {
      for (const { id, hiddenDataKept } of this.draft?.photos ?? []) {
        const file = this.#originals.get(id);
        const from = file ?? this.draft?.photos.find((one) => one.id === id)?.blob;
        // What is no longer here as it came cannot be sent so; but what was kept can always be stripped.
        if (hiddenDataKept === keep || !from || (keep && !file)) continue;
        const photo = await this.#prepared(id, from as File, keep);
        const { draft } = this;
        if (draft)
          this.#change({ ...draft, photos: draft.photos.map((one) => (one.id === id ? { ...one, ...photo } : one)) });
      }
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      this.photoTrouble = error.code;
    } finally {
      this.working = false;
    }
  }

  #remove(id: string): void {
    const { draft } = this;
    if (!draft) return;
    this.#originals.delete(id);
    this.photoTrouble = undefined;
    this.#change({ ...draft, photos: draft.photos.filter((one) => one.id !== id) });
    this.renderRoot.querySelector<HTMLElement>('.photos .picker input')?.focus();
  }

  // ---- place

  #locate(): void {
    this.placeTrouble = undefined;
    const places = window.isSecureContext ? navigator.geolocation : undefined;
    if (!places) {
      this.placeTrouble = 'insecure';
      return;
    }
    this.locating = true;
    places.getCurrentPosition(
      ({ coords }) => {
        this.locating = false;
        this.#put({ lat: coords.latitude, lon: coords.longitude, uncertainty: coords.accuracy }, 'device');
      },
      ({ code }) => {
        this.locating = false;
        this.placeTrouble = code === 1 ? 'denied' : code === 3 ? 'timeout' : 'unavailable';
      },
      { enableHighAccuracy: true, timeout: 30_000, maximumAge: 0 },
    );
  }

  #put(at: { lat: number; lon: number; uncertainty?: number }, source: 'device' | 'photo'): void {
    const { draft } = this;
    if (!draft) return;
    const metres = at.uncertainty ?? 0;
    const us = this.saying.units === 'us';
    const fields = {
      ...draft.fields,
      place: coordinatesOf(at),
      source,
      uncertainty: metres > 0 ? String(Math.ceil(us ? metres / 0.3048 : metres)) : '',
      uncertaintyUnit: us ? 'ft' : 'm',
    };
    this.#change({ ...draft, fields });
  }

  async #placeInPhoto(): Promise<void> {
    this.placeTrouble = undefined;
    try {
      const { takenAt } = await import('../../report/photos/position.ts');
      for (const file of this.#originals.values()) {
        const taken = await takenAt(file);
        if (!taken) continue;
        this.#put(taken, 'photo');
        if (taken.date && taken.date <= this.#today() && this.draft)
          this.#change(withField(this.draft, 'date', taken.date));
        return;
      }
      this.placeTrouble = 'no-place-in-photo';
    } catch {
      this.note = 'late';
    }
  }

  // ---- out

  async #send(): Promise<void> {
    const { draft } = this;
    const finding = this.#finding;
    if (!draft || !finding || this.note === 'sending') return;
    if (!this.#ready(finding)) return;
    this.outcome = undefined;
    this.note = 'sending';
    const stop = new AbortController();
    this.#stop = stop;
    try {
      const { parcelOf, send } = await import('../../report/send/index.ts');
      const told = sendable(finding.find);
      const parcel = await parcelOf(draft.id, writeFind(told), draft.photos);
      const endpoint = new URL(this.endpoint, document.baseURI).href;
      const outcome = await send(parcel, { endpoint, signal: stop.signal, now: () => this.clock().getTime() });
      this.note = undefined;
      this.outcome = outcome;
      if (outcome.state === 'sent' && this.draft) {
        this.draft = { ...this.draft, sent: { receipt: outcome.receipt, find: JSON.stringify(told) } };
        this.#keep();
        fire(this, 'leadwort-report', { how: 'sent' });
      }
      await this.updateComplete;
      this.renderRoot.querySelector<HTMLElement>('#arrived, .waiting, .refused')?.focus();
    } catch (error) {
      // Stopped: back to where it was. Otherwise the part that sends did not come.
      this.note = stop.signal.aborted ? undefined : 'late';
      if (!stop.signal.aborted && !(error instanceof TypeError)) throw error;
    }
  }

  /** Goes to the first thing that is missing or cannot be read; true when there is none. */
  #ready({ find, troubles }: Finding): boolean {
    const [lack] = lacks(find);
    const [trouble] = troubles.keys();
    if (lack === undefined && trouble === undefined) return true;
    this.left = new Set([...this.left, ...troubles.keys()]);
    this.note = trouble === undefined ? undefined : 'check';
    const to: Readonly<Record<string, string>> = { photos: '.photos .picker input', place: '#place', date: '#date' };
    const at = this.renderRoot.querySelector<HTMLElement>(trouble ? `#${trouble}` : (lack && to[lack]) || '.result');
    const folded = at?.closest('details');
    if (folded) folded.open = true;
    at?.focus();
    return false;
  }

  async #take(way: Way): Promise<void> {
    const { draft } = this;
    const finding = this.#finding;
    if (!draft || !finding) return;
    try {
      await this.#takeOut(way, draft, finding.find);
      fire(this, 'leadwort-report', { how: way });
    } catch (error) {
      // What fetches a part says no more than this when it does not come.
      if (!(error instanceof TypeError)) throw error;
      this.note = 'late';
    }
  }

  async #takeOut(way: Way, draft: Draft, find: Find): Promise<void> {
    const name = `find-${draft.id.slice(0, 8)}`;
    if (way === 'file') return this.#save(name, draft, find);
    const out = await import('./outgoing.ts');
    const taking = { find, key: (this.snapshot as Snapshot).prepared.key, saying: this.saying };
    if (way === 'map') save(out.toMap(taking), 'application/geo+json', `${name}.geojson`);
    else if (way === 'table') save(out.toTable(taking), 'text/csv', `${name}.csv`);
    else if (way === 'print') await this.#print(out.toPrint(taking), draft);
    else {
      const { url, whole } = out.toMail(taking, this.contactEmail);
      // What does not fit goes as a file beside it.
      if (!whole) await this.#save(name, draft, find);
      follow(url);
    }
  }

  async #save(name: string, draft: Draft, find: Find): Promise<void> {
    const photos = await Promise.all(
      draft.photos.map(async ({ blob, ...photo }) => ({ ...photo, data: await toBase64(blob) })),
    );
    save(writeFind({ ...find, photos }), 'application/json', `${name}.json`);
  }

  async #print(report: Report, draft: Draft): Promise<void> {
    this.printed = report;
    this.printing = true;
    await this.updateComplete;
    await paint(this.renderRoot, draft.photos);
    window.print();
    this.printing = false;
    this.printed = undefined;
  }

  async #open(file: File): Promise<void> {
    this.fileTrouble = '';
    try {
      const find = readFind(await file.text());
      const draft = draftOf(find);
      this.#setAside();
      this.#turnTo(draft);
    } catch (error) {
      if (!(error instanceof FindError) && !(error instanceof PictureError)) throw error;
      this.fileTrouble = error.message;
    }
  }

  async #copy(words: string): Promise<void> {
    this.note = await navigator.clipboard.writeText(words).then(
      () => 'copied' as const,
      () => 'copy-failed' as const,
    );
  }

  /** Keeps what there is, with what the key said of it, so that it can be taken up again. */
  #setAside(): void {
    const { draft } = this;
    const finding = this.#finding;
    if (!draft || !finding || !hasContent(draft)) return;
    this.aside = { ...draft, base: finding.find };
    this.#keepUnder(`${this.#key}/before`, this.aside);
  }

  #turnTo(draft: Draft): void {
    this.#originals.clear();
    this.outcome = undefined;
    this.left = new Set();
    this.#change(draft);
  }

  #startAnew(): void {
    this.#setAside();
    this.#turnTo(blankDraft(crypto.randomUUID(), this.#now(), this.#today()));
  }

  #takeUpBefore(): void {
    const { aside } = this;
    if (!aside) return;
    this.aside = undefined;
    this.keeper.drop(`${this.#key}/before`).catch(() => undefined);
    this.#setAside();
    this.#turnTo(aside);
  }

  // ---- drawing

  #wanted(text: ReportWords, find: Find): Wanted[] {
    const { prepared, month } = this.snapshot as Snapshot;
    const answered = new Map(find.trail.map(({ character, states }) => [character, states?.[0]]));
    return wantedPhotos(prepared, find.standing, month)
      .slice(0, MOST_WANTED)
      .map(({ id, settles }) => ({
        id,
        words: text.photos.wants[id],
        views: settles.flatMap((character) => {
          const known = prepared.key.characters[prepared.characterIndex.get(character) ?? -1];
          const state = answered.get(character) ?? known?.states[0]?.id;
          return state === undefined ? [] : [`${character}/${state}`];
        }),
      }));
  }

  #desk(draft: Draft, text: ReportWords, { troubles }: Finding): Desk {
    const { outcome } = this;
    const refused = new Map(
      outcome?.state === 'refused'
        ? outcome.faults.flatMap(({ path, words }) => {
            const field = fieldAt(path);
            return field ? [[field, words] as const] : [];
          })
        : [],
    );
    return {
      draft,
      words: text,
      saying: this.saying,
      pictures: this.pictures,
      level: this.settings?.headingLevel ?? 2,
      trouble: (field) => {
        const trouble = troubles.get(field);
        return trouble && this.left.has(field) ? text.trouble[trouble] : refused.get(field);
      },
      set: (field, value) => this.#set(field, value),
      left: (field) => {
        this.left = new Set(this.left).add(field);
      },
    };
  }

  #nameOf(find: Find): (taxon: string) => string {
    const { prepared } = this.snapshot as Snapshot;
    const { language } = this.saying;
    return (taxon) =>
      prepared.taxonIndex.has(taxon)
        ? plantName(prepared.key, taxonOf(prepared, taxon), language).text
        : (find.standing.find((one) => one.taxon === taxon)?.name ?? taxon);
  }

  override render() {
    const { draft, text, snapshot, outcome, note } = this;
    const finding = this.#finding;
    if (!snapshot || !draft || !text || !finding || (snapshot.answered === 0 && !draft.base)) return nothing;
    const { find } = finding;
    const level = this.settings?.headingLevel ?? 2;
    if (!window.isSecureContext) return html`<p>${text.insecure}</p>`;
    const desk = this.#desk(draft, text, finding);
    const result = { find, nameOf: this.#nameOf(find), opened: draft.base !== undefined };
    const lacking = lacks(find);
    const stale = draft.sent !== undefined && draft.sent.find !== JSON.stringify(sendable(find));
    return html`<div class="form" lang=${text.language}>
        <div role="heading" aria-level=${level} class="heading">${text.heading}</div>
        <p>${text.intro}</p>
        <p class="quiet">${text.stays}</p>
        ${this.unkept ? html`<p class="warn" role="status">${text.out.unkept}</p>` : nothing}
        ${renderPhotos(desk, {
          wanted: this.#wanted(text, find),
          working: this.working,
          trouble: this.photoTrouble,
          add: (files, wants) => void this.#add(files, wants),
          remove: (id) => this.#remove(id),
        })}
        ${renderPlace(desk, {
          place: find.place,
          locating: this.locating,
          trouble: this.placeTrouble,
          locate: () => this.#locate(),
          fromPhoto: this.#originals.size > 0 ? () => void this.#placeInPhoto() : undefined,
        })}
        ${renderDate(desk, this.#today(), find.date !== undefined)} ${renderResult(desk, result)}
        <details part="more" class="more">
          <summary>${text.more.heading}</summary>
          <div class="inside">${renderMore(desk)}</div>
        </details>
        ${renderSending(desk, {
          endpoint: this.endpoint !== '',
          lacking,
          note,
          outcome,
          receipt: draft.sent?.receipt,
          stale,
          send: () => void this.#send(),
          stop: () => this.#stop?.abort(),
          take: (way) => void this.#take(way),
          copy: (words) => void this.#copy(words),
        })}
        ${this.#renderFiles(text)}
      </div>
      ${this.printed ? renderPrinted(this.printed, level) : nothing}`;
  }

  #renderFiles({ out }: ReportWords) {
    const chosen = (event: Event) => {
      const input = event.currentTarget as HTMLInputElement;
      const [file] = input.files ?? [];
      input.value = '';
      if (file) void this.#open(file);
    };
    return html`<div class="files">
      <label class="picker outline target">
        <input class="unseen" type="file" accept="application/json,.json" @change=${chosen} />
        <span>${out.open}</span>
      </label>
      <p class="quiet">${out.openHelp}</p>
      <div role="alert">${this.fileTrouble ? html`<p class="wrong">${out.badFile}</p><pre>${this.fileTrouble}</pre>` : nothing}</div>
      ${this.aside ? html`<button class="plain" type="button" @click=${() => this.#takeUpBefore()}>${out.before}</button>` : nothing}
      <button class="plain" type="button" @click=${() => this.#startAnew()}>${out.fresh}</button>
    </div>`;
  }
}

/** Hands a file to the browser's downloads. */
function save(text: string, type: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  follow(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

function follow(address: string, download?: string): void {
  const link = document.createElement('a');
  link.href = address;
  if (download !== undefined) link.download = download;
  link.click();
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-report': LeadwortReport;
  }
}
