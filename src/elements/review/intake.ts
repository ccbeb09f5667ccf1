// How reports come in: as text, read one by one. What cannot be read is told, and the others stay.
import { type Find, FindError, readFind } from '../../report/find/index.ts';
import type { Fault } from './opening.ts';

export interface Coming {
  readonly name: string;
  /** Undefined where it did not come. */
  readonly text: string | undefined;
}

export interface Taken {
  readonly finds: readonly Find[];
  readonly faults: readonly Fault[];
  /** Those that were read, in their order; one that was open before takes the place it had. */
  readonly ids: readonly string[];
}

export function takeIn(open: readonly Find[], coming: readonly Coming[]): Taken {
  let finds = open;
  const faults: Fault[] = [];
  const ids: string[] = [];
  for (const { name, text } of coming) {
    try {
      if (text === undefined) {
        faults.push({ name });
        continue;
      }
      const find = readFind(text);
      const there = finds.findIndex(({ id }) => id === find.id);
      finds = there < 0 ? [...finds, find] : finds.with(there, find);
      ids.push(find.id);
    } catch (error) {
      if (!(error instanceof FindError)) throw error;
      faults.push({ name, wrong: error.message });
    }
  }
  return { finds, faults, ids };
}

/** The one address that the page's owner gave. */
export const fetched = (address: string): Promise<string | undefined> =>
  fetch(new URL(address, document.baseURI), {
    credentials: 'same-origin',
  }).then(
    (response) => (response.ok ? response.text() : undefined),
    () => undefined,
  );

/** A file that cannot be read is no report. */
export const textsOf = (files: readonly File[]): Promise<readonly Coming[]> =>
  Promise.all(
    files.map(async (file) => ({
      name: file.name,
      text: await file.text().catch(() => ''),
    })),
  );
