// The photographs of a report, and its place and date. No map and no picture is asked for from anywhere.
import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { type Find, PHOTOS } from '../../report/find/index.ts';
import { fromBase64 } from '../../report/photos/index.ts';
import type { ReportWords } from '../../words/report/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import { paint } from '../report/photos.ts';
import { coordinatesOf } from '../report/where.ts';

/** Each photograph with what it was asked for. A report's canvases are its own: none shows what another's did. */
export function renderPhotos(
  { id, photos, noPhotos, language }: Find,
  text: ReviewWords,
  { photos: { wants } }: ReportWords,
  level: number,
): TemplateResult {
  return html`<section>
    <div role="heading" aria-level=${level} class="sub">${text.photos}</div>
    ${photos.length === 0 ? html`<p>${text.noPhotos} <span lang=${language}>${noPhotos}</span></p>` : nothing}
    ${keyed(
      id,
      html`<ul class="photos">
        ${photos.map((photo) => {
          const kind = PHOTOS.find((one) => one === photo.wants);
          const wanted = kind ? wants[kind] : photo.caption ? '' : text.photos;
          const words = [wanted, photo.caption].filter(Boolean).join(': ');
          return html`<li>
            ${photo.data === undefined ? html`<p class="quiet">${text.noPicture}</p>` : html`<canvas data-photo=${photo.id} width=${photo.width} height=${photo.height} role="img" aria-label=${words}></canvas>`}
            <p>${wanted} ${photo.caption ? html`<span lang=${language}>${photo.caption}</span>` : nothing}</p>
          </li>`;
        })}
      </ul>`,
    )}
  </section>`;
}

/** Draws the pictures that are not drawn yet. */
export async function paintPhotos(root: ParentNode, { photos }: Find): Promise<void> {
  if (!root.querySelector('canvas[data-photo]:not([data-drawn])')) return;
  await paint(
    root,
    photos.flatMap(({ id, data, type }) => (data === undefined ? [] : [{ id, blob: fromBase64(data, type) }])),
  );
}

export function renderPlace(
  { place, date, language }: Find,
  text: ReviewWords,
  level: number,
  copy: (words: string) => void,
): TemplateResult {
  const words = place && coordinatesOf(place);
  return html`<section>
    <div role="heading" aria-level=${level} class="sub">${text.place}</div>
    ${
      place && words
        ? html`<p><span class="coordinates">${words}</span>, ${text.within(Math.ceil(place.uncertainty))}</p>
            ${place.words ? html`<p lang=${language}>${place.words}</p>` : nothing}
            <div><button class="plain" type="button" @click=${() => copy(words)}>${text.copy}</button></div>`
        : html`<p>${text.noPlace}</p>`
    }
    ${date ? html`<p>${text.date}: ${date}</p>` : nothing}
  </section>`;
}
