import { expect, test } from 'vitest';
import { fromBase64, toBase64 } from './base64.ts';
import { takenAt } from './position.ts';
import { fitted, hashOf, LARGEST, LONGEST, PhotoError, preparePhoto } from './prepare.ts';

const fetched = async (name: string) =>
  (await fetch(new URL(`../../../tests/fixtures/photos/${name}`, import.meta.url))).blob();

/** Markers of a JPEG before its picture data, each with its first bytes: ITU-T T.81, annex B (from memory). */
async function segmentsOf(blob: Blob): Promise<string[]> {
  const view = new DataView(await blob.arrayBuffer());
  const found: string[] = [];
  for (let at = 2; view.getUint8(at) === 0xff && view.getUint8(at + 1) !== 0xda; at += 2 + view.getUint16(at + 2)) {
    const start = String.fromCharCode(...new Uint8Array(view.buffer, at + 4, 4));
    found.push(`${view.getUint8(at + 1).toString(16)} ${start}`);
  }
  return found;
}
const hidden = (segments: readonly string[]) => segments.filter((one) => /^(e[1-9a-f]|fe)/.test(one));

test('a photograph drawn anew stands upright and holds nothing but the picture', async () => {
  const file = await fetched('with-place.jpg');
  expect(hidden(await segmentsOf(file))).toEqual(['e1 Exif']);
  expect(await takenAt(file)).toBeDefined();
  const { blob, width, height, type, hiddenDataKept, sha256 } = await preparePhoto(file, false);
  expect({ width, height, type, hiddenDataKept }).toEqual({
    width: 80,
    height: 120,
    type: 'image/jpeg',
    hiddenDataKept: false,
  });
  expect(hidden(await segmentsOf(blob)).filter((one) => !one.includes('ICC_'))).toEqual([]);
  expect(await takenAt(blob)).toBeUndefined();
  const text = new TextDecoder('latin1').decode(await blob.arrayBuffer());
  for (const secret of ['Invented Camera', 'A. Person', '2026:11:20']) expect(text).not.toContain(secret);
  expect(sha256).toBe(await hashOf(blob));
  // The red rectangle was left of the blue one; turned by a quarter to the right it stands above it.
  const picture = await createImageBitmap(blob);
  const canvas = new OffscreenCanvas(80, 120);
  const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
  context.drawImage(picture, 0, 0);
  const [r = 0, , b = 0] = context.getImageData(40, 30, 1, 1).data;
  expect(r).toBeGreaterThan(b);
});

test('kept on purpose, it is the file as it came', async () => {
  const file = await fetched('with-place.jpg');
  const { blob, hiddenDataKept } = await preparePhoto(file, true);
  expect(hiddenDataKept).toBe(true);
  expect(await hashOf(blob)).toBe(await hashOf(file));
});

test('a large one is made smaller, a small one stays', () => {
  expect(fitted(8000, 6000, LONGEST)).toEqual({ width: 2048, height: 1536 });
  expect(fitted(3000, 9000, LONGEST)).toEqual({ width: 683, height: 2048 });
  expect(fitted(100_000, 1, LONGEST)).toEqual({ width: 2048, height: 1 });
  expect(fitted(80, 120, LONGEST)).toEqual({ width: 80, height: 120 });
});

test('what this browser cannot read is refused, and so is what is too large', async () => {
  await expect(preparePhoto(new Blob(['hello']), false)).rejects.toMatchObject({ code: 'unreadable' });
  await expect(preparePhoto(await fetched('plain.heic'), false)).rejects.toBeInstanceOf(PhotoError);
  const large = { size: LARGEST + 1 } as Blob;
  await expect(preparePhoto(large, false)).rejects.toMatchObject({ code: 'too-large' });
});

test('a hash is that of the standard: FIPS 180-2, appendix B.1 (from memory)', async () => {
  expect(await hashOf(new Blob(['abc']))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('bytes go through base64 and back: RFC 4648, section 10', async () => {
  expect(await toBase64(new Blob(['foobar']))).toBe('Zm9vYmFy');
  const bytes = Uint8Array.from({ length: 70_000 }, (_, i) => i % 251);
  const back = fromBase64(await toBase64(new Blob([bytes])), 'image/jpeg');
  expect(back.type).toBe('image/jpeg');
  expect(new Uint8Array(await back.arrayBuffer())).toEqual(bytes);
  expect(() => fromBase64('?', 'image/jpeg')).toThrow();
});
