import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import {
  type Areas,
  AreasError,
  type Position,
  readAreas,
  readCoordinates,
  type Spot,
} from '../../guidance/nearby/index.ts';
import { describeProblem, type Problem } from '../../key/index.ts';
import type { SessionStore } from '../../session/index.ts';
import { type DeviceFault, type NearbyWords, nearbyWords } from '../../words/nearby/index.ts';
import { fire } from '../shared/events.ts';
import { type GivenPlace, givenPlace, givePlace, onPlace } from '../shared/given-place.ts';
import { languageAt, watchLanguage } from '../shared/language.ts';
import { fetchText } from '../shared/load.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName } from '../shared/plant-name.ts';
import { shared } from '../shared/styles.ts';
import { type Chosen, renderAnswer } from './answer.ts';
import { renderAnyway, renderUpstream } from './anyway.ts';
import type { How, Told } from './card.ts';
import { type Chart, chartOf, goingOn } from './chart.ts';
import { type Choosing, renderChoose } from './choose.ts';
import { deviceSpot } from './device.ts';
import { spotOf } from './map.ts';
import { styles } from './nearby.styles.ts';
import { placeInWords } from './said.ts';

/** Mistakes of the file that are shown to whoever opens the page. */
const SHOWN = 5;

type Loaded =
  | { readonly phase: 'none' | 'coming' }
  /** With the mistakes of the file, when it came. */
  | { readonly phase: 'failed'; readonly problems?: readonly Problem[] }
  | { readonly phase: 'here'; readonly areas: Areas; readonly chart: Chart };
type Here = Extract<Loaded, { phase: 'here' }>;

/**
 * Who helps near the person: programmes whose area holds their place or lies near it, and whom to ask elsewhere.
 *
 * Works by itself and inside a key, where it knows the plant. The place never leaves it: the device is asked only when
 * a person presses the button for it, and nothing is dialled or sent.
 *
 * @tag leadwort-nearby
 * @fires leadwort-help - A person opened a way to reach somebody. Detail: `{ programme, how }`.
 * @csspart nearby - The whole.
 * @csspart answer - Who helps at the place; said aloud when it changes.
 * @csspart programme - One programme.
 * @csspart contact - One person or office, with the ways to reach them.
 * @csspart map - The map.
 * @csspart upstream - Why to look upstream.
 */
export class LeadwortNearby extends LeadwortPart {
  static override styles = [shared, styles];

  /** Address of the file of service areas, GeoJSON, resolved against the page. */
  @property() areas = '';
  /** Telephone number of whoever keeps the page, shown where the file names nobody to ask elsewhere. */
  @property({ attribute: 'contact-phone' }) contactPhone = '';
  /** Mail address of the same. */
  @property({ attribute: 'contact-email' }) contactEmail = '';
  /** The day it is there, YYYY-MM-DD; today when left out. */
  @property() today = '';
  /** Level of its heading, 1 to 6; inside a key the key's own. */
  @property({ type: Number, attribute: 'heading-level' }) headingLevel: number | undefined;

  @state() private words: NearbyWords | undefined;
  @state() private loaded: Loaded = { phase: 'none' };
  @state() private chosen: Chosen | undefined;
  @state() private cross: Position | undefined;
  @state() private device: DeviceFault | 'asking' | undefined;
  @state() private typed: keyof NearbyWords['wrong'] | undefined;

  #language = '';
  #session: SessionStore | undefined;
  #stopPlace: (() => void) | undefined;
  /** The place that holds here because another part was given it. */
  #followed: GivenPlace | undefined;
  #stopLanguage: (() => void) | undefined;
  #load: AbortController | undefined;
  #address = '';

  override connectedCallback(): void {
    super.connectedCallback();
    this.#stopLanguage = watchLanguage(this, () => this.requestUpdate());
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopLanguage?.();
    this.#stopPlace?.();
    this.#session = undefined;
    this.#load?.abort();
    if (this.loaded.phase === 'coming') this.#address = '';
  }

  /** It has words of its own, and can be drawn without a key. */
  protected override shouldUpdate(_changed: PropertyValues): boolean {
    return true;
  }

