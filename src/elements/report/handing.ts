// Files that are handed to the browser's downloads, and addresses that another program opens.
import { type Find, writeFind } from '../../report/find/index.ts';
import { toBase64 } from '../../report/photos/index.ts';
import type { Draft } from './draft.ts';

export const nameOf = ({ id }: Draft): string => `find-${id.slice(0, 8)}`;

/** Hands a file to the browser's downloads. */
export function save(text: string, type: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  follow(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Opens an address as a tap on a link would. */
export function follow(address: string, download?: string): void {
  const link = document.createElement('a');
  link.href = address;
  if (download !== undefined) link.download = download;
  link.click();
}

/** The whole find, photographs in it, as the file that opens again. */
export async function saveFind(draft: Draft, find: Find): Promise<void> {
  const photos = await Promise.all(
    draft.photos.map(async ({ blob, ...photo }) => ({ ...photo, data: await toBase64(blob) })),
  );
  save(writeFind({ ...find, photos }), 'application/json', `${nameOf(draft)}.json`);
}
