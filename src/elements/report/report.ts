import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import {
  type Find,
  FindError,
  findOf,
  type Lack,
  lacks,
  readFind,
  sendable,
  stampOf,
  writeFind,
} from '../../report/find/index.ts';
import type { Outcome, Parcel } from '../../report/send/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { type PlaceTrouble, type ReportWords, reportWords } from '../../words/report/index.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { type GivenPlace, givenPlace, givePlace, onPlace } from '../shared/given-place.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';
import { said } from '../shared/said.ts';
import { shared } from '../shared/styles.ts';
import type { Desk } from './desk.ts';
import type { Draft, Field } from './draft.ts';
import { Drafting } from './drafting.ts';
import { fieldAt } from './faults.ts';
import { renderFiles } from './files.ts';
import { type Finding, findingOf, soughtIn } from './finding.ts';
import { follow, nameOf, save, saveFind } from './handing.ts';
import { deviceKeeper, type Keeper } from './keeper.ts';
import { locate } from './locate.ts';
import { paint, renderPhotos } from './photos.ts';
import { renderDate, renderPlace } from './place.ts';
import type { Queue } from './queue.ts';
import { styles } from './report.styles.ts';
import { renderResult } from './result.ts';
import { renderNone, renderSearched, soughtFor } from './searched.ts';
import { type Note, renderSending, type Way } from './sending.ts';
import { wantedOf } from './wanted.ts';

const keeper = deviceKeeper();
/** Where what is lacking is given. */
const WHERE: ReadonlyMap<Lack, string> = new Map([
  ['sought', '#sought'],
  ['effort', '#effort'],
  ['photos', '.photos .picker input'],
  ['place', '#place'],
  ['date', '#date'],
]);
/** While somebody waits; the rest is for the queue (ours). */
const TRIES = 2;