  protected override willUpdate(_changed: PropertyValues): void {
    if (!this.isConnected) return;
    const language = this.settings?.language ?? (languageAt(this) || 'en');
    if (language !== this.#language) {
      this.#language = language;
      nearbyWords(language).then(
        (words) => {
          if (this.#language === language) this.words = words;
        },
        () => {
          // Without a connection what is on the screen stays; it is asked for anew at the next change.
          if (this.#language === language) this.#language = '';
        },
      );
    }
    if (this.areas !== this.#address) void this.#fetch();
    this.#follow(this.session);
  }

  /** A place that was given to the report holds here too, until a person chooses one here. */
  #follow(session: SessionStore | undefined): void {
    if (session !== this.#session) {
      this.#stopPlace?.();
      this.#session = session;
      this.#stopPlace = session && onPlace(session, () => this.requestUpdate());
    }
    const given = givenPlace(session);
    if (!given || given === this.#followed || (this.chosen && !this.#followed)) return;
    this.#followed = given;
    const { lat, lon, uncertainty = 1, source } = given;
    this.chosen = { spot: { lat, lon, uncertainty }, source: source === 'photo' ? 'typed' : source };
  }

  async #fetch(): Promise<void> {
    this.#load?.abort();
    this.#address = this.areas;
    if (this.areas === '') {
      this.loaded = { phase: 'none' };
      return;
    }
    const load = new AbortController();
    this.#load = load;
    this.loaded = { phase: 'coming' };
    let next: Loaded = { phase: 'failed' };
    try {
      next = await this.#read(load.signal);
    } catch {
      // It is said, and can be tried again.
    }
    if (this.#load === load && !load.signal.aborted) this.loaded = next;
  }

  /** @throws what `fetchText` throws */
  async #read(signal: AbortSignal): Promise<Loaded> {
    const text = await fetchText(new URL(this.areas, document.baseURI), signal);
    try {
      const areas = readAreas(text);
      return { phase: 'here', areas, chart: chartOf(goingOn(areas, this.#day)) };
    } catch (error) {
      if (error instanceof AreasError) return { phase: 'failed', problems: error.problems };
      throw error;
    }
  }

  /** The clock is read here and nowhere below. */
  get #day(): string {
    if (this.today !== '') return this.today;
    const now = new Date();
    const two = (n: number) => String(n).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }

  get #level(): number {
    return this.headingLevel ?? this.settings?.headingLevel ?? 2;
  }

  get #metric(): boolean {
    return this.settings?.units === 'metric';
  }

  get #kind() {
    const { snapshot } = this;
    return snapshot && snapshot.answered > 0 ? snapshot.identification.verdict.kind : undefined;
  }

  /** Id of the plant that it is about, when there is a likely one. */
  get #plant(): string | undefined {
    const kind = this.#kind;
    return kind === 'settled' || kind === 'leaning' ? this.snapshot?.identification.verdict.taxa[0] : undefined;
  }

  #nameOf(id: string): string | undefined {
    const prepared = this.snapshot?.prepared;
    const taxon = prepared?.key.taxa[prepared.taxonIndex.get(id) ?? -1];
    return prepared && taxon ? plantName(prepared.key, taxon, this.#language).text : undefined;
  }

