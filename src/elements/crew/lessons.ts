// What to teach next, and which characters the key should lean on less.
import { html, nothing, type TemplateResult } from 'lit';
import { type CrewFigures, LEAST_READINGS, type Lesson } from '../../practice/index.ts';
import { rangeOf, renderRates } from '../figures/rates.ts';
import { percent, type View } from '../practice/feedback.ts';
import { labelOf } from '../practice/figures.ts';
import { ownName } from '../practice/plant-name.ts';

/** How many lessons are shown at first: a week has no room for more (ours). */
const WEEK = 5;

export function renderLessons(view: View, { lessons }: CrewFigures): TemplateResult {
  const { words } = view;
  if (lessons.length === 0) return html`<p>${words.crew.teachNone}</p>`;
  const items = lessons.map((lesson) => renderLesson(view, lesson));
  return html`<p class="quiet">${words.crew.teachSays}</p>
    <ol class="lessons">${items.slice(0, WEEK)}</ol>
    ${
      items.length > WEEK
        ? html`<details><summary>${words.more(items.length - WEEK)}</summary><ol class="lessons" start=${WEEK + 1}>${items.slice(WEEK)}</ol></details>`
        : nothing
    }`;
}

function renderLesson(view: View, lesson: Lesson): TemplateResult {
  const { words, saying } = view;
  const { wrong, alarms } = lesson;
  const share = (value: number) => percent(value, saying.language);
  return html`<li>
    <b>${titleOf(view, lesson)}</b>
    ${alarms > 0 ? html`<span class="alarms">${words.crew.alarms(alarms)}</span>` : nothing}
    <span class="figures">${rangeOf(wrong)}<span>${words.crew.wrongOf(wrong.count, wrong.n)}; <small>${words.crew.likely(share(wrong.low), share(wrong.high))}</small></span></span>
    ${renderTips(view, lesson)}
  </li>`;
}

function titleOf(view: View, { of, ids }: Lesson): string {
  const { words, prepared, saying } = view;
  const [one = '', other = ''] = ids;
  if (of === 'character') return words.crew.readsWrong(labelOf(view, one));
  const plant = (id: string) => ownName(prepared, id, saying.language);
  return of === 'pair' ? words.crew.pair(plant(one), plant(other)) : words.crew.missed(plant(one));
}

/** What to show the crew: what tells a pair apart, or how a character is read. */
function renderTips(view: View, { of, ids }: Lesson): TemplateResult | typeof nothing {
  const { words, saying, prepared } = view;
  const { key, characterIndex } = prepared;
  if (of === 'character') {
    const help = key.characters[characterIndex.get(ids[0] ?? '') ?? -1]?.help;
    return help ? html`<p class="quiet">${saying.say(help)}</p>` : nothing;
  }
  const pair = of === 'pair' ? key.lookalikes.find(({ taxa }) => ids.every((id) => taxa.includes(id))) : undefined;
  if (pair === undefined || pair.separate.length === 0) return nothing;
  return html`<p class="quiet">${words.lookAt}:</p>
    <ul class="tips">${pair.separate.slice(0, 2).map(({ words: tip, character }) => html`<li>${tip ? saying.say(tip) : labelOf(view, character)}</li>`)}</ul>`;
}

export function renderAvoid(view: View, { avoid }: CrewFigures): TemplateResult {
  const { words, saying } = view;
  if (avoid.length === 0) return html`<p>${words.crew.avoidNone(LEAST_READINGS)}</p>`;
  return html`<p class="quiet">${words.crew.avoidSays}</p>
    ${renderRates(
      avoid.map(({ character, wrong, key }) => ({ label: labelOf(view, character), rate: wrong, mark: key })),
      {
        label: words.character,
        share: words.wrongly,
        looks: words.looks,
        mark: words.crew.keySays,
        between: words.between,
        language: saying.language,
      },
    )}`;
}