/**
 * A report that a specialist can confirm from: photographs, place, date and what the key says; the rest only if somebody
 * likes. Nothing leaves the device before it is sent, and nothing typed is lost when something is refused.
 *
 * Until a question of the key was answered it offers only to tell that a plant was looked for and not seen.
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
  /** Where the draft is kept; on the device unless another is handed in. */
  @property({ attribute: false }) keeper: Keeper = keeper;
  /** The readable page stands in for the form: set while it is printed. */
  @property({ type: Boolean, reflect: true }) printing = false;

  @state() private text: ReportWords | undefined;
  /** Fields that a person has left: what is wrong with them is told. */
  @state() private left: ReadonlySet<Field> = new Set();
  @state() private locating = false;
  @state() private placeTrouble: PlaceTrouble | undefined;
  @state() private fileTrouble = '';
  @state() private note: Note | undefined;
  @state() private outcome: Outcome | undefined;
  @state() private printed: ((level: number) => TemplateResult) | undefined;
  /** Draws what is folded away, once it was opened. */
  @state() private more: typeof import('./more.ts').renderMore | undefined;
  /** The report waits in the queue. */
  @state() private queued = false;

  #drafting: Drafting | undefined;
  #finding: Finding | undefined;
  #stop: AbortController | undefined;
  #queue: Queue | undefined;
  #unwatch: (() => void) | undefined;
  #language = '';
  #key = '';
  /** How many answers there were when it was last drawn. */
  #answers = 0;
  /** The last place that another part of the key was given: taken over at most once, so that it can be cleared. */
  #given: GivenPlace | undefined;
  #stopPlace: (() => void) | undefined;

  protected override shouldUpdate(changed: PropertyValues): boolean {
    return super.shouldUpdate(changed) && this.snapshot !== undefined;
  }

  protected override willUpdate(): void {
    const snapshot = this.snapshot as Snapshot;
    this.#fetchWords(this.saying.language);
    this.#begin(snapshot.prepared.key.id);
    // A new plant is another report.
    const left = snapshot.trail.length === 0 && this.#answers > 0;
    this.#answers = snapshot.trail.length;
    if (left && this.#drafting?.draft?.base === undefined) this.#turn((drafting, find) => drafting.startAnew(find));
    const draft = this.#drafting?.draft;
    if (!draft || !this.text) return;
    const { language, units } = this.saying;
    const { taxa } = snapshot.prepared.key;
    const scientific = (id: string) => taxa.find((taxon) => taxon.id === id)?.name;
    this.#finding = findingOf(draft, {
      base: this.#base(draft, snapshot),
      today: this.#today(),
      language,
      scientific,
      units,
    });
  }

  protected override updated(): void {
    const draft = this.#drafting?.draft;
    if (draft) void paint(this.renderRoot, draft.photos);
    this.#sharePlace(draft);
  }

  /** What was given to help nearby holds here, where no place stands yet; and the other way round. An opened report keeps its own. */
  #sharePlace(draft: Draft | undefined): void {
    const { session } = this;
    if (!session || !draft || draft.base !== undefined) return;
    this.#stopPlace ??= onPlace(session, () => this.requestUpdate());
    const given = givenPlace(session);
    if (given && given !== this.#given) {
      this.#given = given;
      if (draft.fields.place.trim() === '') this.#drafting?.put(draft.id, given, given.source, this.saying.units);
    }
    const place = this.#finding?.find.place;
    if (!place || draft.fields.place.trim() === '') return;
    const { lat, lon, uncertainty, source } = place;
    givePlace(session, { lat, lon, uncertainty, source });
    this.#given = givenPlace(session);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Taken off the page it heard nothing of the queue.
    if (this.hasUpdated) void this.#listen();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.abort();
    this.#stopPlace?.();
    this.#stopPlace = undefined;
    this.#unwatch?.();
    this.#unwatch = undefined;
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

  #begin(key: string): void {
    if (key === this.#key) return;
    this.#key = key;
    this.#finding = undefined;
    this.#drafting = new Drafting(key, {
      keeper: this.keeper,
      now: () => this.#now(),
      changed: () => this.requestUpdate(),
    });
    void this.#drafting
      .begin()
      .then(() => this.#listen())
      .catch(() => undefined);
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

  #set(field: Field, value: string): void {
    this.placeTrouble = undefined;
    if (this.note !== 'sending') this.note = undefined;
    this.#drafting?.set(field, value);
  }

  #remove(id: string): void {
    this.#drafting?.remove(id);
    this.renderRoot.querySelector<HTMLElement>('.photos .picker input')?.focus();
  }

  async #locate(): Promise<void> {
    const drafting = this.#drafting;
    const id = drafting?.draft?.id;
    if (!drafting || id === undefined) return;
    this.placeTrouble = undefined;
    this.locating = true;
    const located = await locate();
    this.locating = false;
    if ('trouble' in located) this.placeTrouble = located.trouble;
    else drafting.put(id, located, 'device', this.saying.units);
  }

  async #placeInPhoto(): Promise<void> {
    const drafting = this.#drafting;
    const id = drafting?.draft?.id;
    if (!drafting || id === undefined) return;
    this.placeTrouble = undefined;
    const reading = await import('../../report/photos/position.ts').catch(() => undefined);
    if (!reading) {
      this.note = 'late';
      return;
    }
    for (const file of drafting.originals.values()) {
      const taken = await reading.takenAt(file);
      if (!taken) continue;
      const { date, ...at } = taken;
      drafting.put(id, { ...at, ...(date && date <= this.#today() ? { date } : {}) }, 'photo', this.saying.units);
      return;
    }
    this.placeTrouble = 'no-place-in-photo';
  }

  async #send(): Promise<void> {
    const drafting = this.#drafting;
    const draft = drafting?.draft;
    const finding = this.#finding;
    if (!draft || !finding || drafting.working || this.note === 'sending' || !this.#ready(finding)) return;
    this.outcome = undefined;
    this.queued = false;
    this.note = 'sending';
    const stop = new AbortController();
    this.#stop = stop;
    const sending = await import('../../report/send/index.ts').catch(() => undefined);
    if (!sending) {
      this.note = 'late';
      return;
    }
    const told = sendable(finding.find);
    const parcel = await sending.parcelOf(draft.id, writeFind(told), draft.photos);
    const outcome = await sending
      .send(parcel, {
        endpoint: new URL(this.endpoint, document.baseURI).href,
        signal: stop.signal,
        tries: TRIES,
        now: () => this.clock().getTime(),
      })
      .catch((error: unknown) => {
        if (!stop.signal.aborted) throw error;
        return undefined;
      });
    this.note = undefined;
    if (!outcome) return;
    if (outcome.state === 'sent') {
      drafting.arrived(draft.id, { receipt: outcome.receipt, find: parcel.find });
      fire(this, 'leadwort-report', { how: 'sent' });
    }
    if (outcome.state === 'waiting') void this.#queueUp(draft.id, parcel, outcome.after);
    else if (outcome.state === 'sent' && this.#queue) void this.#queue.settle(draft.id, parcel.key, outcome.receipt);
    // Meanwhile the person may have turned to another report.
    if (drafting.draft?.id !== draft.id) return;
    this.outcome = outcome;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('#arrived, .waiting, .refused')?.focus();
  }

  /** What waits goes by itself when the signal is back, also after this page was closed and opened again. */
  async #queueUp(find: string, parcel: Parcel, after: number | undefined): Promise<void> {
    try {
      const queue = await this.#watch();
      await queue.post(find, new URL(this.endpoint, document.baseURI).href, parcel, after);
      this.queued = true;
    } catch {
      // The device keeps nothing: then it is for the person to send it again.
    }
  }

  /** What waited before this page was opened, or while the element was off it, may have arrived by now. */
  async #listen(): Promise<void> {
    // Without a store nothing has waited.
    const queue = this.endpoint ? await this.#watch().catch(() => undefined) : undefined;
    if (queue) await this.#hear(queue);
  }

  /** Hears what became of reports that waited. */
  async #watch(): Promise<Queue> {
    const { queueOf } = await import('./queue.ts');
    const queue = await queueOf(this.#key);
    this.#queue = queue;
    if (this.isConnected) this.#unwatch ??= queue.subscribe(() => void this.#hear(queue));
    return queue;
  }

  async #hear(queue: Queue): Promise<void> {
    for (const { find, text, state, receipt, refusal, tries } of await queue.records()) {
      if (state !== 'sent' || !receipt) {
        // Not while the person sends it: that has an outcome of its own.
        if (find !== this.#drafting?.draft?.id || this.note === 'sending') continue;
        this.queued = state !== 'refused';
        if (refusal) this.outcome = { state: 'refused', ...refusal };
        else this.outcome ??= { state: 'waiting', reason: 'no-signal', tries };
        continue;
      }
      const known = [this.#drafting?.draft, this.#drafting?.aside].find((one) => one?.id === find);
      if (!known || known.sent?.receipt.when === receipt.when) continue;
      if (known.sent && known.sent.receipt.when > receipt.when) continue;
      if (find === this.#drafting?.draft?.id) {
        this.outcome = undefined;
        this.queued = false;
      }
      this.#drafting?.arrived(find, { receipt, find: text });
      this.requestUpdate();
      fire(this, 'leadwort-report', { how: 'sent' });
    }
  }

  /** Goes to the first thing that is missing or cannot be read; true when there is none. */
  #ready({ find, troubles }: Finding): boolean {
    const [lack] = lacks(find);
    const [trouble] = troubles.keys();
    if (lack === undefined && trouble === undefined) return true;
    this.left = new Set([...this.left, ...troubles.keys()]);
    this.note = trouble === undefined ? undefined : 'check';
    void this.#goTo(trouble ? `#${trouble}` : ((lack && WHERE.get(lack)) ?? '.result'));
    return false;
  }

  async #goTo(selector: string): Promise<void> {
    const find = () => this.renderRoot.querySelector<HTMLElement>(selector);
    if (!find() && (await this.#fetchMore())) await this.updateComplete;
    const at = find();
    const folded = at?.closest('details');
    if (folded) folded.open = true;
    at?.focus();
  }

  async #take(way: Way): Promise<void> {
    const draft = this.#drafting?.draft;
    const finding = this.#finding;
    if (!draft || !finding || this.#drafting?.working) return;
    const { find } = finding;
    if (way === 'file') await saveFind(draft, find);
    else {
      const out = await import('./outgoing.ts').catch(() => undefined);
      if (!out) {
        this.note = 'late';
        return;
      }
      const taking = { find, key: (this.snapshot as Snapshot).prepared.key, saying: this.saying };
      if (way === 'map') save(out.toMap(taking), 'application/geo+json', `${nameOf(draft)}.geojson`);
      else if (way === 'table') save(out.toTable(taking), 'text/csv', `${nameOf(draft)}.csv`);
      else if (way === 'print') await this.#print((level) => out.renderPrinted(out.toPrint(taking), level), draft);
      else {
        const { url, whole } = out.toMail(taking, this.contactEmail);
        // What does not fit goes as a file beside it.
        if (!whole) await saveFind(draft, find);
        follow(url);
      }
    }
    fire(this, 'leadwort-report', { how: way });
  }

  async #print(page: (level: number) => TemplateResult, draft: Draft): Promise<void> {
    this.printed = page;
    this.printing = true;
    await this.updateComplete;
    await paint(this.renderRoot, draft.photos);
    window.print();
    this.printing = false;
    this.printed = undefined;
  }

  async #fetchMore(): Promise<typeof import('./more.ts').renderMore | undefined> {
    this.more ??= (await import('./more.ts').catch(() => undefined))?.renderMore;
    if (!this.more) this.note = 'late';
    return this.more;
  }

  async #open(file: File): Promise<void> {
    this.fileTrouble = '';
    const opening = await import('./opened.ts').catch(() => undefined);
    if (!opening) {
      this.note = 'late';
      return;
    }
    try {
      const draft = opening.draftOf(readFind(await file.text()));
      this.#turn((drafting, find) => drafting.open(draft, find));
    } catch (error) {
      if (!(error instanceof FindError) && !(error instanceof opening.PictureError)) throw error;
      this.fileTrouble = error.message;
    }
  }

  /** Turns to another report; `find` is what there is to be set aside. */
  #turn(to: (drafting: Drafting, find: Find | undefined) => void): void {
    this.outcome = undefined;
    this.left = new Set();
    if (this.note !== 'sending') this.note = undefined;
    if (this.#drafting) to(this.#drafting, this.#finding?.find);
  }

  async #copy(words: string): Promise<void> {
    this.note = await navigator.clipboard.writeText(words).then(
      () => 'copied' as const,
      () => 'copy-failed' as const,
    );
  }

  // ---- drawing

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
    const { text, snapshot, outcome, note } = this;
    const drafting = this.#drafting;
    const draft = drafting?.draft;
    const finding = this.#finding;
    if (!snapshot || !draft || !text || !finding) return nothing;
    if (!window.isSecureContext) return html`<p>${text.insecure}</p>`;
    const { find } = finding;
    const level = this.settings?.headingLevel ?? 2;
    const desk = this.#desk(draft, text, finding);
    const seen = find.detected;
    const heading = html`<div role="heading" aria-level=${level} class="heading">${text.heading}</div>`;
    if (seen && snapshot.answered === 0 && !draft.base)
      return html`<div class="form" lang=${text.language}>${heading}${renderNone(desk)}</div>`;
    return html`<div class="form" lang=${text.language}>
        ${heading}
        <p>${seen ? text.intro : text.none.intro}</p>
        <p class="quiet">${text.stays}</p>
        ${drafting.unkept ? html`<p class="warn" role="status">${text.out.unkept}</p>` : nothing}
        ${renderNone(desk)}
        ${
          seen || draft.photos.length > 0
            ? renderPhotos(desk, {
                wanted: seen ? wantedOf(snapshot, find, text) : [],
                working: drafting.working,
                trouble: drafting.photoTrouble,
                add: (files, wants) => void drafting.add(files, wants),
                remove: (id) => this.#remove(id),
              })
            : nothing
        }
        ${renderPlace(desk, {
          place: find.place,
          locating: this.locating,
          trouble: this.placeTrouble,
          locate: () => void this.#locate(),
          fromPhoto: drafting.originals.size > 0 ? () => void this.#placeInPhoto() : undefined,
        })}
        ${renderDate(desk, this.#today(), find.date !== undefined)}
        ${
          seen
            ? renderResult(desk, { find, nameOf: this.#nameOf(find), opened: draft.base !== undefined })
            : renderSearched(desk, {
                plants: soughtFor(snapshot, find, this.#nameOf(find)),
                sought: soughtIn(draft, find),
                there: find.sought !== undefined && find.effort !== undefined,
              })
        }
        <details part="more" class="more" @toggle=${() => this.#fetchMore()}>
          <summary>${text.more.heading}</summary>
          <div class="inside">${this.more?.(desk)}</div>
        </details>
        ${renderSending(desk, {
          endpoint: this.endpoint !== '',
          lacking: lacks(find),
          note,
          outcome,
          receipt: draft.sent?.receipt,
          stale: draft.sent !== undefined && draft.sent.find !== written(find),
          queued: this.queued,
          send: () => void this.#send(),
          stop: () => this.#stop?.abort(),
          take: (way) => void this.#take(way),
          copy: (words) => void this.#copy(words),
        })}
        ${renderFiles(text, {
          trouble: this.fileTrouble,
          open: (file) => void this.#open(file),
          takeUp: drafting.aside ? () => this.#turn((now, left) => now.takeUp(left)) : undefined,
          startAnew: () => this.#turn((now, left) => now.startAnew(left)),
        })}
      </div>
      ${this.printed?.(level)}`;
  }
}

/** The find as it is sent; undefined while it holds what no find may hold. */
function written(find: Find): string | undefined {
  try {
    return writeFind(sendable(find));
  } catch (error) {
    if (error instanceof FindError) return undefined;
    throw error;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-report': LeadwortReport;
  }
}
