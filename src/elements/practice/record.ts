// A learner's own file, and the one-page record to print and sign.
import { html, nothing, type TemplateResult } from 'lit';
import type { Course } from '../../key/index.ts';
import type { LearnerFigures } from '../../practice/index.ts';
import { renderReadiness } from '../figures/readiness.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';
import type { View } from './feedback.ts';
import { dayIn } from './figures.ts';
import { courseName } from './home.ts';
import type { Kept } from './keeper.ts';

/** More plants than this are set smaller on paper, so that the record stays one page to sign. */
const LONG = 25;

export interface RecordDoes {
  readonly rename: (name: string) => void;
  /** Undefined: somebody new. */
  readonly switch: (learner: string | undefined) => void;
  readonly save: () => void;
  readonly open: (file: File) => void;
  readonly print: () => void;
  /** Year-month-day. */
  readonly today: string;
}

export function renderRecord(
  view: View,
  course: Course,
  { learner, others }: Kept,
  figures: LearnerFigures,
  does: RecordDoes,
): TemplateResult {
  const { prepared, saying, words } = view;
  const { language } = saying;
  const name = (id: string) => {
    const taxon = taxonOf(prepared, id);
    return html`${plantName(prepared.key, taxon, language).text} <i lang="la">${taxon.name}</i>`;
  };
  const takes = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) does.open(file);
    input.value = '';
  };
  return html`<div class="file">
      <label class="field"><span>${words.name}</span>
        <input type="text" autocomplete="off" maxlength="100" aria-describedby="name-help" .value=${learner.name} @change=${(event: Event) => does.rename((event.currentTarget as HTMLInputElement).value.trim())} />
        <small class="quiet" id="name-help">${words.nameHelp}</small>
      </label>
      <div class="go">
        <button class="solid" type="button" @click=${does.save}>${words.download}</button>
        <label class="outline pick">${words.open}<input class="unseen" type="file" accept=".json,application/json" @change=${takes} /></label>
        <button class="outline" type="button" @click=${does.print}>${words.print}</button>
      </div>
      <details><summary>${words.others}</summary>
        ${others.map((one, i) => html`<button class="plain" type="button" @click=${() => does.switch(one.id)}>${one.name || words.crew.unnamed(i + 1)}</button>`)}
        <button class="plain" type="button" @click=${() => does.switch(undefined)}>${words.startNew}</button>
      </details>
    </div>
    <article class=${course.taxa.length > LONG ? 'record long' : 'record'}>
      <p class="title">${words.record}</p>
      <p><b>${learner.name || nothing}</b></p>
      <p>${courseName(course, language)} · ${saying.say(prepared.key.title)} ${prepared.key.version} · ${dayIn(does.today, language)}</p>
      ${renderReadiness(figures.readiness, name, words, language)}
      <div class="sign"><p>${words.signature}</p><p>${words.lead}</p><p>${words.date}</p></div>
    </article>`;
}
