// What is told after a reply: right or not, what decided it, and both states side by side.
import { html, nothing, type TemplateResult } from 'lit';
import type { Character, PreparedKey, Standing } from '../../key/index.ts';
import { isAlarm, type Judged, OUTSIDE, rivalIn, UNSURE } from '../../practice/index.ts';
import { COVER } from '../../report/find/cover.ts';
import type { CoverClass } from '../../report/find/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';
import { type Pictures, pictureOf } from '../shared/picture.ts';
import { plant, taxonOf } from '../shared/plant.ts';
import { clauses, type Saying, said } from '../shared/said.ts';
import { statusOf } from '../shared/status.ts';
import { ownName } from './plant-name.ts';
import { plotFor } from './plot.ts';

/** What all views of the room need to draw. */
export interface View {
  readonly prepared: PreparedKey;
  readonly saying: Saying;
  readonly pictures: Pictures;
  readonly words: PracticeWords;
}

const characterOf = ({ key, characterIndex }: PreparedKey, id: string): Character | undefined =>
  key.characters[characterIndex.get(id) ?? -1];

/** What can be said to a task, in words. */
export function optionOf(
  { prepared, saying, words }: View,
  judged: Pick<Judged['attempt'], 'kind' | 'character'>,
  id: string,
) {
  if (id === UNSURE) return words.unsure;
  if (id === OUTSIDE) return words.outside;
  if (judged.kind === 'cover') return words.cover(...COVER[Number(id) as CoverClass]);
  if (judged.kind === 'standing') return saying.words.common.status[id as Standing] ?? id;
  if (judged.kind === 'read') {
    const character = characterOf(prepared, judged.character ?? '');
    return character ? said(character, { character: character.id, states: [id], sureness: 'sure' }, saying) : id;
  }
  return ownName(prepared, id, saying.language);
}

export function renderFeedback(view: View, { attempt, feedback }: Judged): TemplateResult {
  const { prepared, saying, words } = view;
  const { right, said: reply, truth, wrong } = feedback;
  const { kind, specimen } = attempt;
  const alarm = isAlarm(prepared, attempt);
  const named = kind !== 'cover';
  return html`<div class=${right ? 'told right' : 'told'} part="feedback">
    ${alarm ? html`<p class="caution"><b>${words.alarm}</b></p>` : nothing}
    ${
      named
        ? html`<p class="answer"><span class="quiet">${words.it}</span> ${plant(prepared.key, taxonOf(prepared, specimen.taxon), saying.words, saying.language)}</p>`
        : html`<p class="answer">${words.coverWas(percent(plotFor(attempt).cover, saying.language))} <b>${optionOf(view, attempt, truth)}</b></p>`
    }
    ${right ? nothing : html`<p><span class="quiet">${words.said}:</span> ${kind === 'standing' && reply !== UNSURE ? statusOf(reply as Standing, saying.words) : optionOf(view, attempt, reply)}</p>`}
    ${wrong ? renderStep(view, attempt, wrong) : renderDecided(view, attempt, feedback)}
  </div>`;
}

function renderDecided(view: View, attempt: Judged['attempt'], { decided, said: reply }: Judged['feedback']) {
  const character = decided && characterOf(view.prepared, decided.character);
  if (!decided || !character) return nothing;
  const { prepared, saying, words } = view;
  const { taxon } = attempt.specimen;
  const other = attempt.kind === 'read' ? undefined : rivalIn(prepared, attempt, reply);
  const pair = prepared.key.lookalikes.find(
    ({ taxa }) => taxa.includes(taxon) && other !== undefined && taxa.includes(other),
  );
  const tip = pair?.separate.find((one) => one.character === decided.character)?.words;
  const second = other === undefined ? words.notOther : words.other(ownName(prepared, other, saying.language));
  return html`<div class="decided">
    <p><span class="quiet">${words.lookAt}:</span> <b>${saying.say(character.label)}</b></p>
    ${sideBySide(view, character, [
      { label: words.thisOne, states: [decided.shown] },
      ...(decided.instead === undefined ? [] : [{ label: second, states: [decided.instead] }]),
    ])}
    ${tip ? html`<p>${saying.say(tip)}</p>` : character.help ? html`<p>${saying.say(character.help)}</p>` : nothing}
  </div>`;
}

function renderStep(view: View, attempt: Judged['attempt'], wrong: NonNullable<Judged['feedback']['wrong']>) {
  const character = characterOf(view.prepared, wrong.character);
  if (!character) return nothing;
  const { saying, words } = view;
  const answer = attempt.trail?.[wrong.step];
  return html`<div class="decided">
    <p><b>${words.firstStep(wrong.step + 1)}</b>: ${saying.say(character.label)}</p>
    ${
      wrong.shown === undefined
        ? html`<p>${words.notSeen}</p>`
        : sideBySide(view, character, [
            { label: words.thisOne, states: [wrong.shown] },
            { label: words.notOther, states: wrong.said },
          ])
    }
    ${wrong.said.length === 0 && answer ? html`<p>${words.said}: ${said(character, answer, saying)}</p>` : nothing}
  </div>`;
}

function sideBySide(
  { pictures, saying }: View,
  character: Character,
  columns: readonly { readonly label: string; readonly states: readonly string[] }[],
): TemplateResult {
  return html`<ul class="sides">
    ${columns
      .filter(({ states }) => states.length > 0)
      .map(
        ({ label, states }) => html`<li>
          <span class="quiet">${label}</span>
          ${states.slice(0, 1).map((state) => pictureOf(pictures, `${character.id}/${state}`))}
          <b>${said(character, { character: character.id, states, sureness: 'sure' }, clauses(saying))}</b>
        </li>`,
      )}
  </ul>`;
}

export const percent = (share: number, language: string): string =>
  new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 0 }).format(share);
