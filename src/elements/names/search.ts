// Finding plants by a name as people write it: either language, Latin, old names, usual misspellings, and slips of the hand.
import Fuse from 'fuse.js/basic';
import { foldName, type Key, type SharedName, sharedNames, type Taxon } from '../../key/index.ts';

/** One name of one plant. */
interface Entry {
  readonly taxon: Taxon;
  readonly folded: string;
}

export interface Found {
  /** Best match first. */
  readonly taxa: readonly Taxon[];
  /** Set when what was typed is, or is nearly, a name that several plants have; `taxa` then starts with these. */
  readonly shared?: SharedName;
}

/** How unlike a name may be, from 0 (the same) to 1, as fuse.js counts (ours, tried on the streambank key's names). */
const UNLIKE = 0.34;
/** What is found lies within this of the best match (ours). */
const NEAR_BEST = 0.12;
/** So close to a shared name that it was meant (ours). */
const MEANT = 0.2;
/** Fewer letters than this match only the start of a word. */
const FEW_LETTERS = 4;
const AT_MOST = 8;

export class NameSearch {
  readonly #entries: readonly Entry[];
  readonly #fuse: Fuse<Entry>;
  readonly #shared: ReadonlyMap<string, SharedName>;

  constructor(key: Pick<Key, 'taxa'>) {
    this.#entries = key.taxa.flatMap((taxon) =>
      [...new Set(namesOf(taxon).map(foldName))].map((folded) => ({ taxon, folded })),
    );
    this.#shared = sharedNames(key);
    this.#fuse = new Fuse(this.#entries, {
      keys: ['folded'],
      threshold: UNLIKE,
      ignoreLocation: true,
      includeScore: true,
    });
  }

  /** Plants whose names are, begin with, hold, or are nearly what was typed; none for an empty query. */
  find(query: string): Found {
    const folded = foldName(query);
    if (folded === '') return { taxa: [] };
    const scores = new Map<Taxon, { score: number; folded: string }>();
    const note = (entry: Entry, score: number) => {
      const before = scores.get(entry.taxon);
      if (before === undefined || score < before.score) scores.set(entry.taxon, { score, folded: entry.folded });
    };
    for (const entry of this.#entries) {
      if (entry.folded === folded) note(entry, 0);
      else if (entry.folded.startsWith(folded)) note(entry, 0.02);
      else if (` ${entry.folded}`.includes(` ${folded}`)) note(entry, 0.04);
    }
    if (folded.length >= FEW_LETTERS)
      for (const { item, score = 1 } of this.#fuse.search(folded)) note(item, 0.05 + score);
    const ranked = [...scores].sort(([, a], [, b]) => a.score - b.score);
    const best = ranked[0]?.[1];
    if (best === undefined) return { taxa: [] };
    const shared = best.score < MEANT ? this.#shared.get(best.folded) : undefined;
    const near = ranked.filter(([, { score }]) => score <= best.score + NEAR_BEST).map(([taxon]) => taxon);
    const taxa = [...new Set([...(shared?.taxa ?? []), ...near])].slice(0, Math.max(AT_MOST, shared?.taxa.length ?? 0));
    return shared ? { taxa, shared } : { taxa };
  }
}

const namesOf = (taxon: Taxon): string[] => [
  taxon.name,
  ...[...taxon.common.values()].flat(),
  ...taxon.synonyms,
  ...taxon.misspellings,
];
