import { html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Course, PreparedKey } from '../../key/index.ts';
import {
  attemptsCsv,
  type CrewFigures,
  crewFigures,
  type PracticeRecord,
  peopleIn,
  plantsCsv,
} from '../../practice/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';
import { choiceStyles, figureStyles } from '../figures/figures.styles.ts';
import type { View } from '../practice/feedback.ts';
import { dayIn } from '../practice/figures.ts';
import { courseName } from '../practice/home.ts';
import { saveFile, WordedPart } from '../practice/worded.ts';
import { fetchText } from '../shared/load.ts';
import { shared } from '../shared/styles.ts';
import { renderAgreement, renderCover } from './agreement.ts';
import { styles } from './crew.styles.ts';
import { type Coming, type Fault, takeIn, upTo } from './intake.ts';
import { renderAvoid, renderLessons } from './lessons.ts';
import { namesOf } from './names.ts';
import { renderFaults, renderOpening, renderPeople } from './opening.ts';
import { type Cell, renderReady } from './ready.ts';

/** Year-month-day by the person's own clock. */
const dayAt = (now: number): string => {
  const date = new Date(now);
  return new Date(now - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
};
const isDay = (day: string): boolean => /^\d{4}-\d\d-\d\d$/.test(day) && !Number.isNaN(Date.parse(day));

/**
 * What the files of several learners tell whoever leads them: who is ready for which plant, what to teach next week, which
 * characters the key should avoid, and whether two people say the same. Stands in a `leadwort-session`. The files are read
 * here and go nowhere; nothing is kept once the page is closed.
 *
 * @summary A crew's practice, for whoever leads it.
 *
 * @tag leadwort-crew
 * @csspart ready - Who is ready for which plant.
 * @csspart lessons - What to teach next.
 * @csspart avoid - Characters that are misread more often than the key believes.
 * @csspart agreement - Whether two people say the same.
 */
export class LeadwortCrew extends WordedPart {
  static override styles = [shared, figureStyles, choiceStyles, styles];

  /** Addresses of example files, blanks between, against the page's own; fetched when their button is pressed. */
  @property() files = '';
  /** Id of the course that is looked at; the first one when left out. */
  @property() course = '';
  /** Year-month-day on which everything is reckoned; later looks do not count. Today when left out. */
  @property() day = '';
  /** What is open. */
  @property({ attribute: false }) records: readonly PracticeRecord[] = [];
  /** Milliseconds since 1970. */
  @property({ attribute: false }) clock: () => number = () => Date.now();

  @state() private faults: readonly Fault[] = [];
  @state() private news: ((words: PracticeWords) => string) | undefined;
  @state() private told: Cell | undefined;
  @state() private over = false;

  #reckoned: { readonly of: readonly unknown[]; readonly figures: CrewFigures } | undefined;
  #moved = false;

  constructor() {
    super();
    const holdsFiles = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') === true;
    this.addEventListener('dragover', (event) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      this.over = true;
    });
    this.addEventListener('dragleave', () => {
      this.over = false;
    });
    this.addEventListener('drop', (event) => {
      this.over = false;
      if (!holdsFiles(event)) return;
      event.preventDefault();
      void this.#open([...(event.dataTransfer?.files ?? [])]);
    });
  }

  protected override updated(): void {
    if (!this.#moved) return;
    this.#moved = false;
    this.renderRoot.querySelector<HTMLElement>('[role=heading]')?.focus();
  }

  get #courses(): readonly Course[] {
    return this.album?.courses ?? [];
  }

  get #addresses(): readonly string[] {
    return this.files.split(/\s+/).filter((one) => one !== '');
  }

  /** Takes in what can be read; what cannot is told, and changes nothing. */
  async #take(coming: readonly Coming[]): Promise<void> {
    const { records, faults } = await takeIn(coming);
    this.records = [...this.records, ...records];
    this.faults = faults;
    this.news = records.length > 0 ? (words) => words.crew.opened(records.length) : undefined;
  }

  #open(files: readonly File[]): Promise<void> {
    return this.#take(files.map((file) => ({ name: file.name, text: () => file.text() })));
  }

  #fetch(): Promise<void> {
    return this.#take(
      this.#addresses.map((name) => ({
        name,
        text: async () => fetchText(new URL(name, document.baseURI), new AbortController().signal),
      })),
    );
  }

  #remove(id: string, name: string): void {
    this.records = this.records.filter(({ learner }) => learner.id !== id);
    this.news = (words) => words.crew.removed(name);
    this.#moved = true;
  }

  get #day(): string {
    return isDay(this.day) ? this.day : dayAt(this.clock());
  }

  /** What is counted: everything up to the day. */
  get #counted(): readonly PracticeRecord[] {
    return isDay(this.day) ? upTo(this.day, this.records) : this.records;
  }

  /** Reckoned anew only when something changed that it is made of. */
  #figures(prepared: PreparedKey, course: Course): CrewFigures {
    const of = [prepared, course, this.records, this.#day];
    if (!this.#reckoned || this.#reckoned.of.some((one, i) => one !== of[i])) {
      const now = isDay(this.day) ? new Date(`${this.day}T23:59:59`).getTime() : this.clock();
      this.#reckoned = { of, figures: crewFigures(prepared, course, this.#counted, now) };
    }
    return this.#reckoned.figures;
  }

  protected override render(): TemplateResult | typeof nothing {
    const { snapshot, settings, words } = this;
    if (!snapshot || !settings || !words) return nothing;
    const course = this.#courses.find(({ id }) => id === this.course) ?? this.#courses[0];
    if (!course) return html`<p role="status">${this.album ? words.none : settings.words.common.loading}</p>`;
    const { prepared } = snapshot;
    const view: View = { prepared, saying: this.saying, pictures: this.pictures, words };
    const figures = this.#figures(prepared, course);
    return html`<div class=${this.over ? 'crew over' : 'crew'}>
      <div role="heading" aria-level=${settings.headingLevel} tabindex="-1">${words.crew.heading}</div>
      <p class="intro">${words.crew.intro}</p>
      ${renderOpening(words, {
        open: (files) => void this.#open(files),
        fetch: () => void this.#fetch(),
        examples: this.#addresses.length,
      })}
      ${renderFaults(words, this.faults)}
      <p class="news" role="status">${this.news?.(words)} ${this.records.length === 0 ? words.crew.nobody : nothing}</p>
      ${this.records.length === 0 ? nothing : this.#renderCrew(view, course, figures, settings.headingLevel + 1)}
    </div>`;
  }

  #renderCrew(view: View, course: Course, figures: CrewFigures, level: number): TemplateResult {
    const { words, saying, prepared } = view;
    const { language } = saying;
    const names = namesOf(figures.members, words.crew.unnamed);
    const heading = (text: string) => html`<div role="heading" aria-level=${level}>${text}</div>`;
    const people = html`<section class="who">
      ${heading(words.crew.people)}
      ${renderPeople(words, figures, names, language, (id, name) => this.#remove(id, name))}
    </section>`;
    if (figures.members.length === 0) return people;
    const cover = renderCover(view, figures, names);
    return html`${people} ${this.#renderChoices(view, course)}
      <p class="paper">${courseName(course, language)} · ${saying.say(prepared.key.title)} ${prepared.key.version} · ${dayIn(this.#day, language)}</p>
      <section part="ready">
        ${heading(words.crew.ready)}
        <p class="quiet tap">${words.crew.readySays}</p>
        ${renderReady(view, figures, names, this.told, (cell) => {
          this.told = cell;
        })}
      </section>
      <section part="lessons">${heading(words.crew.teach)}${renderLessons(view, figures)}</section>
      <section part="avoid">${heading(words.crew.avoid)}${renderAvoid(view, figures)}</section>
      <section part="agreement">${heading(words.crew.agree)}${renderAgreement(view, figures, names)}</section>
      ${cover === nothing ? nothing : html`<section>${heading(words.crew.cover)}${cover}</section>`}
      ${this.#renderTaking(view, course, figures, heading)}`;
  }

  #renderChoices({ words, saying }: View, course: Course): TemplateResult {
    return html`<div class="choices">
      <label class="field">
        <span>${words.course}</span>
        <select @change=${(event: Event) => {
          this.course = (event.currentTarget as HTMLSelectElement).value;
          this.told = undefined;
        }}>
          ${this.#courses.map((one) => html`<option value=${one.id} ?selected=${one.id === course.id}>${courseName(one, saying.language)}</option>`)}
        </select>
      </label>
      <label class="field">
        <span>${words.crew.day}</span>
        <input type="date" aria-describedby="day-help" .value=${this.#day} @change=${(event: Event) => {
          this.day = (event.currentTarget as HTMLInputElement).value;
        }} />
        <small class="quiet" id="day-help">${words.crew.dayHelp}</small>
      </label>
    </div>`;
  }

  #renderTaking(
    { words, prepared }: View,
    course: Course,
    figures: CrewFigures,
    heading: (text: string) => TemplateResult,
  ): TemplateResult {
    const plants = () => saveFile(`${course.id}-plants.csv`, 'text/csv', plantsCsv(course.id, figures.members));
    const looks = () => saveFile('looks.csv', 'text/csv', attemptsCsv(peopleIn(prepared.key.id, this.#counted).people));
    return html`<section class="taking">
      ${heading(words.crew.take)}
      <div class="go">
        <button class="outline" type="button" @click=${plants}>${words.crew.csvPlants}</button>
        <button class="outline" type="button" @click=${looks}>${words.crew.csvAttempts}</button>
        <button class="outline" type="button" @click=${() => globalThis.print()}>${words.crew.print}</button>
      </div>
      <p class="quiet">${words.crew.learn}</p>
      <pre tabindex="0">leadwort learn ${prepared.key.id} practice/*.json</pre>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-crew': LeadwortCrew;
  }
}
