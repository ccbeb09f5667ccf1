// The map as a control: a tap or the arrow keys move a cross, and what it stands on is said.
import { html, nothing, svg, type TemplateResult } from 'lit';
import { type Areas, type Position, type Spot, toward } from '../../guidance/nearby/index.ts';
import type { NearbyWords } from '../../words/nearby/index.ts';
import { type Chart, WIDE } from './chart.ts';
import { inBoth, inLanguage } from './said.ts';

/** What a finger covers, as a share of the map's width on a telephone (ours). */
const FINGER = 0.03;
/** How far an arrow key moves the cross, as a share of the width; with Shift, and without. */
const STEPS = { fine: 0.005, coarse: 0.04 } as const;
const MILE = 1609.344;
const WAYS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['ArrowLeft', [-1, 0]],
  ['ArrowRight', [1, 0]],
  ['ArrowUp', [0, -1]],
  ['ArrowDown', [0, 1]],
]);

export interface MapDoing {
  readonly move: (cross: Position) => void;
  readonly take: () => void;
}

/** A place on the map, as well as a finger can tell. */
export const spotOf = ([lon, lat]: Position, { across }: Chart): Spot => ({
  lat,
  lon: toward(lon, 0),
  uncertainty: Math.max(1, across * FINGER),
});

/** Where a key moves the cross; undefined for a key that moves nothing. It stays on the map. */
export function stepped(chart: Chart, cross: Position, { key, shiftKey }: KeyboardEvent): Position | undefined {
  const way = WAYS.get(key);
  if (!way) return undefined;
  const step = WIDE * (shiftKey ? STEPS.fine : STEPS.coarse);
  const [x, y] = chart.toChart(cross);
  return chart.fromChart(clamp(x + way[0] * step, WIDE), clamp(y + way[1] * step, chart.height));
}

/** The position under a tap. */
export function tapped(chart: Chart, event: MouseEvent): Position | undefined {
  const box = (event.currentTarget as Element).querySelector('svg')?.getBoundingClientRect();
  if (!box || box.width === 0) return undefined;
  const scale = WIDE / box.width;
  return chart.fromChart(
    clamp((event.clientX - box.left) * scale, WIDE),
    clamp((event.clientY - box.top) * scale, chart.height),
  );
}

const clamp = (value: number, most: number) => Math.min(most, Math.max(0, value));

export function renderMap(
  chart: Chart,
  { areas, landmarks }: Pick<Areas, 'areas' | 'landmarks'>,
  cross: Position | undefined,
  words: NearbyWords,
  metric: boolean,
  { move, take }: MapDoing,
): TemplateResult {
  const { language } = words;
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && cross) {
      event.preventDefault();
      take();
      return;
    }
    const next = stepped(chart, cross ?? chart.middle, event);
    if (!next) return;
    event.preventDefault();
    move(next);
  };
  const tap = (event: MouseEvent) => {
    const next = tapped(chart, event);
    if (next) move(next);
  };
  return html`<div
      class="map"
      part="map"
      role="application"
      tabindex="0"
      aria-label=${words.mapLabel}
      aria-describedby="map-hint"
      @keydown=${press}
      @click=${tap}
    >
      <svg viewBox="0 0 ${WIDE} ${chart.height}" aria-hidden="true">
        ${chart.areas.map(({ path }) => svg`<path class="area" d=${path} />`)}
        ${chart.landmarks.map(({ path, spot, at }) => (spot ? svg`<circle class="spot" cx=${at[0]} cy=${at[1]} r="6" />` : svg`<path class="course" d=${path} />`))}
        ${chart.landmarks.map(
          ({ at, spot }, i) =>
            svg`<text class="landmark" x=${at[0]} y=${at[1] - (spot ? 14 : 8)}>${inLanguage(landmarks[i]?.name ?? new Map(), language)}</text>`,
        )}
        ${chart.areas.map(({ label: [x, y] }, i) => svg`<circle class="plate" cx=${x} cy=${y} r="19" /><text class="number" x=${x} y=${y + 9}>${i + 1}</text>`)}
        ${renderScale(chart, words, metric)} ${cross ? renderCross(chart, cross) : nothing}
      </svg>
    </div>
    <ol class="legend">
      ${areas.map(({ programme }, i) => html`<li><span class="key" aria-hidden="true">${i + 1}</span> ${inLanguage(programme, language)}</li>`)}
    </ol>`;
}

function renderScale({ height, scale: { miles, length } }: Chart, words: NearbyWords, metric: boolean) {
  const y = height - 18;
  return svg`<path class="scale" d="M18 ${y - 8}V${y}H${18 + length}V${y - 8}" />
    <text class="measure" x="18" y=${y - 16}>${inBoth(miles * MILE, words, metric)}</text>
    <path class="scale" d="M${WIDE - 30} 58V18M${WIDE - 40} 32L${WIDE - 30} 16L${WIDE - 20} 32" />
    <text class="landmark" x=${WIDE - 30} y="84">${words.letters.north}</text>`;
}

function renderCross(chart: Chart, cross: Position) {
  const [x, y] = chart.toChart(cross);
  const path = `M${x - 30} ${y}H${x - 8}M${x + 8} ${y}H${x + 30}M${x} ${y - 30}V${y - 8}M${x} ${y + 8}V${y + 30}`;
  return svg`<path class="cross under" d=${path} /><path class="cross" d=${path} /><circle class="aim" cx=${x} cy=${y} r="3" />`;
}
