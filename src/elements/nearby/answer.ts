// Who helps at the place a person chose.
import { html, nothing, type TemplateResult } from 'lit';
import { type Areas, type Help, helpAt, otherSide, type Spot } from '../../guidance/nearby/index.ts';
import { renderOffer, type Told } from './card.ts';
import { dayInWords, inBoth, inLanguage, placeInWords } from './said.ts';

export interface Chosen {
  readonly spot: Spot;
  readonly source: 'device' | 'typed' | 'map';
}

/** `choose` takes the place on the other side of the earth, where a typed one seems to lack a sign. */
export function renderAnswer(
  chosen: Chosen | undefined,
  areas: Areas,
  day: string,
  told: Told,
  choose: (spot: Spot) => void,
): TemplateResult {
  // The region is there before its text, so that the text is said aloud when it comes.
  if (!chosen) return html`<div class="answer" part="answer" role="status" tabindex="-1"></div>`;
  const { words, metric, level } = told;
  const { spot, source } = chosen;
  const help = helpAt(spot, areas, day, told.plant);
  const other = source === 'typed' ? otherSide(spot, areas, day) : undefined;
  return html`<div class="answer" part="answer" role="status" tabindex="-1">
      <p class="quiet">${words.place[source](placeInWords(spot, words), inBoth(spot.uncertainty, words, metric))}</p>
      <div role="heading" class="sub" aria-level=${level}>${outcome(help, told)}</div>
      ${help.kind === 'outside' && help.nearest ? html`<p>${words.outsideNearest(inLanguage(help.nearest.area.programme, words.language), inBoth(help.nearest.distance, words, metric))}</p>` : nothing}
      ${
        other
          ? html`<p>${words.otherSide(placeInWords(other, words))}</p>
            <button class="outline" type="button" @click=${() => choose(other)}>${words.otherSideUse}</button>`
          : nothing
      }
      ${help.ended.map(({ programme, until = '' }) => html`<p>${words.ended(inLanguage(programme, words.language), dayInWords(until, words.language))}</p>`)}
    </div>
    ${help.offers.length > 0 ? html`<div class="programmes">${help.offers.map((offer) => renderOffer(offer, { ...told, level: Math.min(6, level + 1) }))}</div>` : nothing}`;
}

function outcome({ kind, offers }: Help, { words, metric }: Told): string {
  if (kind === 'outside') return words.outside;
  if (kind === 'inside') return words.inside(offers.filter(({ inside }) => inside).length);
  return words.near(inBoth(Math.min(...offers.map(({ distance }) => distance)), words, metric));
}
