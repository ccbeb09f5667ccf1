// Where files come in, what was wrong with some, and who is here.
import { html, nothing, type TemplateResult } from 'lit';
import type { CrewFigures } from '../../practice/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';
import { dayIn } from '../practice/figures.ts';
import type { Fault } from './intake.ts';
import type { Names } from './names.ts';

export interface OpeningDoes {
  readonly open: (files: readonly File[]) => void;
  readonly fetch: () => void;
  /** How many example files there are. */
  readonly examples: number;
}

export function renderOpening(words: PracticeWords, does: OpeningDoes): TemplateResult {
  const takes = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const files = [...(input.files ?? [])];
    // The same file may be chosen again after it was mended.
    input.value = '';
    does.open(files);
  };
  return html`<div class="go opening">
    <label class="solid pick">${words.crew.open}<input class="unseen" type="file" multiple accept=".json,application/json" @change=${takes} /></label>
    <span class="quiet">${words.crew.drop}</span>
    ${does.examples === 0 ? nothing : html`<button class="outline" type="button" @click=${does.fetch}>${words.crew.examples(does.examples)}</button>`}
  </div>`;
}

/** Drawn while there are none, too: what comes into an alert that is there is read out. */
export function renderFaults(words: PracticeWords, faults: readonly Fault[]): TemplateResult {
  return html`<div class=${faults.length === 0 ? '' : 'faults'} role="alert">
    ${faults.map(({ name, lines, more }) =>
      lines.length === 0
        ? html`<p>${words.crew.notFetched(name)}</p>`
        : html`<p>${words.bad(name)}</p>
            <ul>${lines.map((line) => html`<li>${line}</li>`)}${more > 0 ? html`<li>${words.more(more)}</li>` : nothing}</ul>`,
    )}
  </div>`;
}

/** Everybody whose file is open, with a way to take them out; then what was not counted. */
export function renderPeople(
  words: PracticeWords,
  { members, otherKey, conflicts }: CrewFigures,
  names: Names,
  language: string,
  remove: (id: string, name: string) => void,
): TemplateResult {
  const out = (id: string, name: string) =>
    html`<button class="plain" type="button" @click=${() => remove(id, name)}>${words.crew.remove(name)}</button>`;
  return html`<ul class="people">
      ${members.map(({ id, figures }) => {
        const last = figures.progress.at(-1)?.day;
        const name = names.get(id) ?? '';
        return html`<li>
          <span><b>${name}</b> <span class="quiet">${words.crew.seen(figures.attempts, last === undefined ? undefined : dayIn(last, language))}</span></span>
          ${out(id, name)}
        </li>`;
      })}
    </ul>
    ${otherKey.map(({ id, name, key }) => {
      const called = name || words.crew.unnamed(1);
      return html`<p>${words.crew.otherKey(called, key)} ${out(id, called)}</p>`;
    })}
    ${conflicts.length > 0 ? html`<p>${words.crew.conflicts(conflicts.length)}</p>` : nothing}`;
}
