// Where a draft is kept while nobody looks at it.
import type { Draft } from './draft.ts';

/** Keeps one draft a key. */
export interface Keeper {
  /** The draft of a key; undefined when there is none. */
  load(key: string): Promise<Draft | undefined>;
  /** @throws when the device cannot keep it */
  save(key: string, draft: Draft): Promise<void>;
  drop(key: string): Promise<void>;
}

/** In memory: as long as the page stays open, whatever happens to the element. */
export function memoryKeeper(): Keeper {
  const drafts = new Map<string, Draft>();
  return {
    load: async (key) => drafts.get(key),
    save: async (key, draft) => {
      drafts.set(key, draft);
    },
    drop: async (key) => {
      drafts.delete(key);
    },
  };
}
