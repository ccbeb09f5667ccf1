// The photographs: what to take, what is there.
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { PhotoTrouble } from '../../words/report/index.ts';
import { isPictured, pictureOf } from '../shared/picture.ts';
import { type Desk, field, section, tick } from './desk.ts';
import type { DraftPhoto } from './draft.ts';

/** One photograph that would help. */
export interface Wanted {
  readonly id: string;
  readonly words: string;
  /** States to draw beside it, as `character/state`, the best first. */
  readonly views: readonly string[];
}

export interface PhotoDesk {
  readonly wanted: readonly Wanted[];
  readonly working: boolean;
  readonly trouble: PhotoTrouble | undefined;
  readonly add: (files: readonly File[], wants: string | undefined) => void;
  readonly remove: (id: string) => void;
}

export const kilobytes = (bytes: number, language: string): string =>
  new Intl.NumberFormat(language, { maximumFractionDigits: bytes < 10_000 ? 1 : 0 }).format(bytes / 1000);

export function renderPhotos(desk: Desk, photos: PhotoDesk): TemplateResult {
  const { draft, words } = desk;
  const { working, trouble, wanted } = photos;
  const done = draft.photos.length > 0 || draft.fields.noPhotos.trim() !== '';
  const others = draft.photos.filter(({ wants }) => !wanted.some(({ id }) => id === wants));
  return section(
    desk,
    'photos',
    words.photos.heading,
    done,
    html`<p>${wanted.length > 0 ? words.photos.why : nothing} ${words.photos.safe}</p>
      <ul class="wanted">
        ${wanted.map((one) => renderWanted(desk, photos, one))}
      </ul>
      ${renderTaken(desk, photos, others)}
      ${picker(words.photos.add, undefined, photos, draft.photos.length === 0 && wanted.length === 0 ? 'solid' : 'outline')}
      <p role="status" class="working">${working ? words.photos.working : nothing}</p>
      <p class="wrong" role="alert">${trouble ? words.photos.trouble[trouble] : nothing}</p>
      ${
        draft.photos.length > 0
          ? tick(desk, 'keep', words.photos.keep, words.photos.keepHelp)
          : field(desk, 'noPhotos', words.photos.none)
      }`,
  );
}

function renderWanted(desk: Desk, photos: PhotoDesk, { id, words: text, views }: Wanted): TemplateResult {
  const { words, pictures, draft } = desk;
  const view = views.find((one) => isPictured(pictures, one));
  const have = draft.photos.filter(({ wants }) => wants === id);
  return html`<li>
    <div class="want">
      ${view ? html`<span class="place">${pictureOf(pictures, view)}</span>` : nothing}
      <span class="text">${text}${have.length > 0 ? html` <b class="have">${words.photos.have}</b>` : nothing}</span>
      ${picker(html`${words.photos.addThis}<span class="unseen">: ${text}</span>`, id, photos, 'outline')}
    </div>
    ${renderTaken(desk, photos, have)}
  </li>`;
}

/** A button that takes or chooses photographs: the device offers which. */
function picker(
  label: unknown,
  wants: string | undefined,
  { add }: PhotoDesk,
  kind: 'solid' | 'outline',
): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const files = [...(input.files ?? [])];
    // The same file may be chosen again after it was removed.
    input.value = '';
    if (files.length > 0) add(files, wants);
  };
  return html`<label class="picker ${kind} target">
    <input class="unseen" type="file" accept="image/*" ?multiple=${wants === undefined} data-wants=${wants ?? ''} @change=${chosen} />
    <span>${label}</span>
  </label>`;
}

function renderTaken({ draft, words, saying }: Desk, { remove }: PhotoDesk, some: readonly DraftPhoto[]) {
  if (some.length === 0) return nothing;
  return html`<ul class="taken">
    ${repeat(
      some,
      ({ id }) => id,
      ({ id, bytes, width, height, hiddenDataKept }) => {
        const name = words.photos.nth(draft.photos.findIndex((one) => one.id === id) + 1);
        return html`<li>
          <canvas data-photo=${id} width=${width} height=${height} role="img" aria-label=${name}></canvas>
          <div>
            <p><b>${name}</b>, ${words.photos.size(kilobytes(bytes, saying.language))}</p>
            <p class="quiet">${hiddenDataKept ? words.photos.kept : words.photos.stripped}</p>
            <button class="plain" type="button" @click=${() => remove(id)}>
              ${words.photos.remove}<span class="unseen">: ${name}</span>
            </button>
          </div>
        </li>`;
      },
    )}
  </ul>`;
}

/** Draws the pictures into their canvases: a policy that forbids `blob:` addresses forbids nothing of this. */
export async function paint(root: ParentNode, photos: readonly Pick<DraftPhoto, 'id' | 'blob'>[]): Promise<void> {
  for (const canvas of root.querySelectorAll<HTMLCanvasElement>('canvas[data-photo]:not([data-drawn])')) {
    const blob = photos.find(({ id }) => id === canvas.dataset.photo)?.blob;
    if (!blob) continue;
    canvas.dataset.drawn = '';
    const picture = await createImageBitmap(blob, { imageOrientation: 'from-image' }).catch(() => undefined);
    if (!picture) continue;
    // As large as it is shown, and for sharp screens and paper twice that.
    const scale = Math.min(1, 800 / Math.max(picture.width, picture.height));
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
  }
}
