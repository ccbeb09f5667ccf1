// Three ways to say where the plant stands: the device, the map, and numbers.
import { html, nothing, type TemplateResult } from 'lit';
import { type Areas, isInside, type Position } from '../../guidance/nearby/index.ts';
import type { DeviceFault, NearbyWords } from '../../words/nearby/index.ts';
import type { Told } from './card.ts';
import type { Chart } from './chart.ts';
import { renderMap, spotOf } from './map.ts';
import { inLanguage, placeInWords } from './said.ts';

export interface Choosing {
  readonly chart: Chart;
  /** What the map shows. */
  readonly shown: Pick<Areas, 'areas' | 'landmarks'>;
  /** A place is chosen; this would be another. */
  readonly another: boolean;
  readonly cross: Position | undefined;
  readonly device: DeviceFault | 'asking' | undefined;
  /** What is wrong with the numbers that were typed. */
  readonly typed: keyof NearbyWords['wrong'] | undefined;
  ask(): void;
  move(cross: Position): void;
  /** Takes the place below the cross. */
  take(): void;
  /** Takes the numbers that were typed. */
  read(event: SubmitEvent): void;
}

export function renderChoose(choosing: Choosing, { words, metric, level }: Told): TemplateResult {
  const { chart, shown, another, cross, device, typed, ask, move, take, read } = choosing;
  return html`<div class="choose">
    ${another ? html`<div role="heading" class="sub" aria-level=${level}>${words.another}</div>` : html`<p>${words.why} ${words.whose}</p>`}
    <button class=${another ? 'outline' : 'solid'} type="button" @click=${ask}>${words.device}</button>
    <div role="status">
      ${device === 'asking' ? html`<p>${words.asking}</p>` : nothing}
      ${device && device !== 'asking' ? html`<p class="wrong">${words.fault[device]}</p><p>${words.instead}</p>` : nothing}
    </div>
    <details class="by-map">
      <summary>${words.map}</summary>
      <div class="pointing">
        <p class="quiet" id="map-hint">${words.mapHint}</p>
        ${renderMap(chart, shown, cross, words, metric, { move, take })}
        <p role="status">${cross ? crossSays(cross, choosing, words) : nothing}</p>
        ${cross ? html`<button class="outline" type="button" @click=${take}>${words.mapUse}</button>` : nothing}
      </div>
    </details>
    <details class="by-numbers">
      <summary>${words.type}</summary>
      <form novalidate @submit=${read}>
        <label for="numbers">${words.typeLabel}</label>
        <span class="quiet" id="numbers-hint">${words.typeHint}</span>
        <input id="numbers" type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" maxlength="120" aria-describedby="numbers-hint numbers-wrong" aria-invalid=${typed ? 'true' : 'false'} />
        <p class="wrong" id="numbers-wrong" role="alert">${typed ? words.wrong[typed] : nothing}</p>
        <button class="outline" type="submit">${words.use}</button>
      </form>
    </details>
  </div>`;
}

function crossSays(cross: Position, { chart, shown }: Choosing, words: NearbyWords): string {
  const spot = spotOf(cross, chart);
  const names = shown.areas
    .filter((area) => isInside(spot, area))
    .map(({ programme }) => inLanguage(programme, words.language));
  const place = placeInWords(spot, words);
  return names.length > 0 ? words.crossIn(place, names.join(', ')) : words.crossOut(place);
}