  async #choose(spot: Spot, source: Chosen['source']): Promise<void> {
    this.chosen = { spot, source };
    this.#followed = undefined;
    const { lat, lon, uncertainty } = spot;
    // Typed digits say nothing of how well the place is known: the report reckons that from the digits.
    givePlace(this.session, { lat, lon, source, ...(source === 'typed' ? {} : { uncertainty }) });
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.answer')?.focus();
  }

  async #askDevice(): Promise<void> {
    if (this.device === 'asking') return;
    this.device = 'asking';
    const answer = await deviceSpot();
    if (typeof answer === 'string') {
      this.device = answer;
      return;
    }
    this.device = undefined;
    await this.#choose(answer, 'device');
  }

  #take(event: SubmitEvent): void {
    event.preventDefault();
    const input = this.renderRoot.querySelector('input') as HTMLInputElement;
    const read = readCoordinates(input.value, this.#language);
    if ('fault' in read) {
      this.typed = read.fault;
      input.focus();
      return;
    }
    this.typed = undefined;
    void this.#choose({ ...read, uncertainty: 1 }, 'typed');
  }

  /** What a mail begins with; the person reads it before it is sent. */
  #told(words: NearbyWords): Told {
    const { snapshot, chosen } = this;
    const kind = this.#kind;
    const verdict = snapshot?.identification.verdict;
    const names = (verdict?.taxa ?? []).map((id) => this.#nameOf(id) ?? id);
    const or = new Intl.ListFormat(words.language, { type: 'disjunction' }).format(names.slice(0, 3));
    const { subject } = words;
    const about =
      kind === undefined
        ? subject.none
        : kind === 'outside' || names.length === 0
          ? subject.outside
          : subject[kind](kind === 'open' ? or : (names[0] as string));
    const key =
      snapshot && kind !== undefined ? words.mailKey(this.say(snapshot.prepared.key.title), snapshot.answered) : '';
    const place = chosen ? words.mailPlace(placeInWords(chosen.spot, words)) : words.mailNoPlace;
    return {
      words,
      language: words.language,
      metric: this.#metric,
      level: Math.min(6, this.#level + 1),
      uncertainty: chosen?.spot.uncertainty ?? 0,
      subject: about,
      lines: [about, ...(key === '' ? [] : [key]), place, ''],
      nameOf: (id) => this.#nameOf(id),
      plant: this.#plant,
      reach: (programme: string, how: How) => fire(this, 'leadwort-help', { programme, how }),
    };
  }

  #choosing({ areas, chart }: Here): Choosing {
    return {
      chart,
      shown: goingOn(areas, this.#day),
      another: this.chosen !== undefined,
      cross: this.cross,
      device: this.device,
      typed: this.typed,
      ask: () => this.#askDevice(),
      move: (cross) => {
        this.cross = cross;
      },
      take: () => {
        if (this.cross) void this.#choose(spotOf(this.cross, chart), 'map');
      },
      read: (event) => this.#take(event),
    };
  }

  private renderFault(words: NearbyWords, problems: readonly Problem[] | undefined): TemplateResult {
    const again = html`<button class="outline" type="button" @click=${() => this.#fetch()}>${words.retry}</button>`;
    if (!problems) return html`<p>${words.failed}</p>${again}`;
    const rest = problems.length - SHOWN;
    return html`<p>${words.mistakes}</p>
      <ul class="mistakes">
        ${problems.slice(0, SHOWN).map((problem) => html`<li>${describeProblem(problem)}</li>`)}
        ${rest > 0 ? html`<li>${words.more(rest)}</li>` : nothing}
      </ul>
      ${again}`;
  }

  override render() {
    const { words, loaded } = this;
    if (!words) return nothing;
    const kind = this.#kind;
    const nameless = kind === 'open' || kind === 'outside';
    const told = this.#told(words);
    return html`<section class="nearby" part="nearby" lang=${words.language}>
      <div role="heading" aria-level=${this.#level} class="heading">${nameless ? words.headingOpen : words.heading}</div>
      ${nameless ? html`<p class="first">${words.askFirst}</p>` : nothing}
      <div role="status">
        ${loaded.phase === 'coming' ? html`<p class="quiet">${words.coming}</p>` : nothing}
        ${loaded.phase === 'failed' ? this.renderFault(words, loaded.problems) : nothing}
      </div>
      ${loaded.phase === 'here' ? html`${renderAnswer(this.chosen, loaded.areas, this.#day, told, (spot) => this.#choose(spot, 'typed'))}${renderChoose(this.#choosing(loaded), told)}` : nothing}
      ${renderAnyway(
        loaded.phase === 'here' ? loaded.areas.elsewhere : undefined,
        { phone: this.contactPhone, email: this.contactEmail },
        this.chosen !== undefined,
        told,
      )}
      ${this.#leaveIt ? nothing : renderUpstream(told)}
    </section>`;
  }

  /** A native plant is to stay, upstream too. */
  get #leaveIt(): boolean {
    const { snapshot } = this;
    const id = this.#plant;
    const taxon =
      id === undefined ? undefined : snapshot?.prepared.key.taxa[snapshot.prepared.taxonIndex.get(id) ?? -1];
    return taxon?.status === 'native';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-nearby': LeadwortNearby;
  }
}
