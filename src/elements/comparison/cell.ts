// What one plant shows of a feature: its states, drawn and in words, or its sizes.
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Character, Shows } from '../../key/index.ts';
import type { ComparisonWords } from '../../words/index.ts';
import { altOf, type Pictures, pictureOf } from '../shared/picture.ts';
import type { Saying } from '../shared/said.ts';
import { rangeIn } from './sizes.ts';

interface View {
  readonly saying: Saying;
  readonly own: ComparisonWords;
  readonly pictures: Pictures;
}

export function renderShows(shows: Shows, character: Character, view: View): TemplateResult {
  const { saying, own } = view;
  if (shows.kind === 'absent' || shows.kind === 'unknown') return html`<p class="quiet">${own[shows.kind]}</p>`;
  if (shows.kind === 'range')
    return html`<div class="shown ${shows.seen ? 'seen' : ''}">
      ${shows.middle === undefined ? nothing : picture(character, shows.middle, view)}
      <p>${rangeIn(shows.range, saying, own)}</p>
      ${shows.seen ? saw(own) : nothing}
    </div>`;
  const steady = shows.states.some(({ how }) => how === 'usually');
  return html`<ul class="states">
    ${shows.states.map(({ state, how, seen }) => {
      const label = character.states.find(({ id }) => id === state)?.label ?? state;
      return html`<li class="shown ${seen ? 'seen' : ''}">
        ${how === 'usually' || !steady ? picture(character, state, view) : nothing}
        <p>${how === 'usually' ? nothing : html`<span class="how">${own.how[how]}: </span>`}${saying.say(label)}</p>
        ${seen ? saw(own) : nothing}
      </li>`;
    })}
  </ul>`;
}

function picture({ id }: Character, state: string, { pictures }: View) {
  const name = `${id}/${state}`;
  return pictureOf(pictures, name, { label: altOf(pictures, name) });
}

const saw = (own: ComparisonWords) => html`<p class="saw">${tick}${own.saw}</p>`;
const tick = svg`<svg viewBox="0 0 24 24" aria-hidden="true"><path d="m4 13 5 5L20 6" /></svg>`;
