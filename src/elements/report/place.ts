// The place and the date.
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { PLACED, type Place } from '../../report/find/index.ts';
import type { PlaceTrouble } from '../../words/report/index.ts';
import { lengthWords, show } from '../shared/sizes.ts';
import { choice, type Desk, field, section } from './desk.ts';
import { usualUnits } from './finding.ts';
import { roundingOf } from './where.ts';

export interface PlaceDesk {
  readonly place: Place | undefined;
  readonly locating: boolean;
  readonly trouble: PlaceTrouble | undefined;
  readonly locate: () => void;
  /** Reads it from the photographs; undefined where none is there as it came. */
  readonly fromPhoto: (() => void) | undefined;
}

/** The grids of a coarser place, and how far about that is. */
const ROUGH = [
  ['0.01', 1],
  ['0.1', 10],
] as const;

const far = (kilometres: number, desk: Desk) => {
  const { language, units } = desk.saying;
  const [value, unit] =
    units === 'us' ? [Math.max(0.5, Math.round(kilometres * 0.6)), 'mile'] : [kilometres, 'kilometer'];
  return new Intl.NumberFormat(language, { style: 'unit', unit: String(unit), unitDisplay: 'long' }).format(
    Number(value),
  );
};

export function renderPlace(desk: Desk, at: PlaceDesk): TemplateResult {
  const { draft, words, saying, set } = desk;
  const { place, locating, trouble, locate, fromPhoto } = at;
  const { fields } = draft;
  const source = PLACED.find((one) => one === fields.source) ?? 'typed';
  const usual = lengthWords(show(roundingOf(fields.place), 'm', saying.units), saying.language);
  return section(
    desk,
    'place',
    words.place.heading,
    place !== undefined,
    html`<div class="ways">
        <button class=${place ? 'outline' : 'solid'} type="button" ?disabled=${locating} @click=${locate}>${words.place.device}</button>
        ${
          fromPhoto
            ? html`<button class="outline" type="button" @click=${fromPhoto}>${words.place.photo}</button>
              <p class="quiet">${words.place.photoHelp}</p>`
            : nothing
        }
      </div>
      <p role="status">${locating ? words.place.locating : nothing}</p>
      <p class="wrong" role="alert">${trouble ? words.place.trouble[trouble] : nothing}</p>
      ${field(desk, 'place', words.place.typed, { help: words.place.typedHelp })}
      ${place ? html`<p class="quiet">${words.place.source[source]}</p>` : nothing}
      ${
        fields.place.trim() === ''
          ? nothing
          : html`<div class="pair sizes">
                ${field(desk, 'uncertainty', words.place.within, { kind: 'size', help: words.place.withinHelp(usual) })}
                ${choice(desk, 'uncertaintyUnit', words.more.unit, ['m', 'ft'], (unit) => words.more.units[unit], usualUnits(saying.units).length as 'm' | 'ft')}
              </div>
              <fieldset>
                <legend>${words.place.tell}</legend>
                ${radio('', words.place.exact)} ${ROUGH.map(([grid, kilometres]) => radio(grid, words.place.rough(far(kilometres, desk))))}
                ${fields.tell === '' ? nothing : html`<p class="quiet">${words.place.roughHelp}</p>`}
                ${
                  fields.tell !== '' && draft.photos.some((photo) => photo.hiddenDataKept)
                    ? html`<p class="warn">${words.place.leak}</p>`
                    : nothing
                }
              </fieldset>
              ${field(desk, 'way', words.place.words, { kind: 'lines' })}`
      }`,
  );

  function radio(grid: string, label: string): TemplateResult {
    return html`<label class="target radio">
      <input type="radio" name="tell" value=${grid} .checked=${live(fields.tell === grid)} @change=${() => set('tell', grid)} />
      <span>${label}</span>
    </label>`;
  }
}

/** `today` as YYYY-MM-DD. */
export const renderDate = (desk: Desk, today: string, there: boolean): TemplateResult =>
  section(
    desk,
    'date',
    desk.words.date.heading,
    there,
    field(desk, 'date', desk.draft.fields.none === 'yes' ? desk.words.none.date : desk.words.date.label, {
      kind: 'date',
      most: today,
    }),
  );
