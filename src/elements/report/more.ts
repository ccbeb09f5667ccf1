// What is told only if somebody likes to.
import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import {
  AREA_UNITS,
  BANKS,
  COVER,
  COVER_CLASSES,
  GROUND_UNITS,
  LANDS,
  MEASURED,
  middleOf,
  PHENOLOGY,
  SIDES,
  TREATED,
  UPSTREAM,
} from '../../report/find/index.ts';
import { lengthWords, show } from '../shared/sizes.ts';
import { coverPath, SIDE } from './cover.ts';
import { choice, type Desk, field, tick } from './desk.ts';
import { usualUnits } from './finding.ts';
import { HEIGHTS } from './heights.ts';

export function renderMore(desk: Desk): TemplateResult {
  const { words, draft } = desk;
  const { more } = words;
  const heading = (text: string) =>
    html`<div role="heading" aria-level=${Math.min(6, desk.level + 2)} class="minor">${text}</div>`;
  const seen = draft.fields.none !== 'yes';
  return html`${seen ? renderSize(desk, heading(more.size)) : ''}
    <div class="pair">
      ${seen ? choice(desk, 'height', more.height, Object.keys(HEIGHTS), (index) => heightWords(desk, Number(index))) : ''}
      ${seen ? choice(desk, 'phenology', more.phenology, PHENOLOGY, (one) => more.stages[one]) : ''}
      ${choice(desk, 'bank', more.bank, BANKS, (one) => more.banks[one])}
      ${choice(desk, 'side', more.side, SIDES, (one) => more.sides[one])}
      ${choice(desk, 'upstream', more.upstream, UPSTREAM, (one) => more.upstreams[one])}
      ${choice(desk, 'treated', more.treated, TREATED, (one) => more.treateds[one])}
    </div>
    ${draft.fields.treated === 'yes' || draft.fields.treatedNote ? field(desk, 'treatedNote', more.treatedNote, { kind: 'lines' }) : ''}
    ${choice(desk, 'land', more.land, LANDS, (one) => more.lands[one])}
    ${field(desk, 'access', more.access, { kind: 'lines' })} ${heading(more.contact)}
    ${field(desk, 'name', more.name, { complete: 'name' })}
    ${field(desk, 'phone', more.phone, { kind: 'tel', complete: 'tel' })}
    ${field(desk, 'email', more.email, { kind: 'email', complete: 'email' })}
    ${tick(desk, 'mayContact', more.mayContact, more.contactHelp)} ${tick(desk, 'mayShow', more.mayShow)}
    ${field(desk, 'remarks', more.remarks, { kind: 'lines' })}`;
}

function renderSize(desk: Desk, heading: TemplateResult): TemplateResult {
  const { more } = desk.words;
  const usual = usualUnits(desk.saying.units);
  return html`${heading}
    <div class="pair sizes">
      ${field(desk, 'bankLength', more.bankLength, { kind: 'size' })} ${field(desk, 'width', more.width, { kind: 'size' })}
      ${choice(desk, 'lengthUnit', more.unit, GROUND_UNITS, (unit) => more.units[unit], usual.length)}
    </div>
    <div class="pair sizes">
      ${field(desk, 'gross', more.gross, { kind: 'size' })} ${field(desk, 'infested', more.infested, { kind: 'size' })}
      ${choice(desk, 'areaUnit', more.unit, AREA_UNITS, (unit) => more.units[unit], usual.area)}
    </div>
    ${choice(desk, 'how', more.how, MEASURED, (one) => more.hows[one])} ${renderCover(desk)}`;
}

function heightWords({ words, saying }: Desk, index: number): string {
  const { from, to } = HEIGHTS[index] as (typeof HEIGHTS)[number];
  const size = (metres: number) => lengthWords(show(metres, 'm', saying.units), saying.language);
  const order = to === undefined ? 'over' : index === 0 ? 'under' : 'between';
  return words.more.heightClass[order](size(from), size(to ?? from));
}

function renderCover({ draft, words, set }: Desk): TemplateResult {
  const { more } = words;
  return html`<fieldset class="cover">
    <legend>${more.cover}</legend>
    <p class="quiet">${more.coverHelp}</p>
    <div class="squares">
      ${COVER_CLASSES.map(
        (id) => html`<label class="square">
          <input type="radio" name="cover" value=${id} .checked=${live(draft.fields.cover === String(id))} @change=${() => set('cover', String(id))} />
          <svg viewBox="0 0 ${SIDE} ${SIDE}" aria-hidden="true"><rect class="ground" width=${SIDE} height=${SIDE} /><path class="grown" d=${coverPath(middleOf(id))} /></svg>
          <span>${more.coverClass(...COVER[id])}</span>
        </label>`,
      )}
    </div>
    <label class="target radio">
      <input type="radio" name="cover" value="" .checked=${live(draft.fields.cover === '')} @change=${() => set('cover', '')} />
      <span>${more.unsaid}</span>
    </label>
  </fieldset>`;
}
