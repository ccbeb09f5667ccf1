// Where a draft is kept while nobody looks at it.
import type { Draft } from './draft.ts';

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
    load: async (key) => drafts.get(key),
    save: async (key, draft) => {
      drafts.set(key, draft);
    },
    drop: async (key) => {
      drafts.delete(key);
    },
  };
}
