// A report made ready to be sent: the same bytes and the same key, however often it is tried.

export interface ParcelPhoto {
  /** Id of the photograph in the find. */
  readonly id: string;
  readonly blob: Blob;
}

export interface Parcel {
  /** Sent as `Idempotency-Key`: a receiver that has seen it answers as before and keeps one report. */
  readonly key: string;
  /** The find as JSON, without the photographs' data. */
  readonly find: string;
  readonly photos: readonly ParcelPhoto[];
}

/**
 * The key follows from what is sent: tried again, the same; changed, another.
 * `id` is the find's, `find` its JSON; the photographs are in it by their hash.
 */
export async function parcelOf(id: string, find: string, photos: readonly ParcelPhoto[]): Promise<Parcel> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(find));
  const hash = [...new Uint8Array(digest, 0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return { key: `${id}-${hash}`, find, photos };
}

const ENDINGS: ReadonlyMap<string, string> = new Map([
  ['image/jpeg', 'jpg'],
  ['image/png', 'png'],
  ['image/webp', 'webp'],
  ['image/heic', 'heic'],
  ['image/heif', 'heif'],
]);

/** `multipart/form-data`: one part `find` (JSON), then a part `photo` for each photograph, its file named by its id. */
export function bodyOf({ find, photos }: Parcel): FormData {
  const body = new FormData();
  body.append('find', new Blob([find], { type: 'application/json' }), 'find.json');
  for (const { id, blob } of photos) body.append('photo', blob, `${id}.${ENDINGS.get(blob.type) ?? 'bin'}`);
  return body;
}

export const bytesOf = ({ find, photos }: Parcel): number =>
  new TextEncoder().encode(find).length + photos.reduce((sum, { blob }) => sum + blob.size, 0);
