// Where a draft is kept while nobody looks at it.
import { untilDone } from '../shared/late.ts';
import { type Draft, type DraftPhoto, EMPTY } from './draft.ts';

/** Keeps drafts by name: the id of their key, or that and `/before` for the one that was set aside. */
export interface Keeper {
  /** Undefined when there is none. */
  load(name: string): Promise<Draft | undefined>;
  /** @throws when the device cannot keep it */
  save(name: string, draft: Draft): Promise<void>;
  drop(name: string): Promise<void>;
}

/** In memory: as long as the page stays open, whatever happens to the element. */
export function memoryKeeper(): Keeper {
  const drafts = new Map<string, Draft>();
  return {
    load: async (name) => drafts.get(name),
    save: async (name, draft) => {
      drafts.set(name, draft);
    },
    drop: async (name) => {
      drafts.delete(name);
    },
  };
}

/** On the device, and in memory as well, for where the device keeps nothing. */
export function deviceKeeper(): Keeper {
  const memory = memoryKeeper();
  const store = untilDone(async () => (await import('../../store/drafts.ts')).DraftStore.open());
  return {
    load: async (name) => (await memory.load(name)) ?? (await read(name)),
    save: async (name, draft) => {
      await memory.save(name, draft);
      const photos = draft.photos.map(({ blob: _, ...photo }) => photo);
      await (await store()).write(
        name,
        { ...draft, photos },
        new Map(draft.photos.map(({ id, sha256, blob }) => [`${id} ${sha256}`, blob])),
      );
    },
    drop: async (name) => {
      await memory.drop(name);
      await (await store()).drop(name);
    },
  };

  async function read(name: string): Promise<Draft | undefined> {
    const kept = await (await store()).read(name);
    if (kept === undefined) return undefined;
    const draft = isDraft(kept.draft) ? { ...kept.draft, fields: { ...EMPTY, ...kept.draft.fields } } : undefined;
    const photos = draft?.photos.flatMap((photo): DraftPhoto[] => {
      const blob = kept.pictures.get(`${photo.id} ${photo.sha256}`);
      return blob ? [{ ...photo, blob }] : [];
    });
    if (draft && photos?.length === draft.photos.length) return { ...draft, photos };
    // What cannot be read is kept as it is, out of the way.
    await (await store()).write(`${name}/damaged`, kept.draft, kept.pictures);
    return draft && photos ? { ...draft, photos } : undefined;
  }
}

/** Whether a kept thing has the form of a draft; fields of a later edition do no harm, those of before are empty. */
function isDraft(kept: unknown): kept is Draft {
  if (typeof kept !== 'object' || kept === null) return false;
  const { id, made, changed, fields, photos } = kept as Record<string, unknown>;
  if (![id, made, changed].every((one) => typeof one === 'string')) return false;
  if (typeof fields !== 'object' || fields === null || !Array.isArray(photos)) return false;
  return Object.values(fields).every((value) => typeof value === 'string');
}
