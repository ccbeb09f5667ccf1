// A photograph made ready on the device: smaller, and without what cameras write into it unseen.

/** A photograph as it would be sent. */
export interface Prepared {
  readonly blob: Blob;
  /** Media type. */
  readonly type: string;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  /** Of its bytes, in 64 hexadecimal digits. */
  readonly sha256: string;
  /** It is the file as it came, with all that is written into it. */
  readonly hiddenDataKept: boolean;
}

/** What was chosen is no picture that this browser can read, or too large a file. */
export class PhotoError extends Error {
  override readonly name = 'PhotoError';
  constructor(readonly code: 'unreadable' | 'too-large') {
    super(`the photograph is ${code}`);
  }
}

/** Longest side in pixels: enough to count hairs, small enough for a weak signal (ours). */
export const LONGEST = 2048;
const QUALITY = 0.85;
/** Bytes; a phone's own photographs are far below. */
export const LARGEST = 60_000_000;
/** Bytes of an original that is sent as it is. */
export const LARGEST_KEPT = 20_000_000;

/**
 * Draws the picture anew, upright and at most `LONGEST` pixels long, as a JPEG: its colours are all that is taken over.
 * With `keep` the file stays as it is.
 * @throws PhotoError
 */
export async function preparePhoto(file: Blob, keep: boolean): Promise<Prepared> {
  if (file.size > (keep ? LARGEST_KEPT : LARGEST)) throw new PhotoError('too-large');
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new PhotoError('unreadable');
  });
  try {
    const { width, height } = keep ? picture : fitted(picture.width, picture.height, LONGEST);
    const blob = keep ? file : await drawn(picture, width, height);
    return {
      blob,
      type: blob.type.toLowerCase() || 'application/octet-stream',
      width,
      height,
      sha256: await hashOf(blob),
      hiddenDataKept: keep,
    };
  } finally {
    picture.close();
  }
}

/** The largest whole size of the same shape whose longest side is at most `longest`; never larger than it was. */
export function fitted(width: number, height: number, longest: number): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

async function drawn(picture: ImageBitmap, width: number, height: number): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new PhotoError('unreadable');
  // A JPEG has no holes to see through.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
  if (!blob) throw new PhotoError('unreadable');
  return blob;
}

/** SHA-256 of the bytes in hexadecimal. */
export async function hashOf(blob: Blob): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await blob.arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
