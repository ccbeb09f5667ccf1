// A specimen as it is seen: the whole plant to scale, and what can be seen of it up close. No names.
import { html, nothing, svg, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import { portraitOf } from '../../drawing/portrait/index.ts';
import type { Character, PreparedKey } from '../../key/index.ts';
import { shownBy, type Task } from '../../practice/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';
import { type Pictures, pictureOf, renderMarks, renderPhoto } from '../shared/picture.ts';
import { clauses, type Saying, said } from '../shared/said.ts';

/** Characters that the figure shows as a whole, and a close-up would only repeat. */
const WHOLE = new Set(['height', 'habitat', 'stand', 'growth-form', 'light', 'flowering-month']);

interface Seen {
  readonly character: Character;
  readonly state: string;
}

/** What is seen of a task's specimen, in the key's order. */
export function seenOf({ key }: PreparedKey, { specimen }: Task): readonly Seen[] {
  const shows = shownBy(key, specimen);
  return key.characters.flatMap((character) => {
    const state = shows.get(character.id);
    return state === undefined ? [] : [{ character, state }];
  });
}

/**
 * `words` of a feature would give a reading away: then only the drawing of what is asked is shown, and for whoever does not
 * see it, neutral words.
 */
export function renderSpecimen(
  prepared: PreparedKey,
  task: Task,
  pictures: Pictures,
  saying: Saying,
  words: PracticeWords,
): TemplateResult {
  const { taxon: id, month, seed } = task.specimen;
  const taxon = prepared.key.taxa[prepared.taxonIndex.get(id) ?? -1];
  if (!taxon) return html``;
  const figure = portraitOf(prepared.key, taxon, { month, seed, varied: true, album: pictures.album });
  const seen = seenOf(prepared, task);
  const reading = task.kind === 'read';
  const close = reading ? seen.filter(({ character }) => character.id === task.character) : seen;
  const [width, height] = figure.box;
  const spoken = (one: Seen) => {
    const answer = { character: one.character.id, states: [one.state], sureness: 'sure' } as const;
    return said(one.character, answer, clauses(saying));
  };
  const photos = pictures.images && !reading ? (pictures.album?.taxa.get(id) ?? []) : [];
  return html`<figure class="specimen" part="specimen">
    ${
      figure.parts.length > 0
        ? html`<div class="scene"><svg class="drawing" viewBox=${`0 0 ${width} ${height}`} role="img" aria-label=${reading ? words.hidden : `${words.month(saying.words.common.months[month])}. ${seen.map((one) => `${saying.say(one.character.label)}: ${spoken(one)}`).join('; ')}.`}>
            ${figure.parts.map(({ group, at, marks, unsure }) => svg`<g class=${unsure ? `${group} unsure` : group} transform=${at ?? nothing}>${renderMarks(marks)}</g>`)}
          </svg></div>`
        : nothing
    }
    ${photos.length > 0 ? html`<div class="photos">${photos.map((photo) => renderPhoto(photo, pictures, { sizes: '14em' }))}</div>` : nothing}
    <figcaption>
      <p class="quiet">${words.month(saying.words.common.months[month])}</p>
      <ul class="close" tabindex=${ifDefined(reading ? undefined : 0)} aria-label=${words.closer}>
        ${close
          .filter(({ character }) => reading || !WHOLE.has(character.draws ?? ''))
          .map(({ character, state }) => {
            const picture = pictureOf(pictures, `${character.id}/${state}`, { label: reading ? words.hidden : '' });
            return picture === nothing
              ? nothing
              : html`<li>${picture}<span>${saying.say(character.label)}</span>${reading ? nothing : html`<span class="unseen">${spoken({ character, state })}</span>`}</li>`;
          })}
      </ul>
      ${
        reading
          ? nothing
          : html`<details class="words">
              <summary>${words.inWords}</summary>
              <dl>${seen.map((one) => html`<div><dt>${saying.say(one.character.label)}</dt><dd>${spoken(one)}</dd></div>`)}</dl>
            </details>`
      }
    </figcaption>
  </figure>`;
}
