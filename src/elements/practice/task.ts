// A task on the screen: what is seen, what can be said, and how sure.
import { html, nothing, type TemplateResult } from 'lit';
import type { Standing } from '../../key/index.ts';
import { OUTSIDE, type Task, UNSURE } from '../../practice/index.ts';
import type { Snapshot } from '../../session/index.ts';
import type { Sureness } from '../shared/asking.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';
import { statusOf } from '../shared/status.ts';
import { optionOf, type View } from './feedback.ts';
import { ownName } from './plant-name.ts';
import { renderPlot } from './plot.ts';
import type { RunEnd } from './run.ts';
import { renderSpecimen } from './specimen.ts';

const SURENESS: readonly Sureness[] = ['sure', 'think', 'guess'];

export interface TaskDoes {
  readonly chosen: string;
  readonly choose: (id: string) => void;
  readonly answer: (sureness: Sureness) => void;
  readonly unsure: () => void;
  /** Where a run has come to; undefined before its first answer. */
  readonly run: RunEnd | undefined;
  readonly told: (run: RunEnd) => void;
  readonly ran: (end: RunEnd, sureness?: Sureness) => void;
}

/** What a run says so far: the plant that is settled or leaned to, outside, or nothing yet. */
export function endOf({ identification, trail }: Snapshot): RunEnd {
  const { kind, taxa } = identification.verdict;
  const said = kind === 'settled' || kind === 'leaning' ? (taxa[0] ?? UNSURE) : kind === 'outside' ? OUTSIDE : UNSURE;
  return { said, trail };
}

export function renderTask(view: View, task: Task, does: TaskDoes): TemplateResult {
  const { prepared, saying, pictures, words } = view;
  return html`<div class="task ${task.kind}">
    ${task.kind === 'cover' ? renderPlot(task, words) : renderSpecimen(prepared, task, pictures, saying, words)}
    <div class="reply">${task.kind === 'run' ? renderRun(view, task, does) : renderOptions(view, task, does)}</div>
  </div>`;
}

function renderOptions(view: View, task: Task, does: TaskDoes): TemplateResult {
  const { words, saying, prepared } = view;
  const label = (id: string) =>
    task.kind === 'standing'
      ? statusOf(id as Standing, saying.words)
      : task.kind === 'name' || task.kind === 'pair'
        ? html`<span class="text"><span class="title">${plantName(prepared.key, taxonOf(prepared, id), saying.language).text}</span><i class="detail" lang="la">${taxonOf(prepared, id).name}</i></span>`
        : html`<span class="title">${optionOf(view, task, id)}</span>`;
  return html`<fieldset class="options">
      <legend class="unseen">${words.kind[task.kind]}</legend>
      ${task.options.map(
        (id) => html`<label class="card">
          <input type="radio" name="option" .value=${id} .checked=${does.chosen === id} @change=${() => does.choose(id)} />
          ${label(id)}
        </label>`,
      )}
    </fieldset>
    ${renderBar(view, does.chosen !== '', does.answer, does.unsure)}`;
}

/** How sure, which sends the reply; or that it cannot be told. */
function renderBar(
  { words, saying }: View,
  said: boolean,
  answer: (sureness: Sureness) => void,
  unsure: () => void,
  none: string = words.unsure,
): TemplateResult {
  const { howSure } = saying.words.question;
  return html`<div class="bar">
    ${
      said
        ? html`<p id="how-sure"><b>${howSure}</b></p>
          <div class="sureness" role="group" aria-labelledby="how-sure">
            ${SURENESS.map((one) => html`<button class=${one === 'sure' ? 'solid' : 'outline'} type="button" @click=${() => answer(one)}>${words.sure[one]}</button>`)}
          </div>`
        : nothing
    }
    <button class=${said ? 'plain' : 'outline'} type="button" @click=${unsure}>${none}</button>
  </div>`;
}

function renderRun(view: View, task: Task, does: TaskDoes): TemplateResult {
  const { prepared, words, saying } = view;
  const end = does.run ?? { said: UNSURE, trail: [] };
  const named = prepared.taxonIndex.has(end.said);
  const name = named ? ownName(prepared, end.said, saying.language) : '';
  return html`<p class="quiet">${words.runSays}</p>
    <leadwort-practice-run .prepared=${prepared} .month=${task.specimen.month} .told=${(snapshot: Snapshot) => does.told(endOf(snapshot))}></leadwort-practice-run>
    <div class="ran">
      ${named ? html`<p><b>${words.runStop(name)}</b></p>` : end.said === OUTSIDE ? html`<p><b>${words.runOutside}</b></p>` : nothing}
      ${renderBar(
        view,
        end.said !== UNSURE,
        (sureness) => does.ran(end, sureness),
        () => does.ran({ ...end, said: UNSURE }),
        words.runNone,
      )}
    </div>`;
}
