// Pictures of states: our own line drawings, and photographs where the page's owner says where they lie.
import { html, nothing, svg, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { type Album, BOX, type Character, type Drawing, type Photo } from '../../key/index.ts';

/** What there is to show, and where. */
export interface Pictures {
  readonly album: Album | undefined;
  /** Drawings that came with the key itself, by `character/state`. */
  readonly opening: ReadonlyMap<string, Drawing> | undefined;
  /** As in the settings: empty or undefined, and photographs are not asked for. */
  readonly images: string | undefined;
  readonly language: string;
  /** The album is on its way. */
  readonly coming: boolean;
}

export interface Shown {
  /** What is to be seen, in a sentence; without it the picture is hidden from screen readers. */
  readonly label?: string;
}

/** The strokes of a drawing, for an svg of the caller's. */
export const renderMarks = (drawing: Drawing) => drawing.map(([pen, path]) => svg`<path class=${pen} d=${path} />`);

/** A drawing; it is as wide as its place. `box` is its width and height in units of the drawing. */
export function renderDrawing(
  drawing: Drawing,
  { label, box: [width, height] = [BOX, BOX] }: Shown & { readonly box?: readonly [number, number] } = {},
): TemplateResult {
  return html`<svg
    class="drawing"
    viewBox=${`0 0 ${width} ${height}`}
    role=${label ? 'img' : nothing}
    aria-label=${label || nothing}
    aria-hidden=${label ? nothing : 'true'}
  >${renderMarks(drawing)}</svg>`;
}

/**
 * A photograph in a place of the caller's; `sizes` says how wide that is, as of an img. Nothing without an address for
 * photographs. One that does not come is hidden, so that what lies behind it is seen.
 */
export function renderPhoto(
  photo: Photo,
  { images }: Pictures,
  { label, sizes }: Shown & { readonly sizes?: string } = {},
) {
  if (!images) return nothing;
  const at = (file: string) => new URL(file, images).href;
  const src = at(photo.file);
  const set = [...photo.sizes, photo].map(({ file, width }) => `${at(file)} ${width}w`).join(', ');
  return html`${keyed(
    src,
    html`<img
      class="photo"
      loading="lazy"
      decoding="async"
      width=${photo.width}
      height=${photo.height}
      sizes=${sizes || '6em'}
      srcset=${set}
      src=${src}
      alt=${label ?? ''}
      @error=${({ currentTarget }: Event) => {
        (currentTarget as HTMLElement).hidden = true;
      }}
    />`,
  )}`;
}

/** What is to be seen on a state's picture, in the language asked for or one that there is; empty without. */
export function altOf({ album, language }: Pictures, state: string): string {
  const alt = album?.states.get(state)?.alt;
  return alt?.get(language) ?? alt?.get(language.split('-')[0] ?? '') ?? alt?.values().next().value ?? '';
}

/** Whether there is a picture of a state, given as `character/state`. */
export function isPictured({ album, opening, images }: Pictures, state: string): boolean {
  const picture = album?.states.get(state);
  return Boolean(picture?.drawing || (picture?.photo && images) || opening?.has(state));
}

/** Whether to keep room for the picture of a state: it is there, or on its way. */
export const hasRoom = (pictures: Pictures, { id, draws }: Character, state: string): boolean =>
  isPictured(pictures, `${id}/${state}`) || (pictures.coming && draws !== undefined);

/**
 * The picture of a state, given as `character/state`, in a square as wide as its place: the photograph, where there is
 * one and the page says where, with the drawing behind it; else the drawing; else nothing. `large` shows whose the
 * photograph is.
 */
export function pictureOf(
  pictures: Pictures,
  state: string,
  { label, large = false, sizes }: Shown & { readonly large?: boolean; readonly sizes?: string } = {},
) {
  if (!isPictured(pictures, state)) return nothing;
  const { drawing = pictures.opening?.get(state), photo } = pictures.album?.states.get(state) ?? {};
  const shown = photo && pictures.images ? photo : undefined;
  return html`<span class="picture" role=${label ? 'img' : 'presentation'} aria-label=${label || nothing}
    >${drawing ? renderDrawing(drawing) : nothing}${shown ? renderPhoto(shown, pictures, { sizes: sizes ?? '6em' }) : nothing}</span
  >${shown && large ? html`<small class="credit">${shown.credit}, ${shown.licence}</small>` : nothing}`;
}
