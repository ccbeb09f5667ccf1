import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Areas, Help, Position, Spot } from '../../guidance/nearby/index.ts';
import { describeProblem, type Problem } from '../../key/index.ts';
import { type DeviceFault, type NearbyWords, nearbyWords } from '../../words/nearby/index.ts';
import { fire } from '../shared/events.ts';
import { languageAt, watchLanguage } from '../shared/language.ts';
import { fetchText } from '../shared/load.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName } from '../shared/plant-name.ts';
import { shared } from '../shared/styles.ts';
import { type How, renderContact, renderOffer, type Told } from './card.ts';
import { deviceSpot } from './device.ts';
import { styles } from './nearby.styles.ts';
import type { Chart } from './places.ts';
import { dayInWords, inBoth, inLanguage, placeInWords } from './said.ts';

/** Mistakes of the file that are shown to whoever opens the page. */
const SHOWN = 5;

type Loaded =
  | { readonly phase: 'none' | 'coming' }
  /** With the mistakes of the file, when it came. */
  | { readonly phase: 'failed'; readonly problems?: readonly Problem[] }
  | { readonly phase: 'here'; readonly areas: Areas; readonly chart: Chart; readonly places: Places };
type Here = Extract<Loaded, { phase: 'here' }>;
type Places = typeof import('./places.ts');
interface Chosen {
  readonly spot: Spot;
  readonly source: 'device' | 'typed' | 'map';
}

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
      const places = await import('./places.ts');
      next = await this.#read(places, load.signal);
    } catch {
      // It is said, and can be tried again.
    }
    if (this.#load === load && !load.signal.aborted) this.loaded = next;
  }

  /** @throws what `fetchText` throws */
  async #read(places: Places, signal: AbortSignal): Promise<Loaded> {
    const text = await fetchText(new URL(this.areas, document.baseURI), signal);
    try {
      const areas = places.readAreas(text);
      return { phase: 'here', areas, chart: places.chartOf(goingOn(areas, this.#day)), places };
    } catch (error) {
      if (error instanceof places.AreasError) return { phase: 'failed', problems: error.problems };
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

  #take(event: SubmitEvent, { readCoordinates }: Places): void {
    event.preventDefault();
    const input = this.renderRoot.querySelector('input') as HTMLInputElement;
    const read = readCoordinates(input.value, this.#language);
    if ('fault' in read) {
      this.typed = read.fault;
      input.focus();
      return;
    }
    this.typed = undefined;
    // Typed digits say nothing of how well the place is known.
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

  private renderChoose(words: NearbyWords, here: Here): TemplateResult {
    const { areas, chart } = here;
    const { device, typed, cross } = this;
    const shown = goingOn(areas, this.#day);
    return html`<div class="choose">
      ${this.chosen ? html`<div role="heading" class="sub" aria-level=${Math.min(6, this.#level + 1)}>${words.another}</div>` : html`<p>${words.why} ${words.whose}</p>`}
      <button class=${this.chosen ? 'outline' : 'solid'} type="button" @click=${() => this.#askDevice()}>${words.device}</button>
      <div role="status">
        ${device === 'asking' ? html`<p>${words.asking}</p>` : nothing}
        ${device && device !== 'asking' ? html`<p class="wrong">${words.fault[device]}</p><p>${words.instead}</p>` : nothing}
      </div>
      <details class="by-map">
        <summary>${words.map}</summary>
        <div class="pointing">
          <p class="quiet" id="map-hint">${words.mapHint}</p>
          ${here.places.renderMap(chart, shown, cross, words, this.#metric, {
            move: (next) => {
              this.cross = next;
            },
            take: () => this.#takeCross(here),
          })}
          <p role="status">${cross ? this.#crossSays(words, here, cross) : nothing}</p>
          ${cross ? html`<button class="outline" type="button" @click=${() => this.#takeCross(here)}>${words.mapUse}</button>` : nothing}
        </div>
      </details>
      <details class="by-numbers">
        <summary>${words.type}</summary>
        <form novalidate @submit=${(event: SubmitEvent) => this.#take(event, here.places)}>
          <label for="numbers">${words.typeLabel}</label>
          <span class="quiet" id="numbers-hint">${words.typeHint}</span>
          <input id="numbers" type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" maxlength="120" aria-describedby="numbers-hint numbers-wrong" aria-invalid=${typed ? 'true' : 'false'} />
          <p class="wrong" id="numbers-wrong" role="alert">${typed ? words.wrong[typed] : nothing}</p>
          <button class="outline" type="submit">${words.use}</button>
        </form>
      </details>
    </div>`;
  }

  #takeCross({ chart, places }: Here): void {
    if (this.cross) void this.#choose(places.spotOf(this.cross, chart), 'map');
  }

  #crossSays(words: NearbyWords, { areas, chart, places }: Here, cross: Position): string {
    const spot = places.spotOf(cross, chart);
    const names = goingOn(areas, this.#day)
      .areas.filter((area) => places.isInside(spot, area))
      .map(({ programme }) => inLanguage(programme, words.language));
    const place = placeInWords(spot, words);
    return names.length > 0 ? words.crossIn(place, names.join(', ')) : words.crossOut(place);
  }

  private renderAnswer(words: NearbyWords, { areas, places }: Here, told: Told): TemplateResult {
    const { chosen } = this;
    // The region is there before its text, so that the text is said aloud when it comes.
    if (!chosen) return html`<div class="answer" part="answer" role="status" tabindex="-1"></div>`;
    const { spot, source } = chosen;
    const help = places.helpAt(spot, areas, this.#day, told.plant);
    const other = source === 'typed' ? places.otherSide(spot, areas, this.#day) : undefined;
    const day = (date: string) => dayInWords(date, words.language);
    return html`<div class="answer" part="answer" role="status" tabindex="-1">
        <p class="quiet">${words.place[source](placeInWords(spot, words), inBoth(spot.uncertainty, words, told.metric))}</p>
        <div role="heading" class="sub" aria-level=${Math.min(6, this.#level + 1)}>${this.#outcome(help, words)}</div>
        ${help.kind === 'outside' && help.nearest ? html`<p>${words.outsideNearest(inLanguage(help.nearest.area.programme, words.language), inBoth(help.nearest.distance, words, told.metric))}</p>` : nothing}
        ${
          other
            ? html`<p>${words.otherSide(placeInWords(other, words))}</p>
              <button class="outline" type="button" @click=${() => this.#choose(other, 'typed')}>${words.otherSideUse}</button>`
            : nothing
        }
        ${help.ended.map(({ programme, until = '' }) => html`<p>${words.ended(inLanguage(programme, words.language), day(until))}</p>`)}
      </div>
      ${help.offers.length > 0 ? html`<div class="programmes">${help.offers.map((offer) => renderOffer(offer, { ...told, level: Math.min(6, this.#level + 2) }))}</div>` : nothing}`;
  }

  #outcome({ kind, offers }: Help, words: NearbyWords): string {
    if (kind === 'outside') return words.outside;
    if (kind === 'inside') return words.inside(offers.filter(({ inside }) => inside).length);
    return words.near(inBoth(Math.min(...offers.map(({ distance }) => distance)), words, this.#metric));
  }

  /** Whom to ask wherever the plant is. */
  private renderAnyway(words: NearbyWords, told: Told): TemplateResult {
    const elsewhere = this.loaded.phase === 'here' ? this.loaded.areas.elsewhere : undefined;
    const { contactPhone: phone, contactEmail: email } = this;
    // Whoever keeps the page, where the file names nobody for everywhere else.
    const page = !elsewhere && (phone !== '' || email !== '');
    const heading = (text: string) => html`<div role="heading" class="sub" aria-level=${told.level}>${text}</div>`;
    return html`<div class="asking">
      ${heading(this.chosen ? words.others : words.anyway)}
      ${
        page
          ? html`<p><b>${words.page}</b></p>
            ${renderContact({ ...(phone ? { phone } : {}), ...(email ? { email } : {}), languages: [] }, 'page', told)}`
          : nothing
      }
      ${
        elsewhere
          ? html`<p><b>${inLanguage(elsewhere.name, words.language)}</b></p>
            ${elsewhere.statement ? html`<p>${inLanguage(elsewhere.statement, words.language)}</p>` : nothing}
            ${elsewhere.contacts.map((contact) => renderContact(contact, 'elsewhere', told))}`
          : nothing
      }
      ${page || elsewhere ? html`<p class="quiet">${words.yourself}</p>` : html`<p>${words.nobody}</p>`}
    </div>`;
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
      ${loaded.phase === 'here' ? html`${this.renderAnswer(words, loaded, told)}${this.renderChoose(words, loaded)}` : nothing}
      ${this.renderAnyway(words, told)} ${this.#leaveIt ? nothing : this.renderUpstream(words, told)}
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

  private renderUpstream(words: NearbyWords, told: Told): TemplateResult {
    return html`<div class="upstream" part="upstream">
      <div role="heading" class="sub" aria-level=${told.level}>${words.upstream}</div>
      ${words.upstreamSay.map((line) => html`<p>${line}</p>`)}
    </div>`;
  }
}

/** Without what has come to its end: that is not drawn. When all has, all is, since a map of nothing helps nobody. */
function goingOn({ areas, landmarks }: Areas, today: string): Pick<Areas, 'areas' | 'landmarks'> {
  const going = areas.filter(({ until }) => until === undefined || until >= today);
  return { areas: going.length > 0 ? going : areas, landmarks };
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-nearby': LeadwortNearby;
  }
}
