import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Course, PreparedKey } from '../../key/index.ts';
import {
  type Attempt,
  isAttempt,
  type Judged,
  learnerFigures,
  mergeRecords,
  openTest,
  type PracticeRecord,
  RecordError,
  readRecord,
  replay,
  Sitting,
  type Task,
  UNSURE,
  writeRecord,
} from '../../practice/index.ts';
import type { Learner } from '../../store/practice.ts';
import type { PracticeWords } from '../../words/practice/index.ts';
import { choiceStyles, figureStyles } from '../figures/figures.styles.ts';
import type { Sureness } from '../shared/asking.ts';
import { drawingStyles } from '../shared/drawing.styles.ts';
import { fire } from '../shared/events.ts';
import { statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { renderFeedback, type View } from './feedback.ts';
import { renderFigures } from './figures.ts';
import { renderHome } from './home.ts';
import { itemName } from './item-name.ts';
import { type Kept, PracticeKeeper, somebody } from './keeper.ts';
import { styles } from './practice.styles.ts';
import { renderRecord } from './record.ts';
import type { RunEnd } from './run.ts';
import { renderTask } from './task.ts';
import { saveFile, WordedPart } from './worded.ts';

type Screen = 'home' | 'task' | 'told' | 'end' | 'figures' | 'file';

const notKept = (words: PracticeWords): string => words.notKept;

/** The person's own time with its distance from UTC, so that a day is the day it was for them. */
function momentOf(now: Date): string {
  const away = -now.getTimezoneOffset();
  const two = (n: number) => String(Math.floor(Math.abs(n))).padStart(2, '0');
  const local = new Date(now.getTime() + away * 60_000).toISOString().slice(0, 19);
  return `${local}${away < 0 ? '-' : '+'}${two(away / 60)}:${two(away % 60)}`;
}

/**
 * Where technicians learn the plants of a key before they go out: rounds of looks with an answer after each, a final test,
 * figures, and a file that they can carry to whoever leads them. Stands in a `leadwort-session`; keeps what was done on
 * the device and sends nothing.
 *
 * @summary Rounds of practice on the plants of a key, and what they tell of the learner.
 *
 * @tag leadwort-practice
 * @fires leadwort-practice - A round or a test ended. Detail: `{ course, kind, looks }`.
 * @csspart specimen - The plant that is looked at.
 * @csspart feedback - What is told after a reply.
 */
export class LeadwortPractice extends WordedPart {
  static override styles = [shared, drawingStyles, statusStyles, figureStyles, choiceStyles, styles];

  /** Id of the course that is chosen at first; the first one when left out. */
  @property() course = '';
  /** Milliseconds since 1970. */
  @property({ attribute: false }) clock: () => number = () => Date.now();

  @state() private screen: Screen = 'home';
  @state() private kept: Kept | undefined;
  /** What could not be kept, or opened: said where it can be helped. */
  @state() private trouble: ((words: PracticeWords) => TemplateResult | string) | undefined;
  @state() private task: Task | undefined;
  @state() private chosen = '';
  @state() private run: RunEnd | undefined;
  @state() private judged: Judged | undefined;

  #keeper: PracticeKeeper | undefined;
  #sitting: Sitting | undefined;
  #test = false;
  #shown = 0;
  #moved = false;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#keeper?.close();
    this.#keeper = undefined;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const key = this.snapshot?.prepared.key;
    if (key && !this.#keeper) {
      this.#keeper = new PracticeKeeper(key.id, isAttempt);
      void this.#load();
    }
  }

  protected override updated(): void {
    if (!this.#moved) return;
    this.#moved = false;
    this.renderRoot.querySelector<HTMLElement>('[role=heading]')?.focus();
  }

  async #load(id?: string): Promise<void> {
    try {
      this.kept = await this.#keeper?.load(id);
    } catch {
      // Nothing can be kept: the room works all the same, and says so.
      this.kept = { learner: somebody(), attempts: [], others: [] };
      this.trouble = notKept;
    }
  }

  #go(screen: Screen): void {
    this.screen = screen;
    this.#moved = true;
  }

  get #course(): Course | undefined {
    const courses = this.album?.courses ?? [];
    return courses.find(({ id }) => id === this.course) ?? courses[0];
  }

  #begin(prepared: PreparedKey, course: Course, test: boolean): void {
    const attempts = this.kept?.attempts ?? [];
    this.#test = test;
    const id = openTest(prepared, course, attempts) ?? crypto.randomUUID();
    this.#sitting = new Sitting(
      prepared,
      course,
      attempts,
      test ? { kind: 'test', id } : { kind: 'round' },
      this.clock(),
    );
    this.#nextTask();
  }

  #nextTask(): void {
    this.judged = undefined;
    this.run = undefined;
    this.chosen = '';
    this.task = this.#sitting?.next(this.clock());
    this.#shown = this.clock();
    if (this.task) this.#go('task');
    else this.#finish();
  }

  #finish(): void {
    const looks = this.#sitting?.done.length ?? 0;
    const course = this.#course?.id ?? '';
    if (looks > 0) fire(this, 'leadwort-practice', { course, kind: this.#test ? 'test' : 'round', looks });
    this.#go(looks > 0 ? 'end' : 'home');
  }

  #reply(said: string, sureness?: Sureness, trail?: RunEnd['trail']): void {
    const { task } = this;
    if (!task || !this.#sitting || !this.kept) return;
    const now = this.clock();
    const reply = {
      said,
      ...(sureness ? { sureness } : {}),
      seconds: Math.round((now - this.#shown) / 100) / 10,
      ...(trail ? { trail } : {}),
    };
    const judged = this.#sitting.reply(task, reply, { id: crypto.randomUUID(), at: momentOf(new Date(now)) });
    this.kept = { ...this.kept, attempts: [...this.kept.attempts, judged.attempt] };
    void this.#keep([judged.attempt]);
    if (this.#test) {
      this.#nextTask();
      return;
    }
    this.judged = judged;
    this.#go('told');
  }

  async #keep(attempts: readonly Attempt[]): Promise<void> {
    const { learner } = this.kept ?? {};
    if (!learner) return;
    try {
      await this.#keeper?.keep(learner, attempts);
    } catch {
      this.trouble = notKept;
    }
  }

  #rename(learner: Learner): void {
    if (!this.kept) return;
    this.kept = { ...this.kept, learner };
    void this.#keep([]);
  }

  get #record(): PracticeRecord | undefined {
    const key = this.snapshot?.prepared.key;
    const { learner, attempts } = this.kept ?? {};
    if (!key || !learner || !attempts) return undefined;
    return { format: 1, learner, key: { id: key.id, version: key.version }, attempts };
  }

  async #open(file: File): Promise<void> {
    const mine = this.#record;
    if (!mine) return;
    try {
      const read = readRecord(await file.text());
      if (read.key.id !== mine.key.id)
        throw new RecordError([{ path: 'key.id', expected: mine.key.id, found: read.key.id }]);
      const own = read.learner.id === mine.learner.id;
      const { learner, attempts } = own ? mergeRecords(mine, read) : read;
      const others = [...(this.kept?.others ?? []), ...(own ? [] : [mine.learner])];
      this.kept = { learner, attempts, others: others.filter(({ id }) => id !== learner.id) };
      this.trouble = undefined;
      await this.#keep(attempts);
      this.trouble = (now) => now.opened(read.attempts.length);
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      const problems = error instanceof RecordError ? error.problems.slice(0, 5) : [];
      this.trouble = (now) => html`${now.bad(file.name)}
        <ul>${problems.length > 0 ? problems.map(({ line, path, expected, found }) => html`<li>${line === undefined ? '' : `${line}: `}<code>${path}</code> ${expected} ≠ ${found}</li>`) : html`<li>${error.message}</li>`}</ul>`;
    }
  }

  #save(): void {
    const record = this.#record;
    if (!record) return;
    const name = record.learner.name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-') || 'mine';
    saveFile(`practice-${name}.json`, 'application/json', writeRecord(record));
  }

  protected override render(): TemplateResult | typeof nothing {
    const { snapshot, settings, words, kept } = this;
    if (!snapshot || !settings || !words || !kept) return nothing;
    const { prepared } = snapshot;
    const course = this.#course;
    if (!course) return html`<p role="status">${this.album ? words.none : settings.words.common.loading}</p>`;
    const view: View = { prepared, saying: this.saying, pictures: this.pictures, words };
    return html`<div class=${`room at-${this.screen}`}>
      ${this.trouble ? html`<div class="trouble" role="status">${this.trouble(words)}</div>` : nothing}
      ${this.#renderScreen(view, course, kept)}
    </div>`;
  }

  #heading(text: string, step: unknown = nothing): TemplateResult {
    return html`<div role="heading" aria-level=${this.settings?.headingLevel ?? 2} tabindex="-1">${step === nothing ? nothing : html`<span class="step">${step}</span>`}${text}</div>`;
  }

  #renderScreen(view: View, course: Course, kept: Kept): TemplateResult {
    const { words, prepared } = view;
    const level = this.settings?.headingLevel ?? 2;
    const back = html`<button class="plain" type="button" @click=${() => this.#go('home')}>${words.back}</button>`;
    if (this.screen === 'figures')
      return html`${this.#heading(words.figures)}${renderFigures(view, learnerFigures(prepared, course, kept.attempts, this.clock()), level)}${back}`;
    if (this.screen === 'file') {
      const figures = learnerFigures(prepared, course, kept.attempts, this.clock());
      return html`${this.#heading(words.file)}${renderRecord(view, course, kept, figures, {
        rename: (name) => this.#rename({ ...kept.learner, name }),
        switch: (id) => void this.#load(id ?? crypto.randomUUID()),
        save: () => this.#save(),
        open: (file) => void this.#open(file),
        print: () => globalThis.print(),
        today: momentOf(new Date(this.clock())).slice(0, 10),
      })}${back}`;
    }
    if (this.screen === 'task' && this.task) return this.#renderTask(view, this.task);
    if (this.screen === 'told' && this.judged) return this.#renderTold(view, this.judged);
    if (this.screen === 'end') return this.#renderEnd(view, course, kept);
    return html`${this.#heading(words.heading)}${renderHome(view, course, this.album?.courses ?? [], {
      choose: (id) => {
        this.course = id;
      },
      round: () => this.#begin(prepared, course, false),
      test: () => this.#begin(prepared, course, true),
      resumes: openTest(prepared, course, kept.attempts) !== undefined,
      figures: () => this.#go('figures'),
      file: () => this.#go('file'),
    })}`;
  }

  #renderTask(view: View, task: Task): TemplateResult {
    const { words, saying } = view;
    const done = this.#sitting?.done.length ?? 0;
    const character = view.prepared.key.characters[view.prepared.characterIndex.get(task.character ?? '') ?? -1];
    const question = task.kind === 'read' ? saying.say(character?.question ?? '') : words.ask[task.kind];
    return html`${keyed(
      done,
      html`${this.#heading(question, `${words.number(done + 1, this.#sitting?.length)} · ${words.kind[task.kind]}`)}
      ${renderTask(view, task, {
        chosen: this.chosen,
        choose: (id) => {
          this.chosen = id;
        },
        answer: (sureness) => this.#reply(this.chosen, sureness),
        unsure: () => this.#reply(UNSURE),
        run: this.run,
        told: (run) => {
          this.run = run;
        },
        ran: (end, sureness) => this.#reply(end.said, sureness, end.trail),
      })}
      <button class="plain leave" type="button" @click=${() => this.#finish()}>${words.stop}</button>`,
    )}`;
  }

  #renderTold(view: View, judged: Judged): TemplateResult {
    const { words } = view;
    return html`${this.#heading(judged.feedback.right ? words.right : words.wrong)} ${renderFeedback(view, judged)}
      <div class="go"><button class="solid" type="button" @click=${() => this.#nextTask()}>${words.next}</button>
      <button class="plain" type="button" @click=${() => this.#finish()}>${words.stop}</button></div>`;
  }

  #renderEnd(view: View, course: Course, kept: Kept): TemplateResult {
    const { words, prepared, saying } = view;
    const done = this.#sitting?.done ?? [];
    const now = this.clock();
    const schedule = replay(prepared, kept.attempts, now);
    const days = new Intl.RelativeTimeFormat(saying.language, { numeric: 'auto' });
    const items = [...new Set(done.map(({ attempt }) => attempt.item))].flatMap((item) => schedule.get(item) ?? []);
    const figures = learnerFigures(prepared, course, kept.attempts, now);
    const level = (this.settings?.headingLevel ?? 2) + 1;
    return html`${this.#heading(this.#test ? words.testDone : words.done)}
      <p>${words.looked(done.length)}</p>
      ${
        this.#test
          ? html`<div role="heading" aria-level=${level}>${words.readiness}</div>${renderFigures(view, { ...figures }, level)}`
          : html`<div role="heading" aria-level=${level}>${words.comesBack}</div>
            <ul class="back">${items
              .sort((a, b) => a.due - b.due)
              .map(
                ({ item, due }) =>
                  html`<li><span>${itemName(view, item)}</span> <small>${words.again(days.format(Math.max(0, Math.round((due - now) / 86_400_000)), 'day'))}</small></li>`,
              )}</ul>`
      }
      <details class="every"><summary>${words.every}</summary>${done.map((one) => html`<article><p><b>${one.feedback.right ? words.right : words.wrong}</b> <span class="quiet">${words.kind[one.attempt.kind]}</span></p>${renderFeedback(view, one)}</article>`)}</details>
      <div class="go">
        ${this.#test ? nothing : html`<button class="solid" type="button" @click=${() => this.#begin(prepared, course, false)}>${words.another}</button>`}
        <button class="outline" type="button" @click=${() => this.#go('home')}>${words.back}</button>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-practice': LeadwortPractice;
  }
}
