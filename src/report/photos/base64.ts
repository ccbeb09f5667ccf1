// A photograph's bytes inside a file of text.

/** The bytes in base64, as RFC 4648 has it in its section 4. */
export async function toBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  // In pieces: a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

/** The reverse. @throws a DOMException for what is no base64 */
export function fromBase64(text: string, type: string): Blob {
  return new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))], { type });
}
