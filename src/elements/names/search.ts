// Finding plants by a name as people write it: either language, Latin, old names, usual misspellings, and slips of the hand.
import Fuse from 'fuse.js/min-basic';
import { foldName, type Key, type SharedName, sharedNames, type Taxon } from '../../key/index.ts';

/** One name of one plant. */
interface Entry {
  readonly taxon: Taxon;
  readonly folded: string;
  readonly misspelled: boolean;
}

export interface Found {
  /** Best match first. */
  readonly taxa: readonly Taxon[];
  /** Set when what was typed is, or is nearly, a name that several plants have; `taxa` then starts with these. */
  readonly shared?: SharedName;
}

/** How unlike a name may be, as the share of letters that are wrong (ours, tried on the streambank key's names). */
const UNLIKE = 0.34;
/** What is found lies within this of the best match (ours). */
const NEAR_BEST = 0.15;
/** So close to a shared name that it was meant (ours). */
const MEANT = 0.26;
/** Fewer letters than this match only the start of a word. */
const FEW_LETTERS = 4;
const AT_MOST = 8;
/** How far a match is from the name itself, before its wrong letters count; a usual misspelling is a match, but no name. */
const FAR = { closed: 0.01, start: 0.02, word: 0.04, slip: 0.02, misspelling: 0.1 };

export class NameSearch {
  readonly #entries: readonly Entry[];
  readonly #fuse: Fuse<Entry>;
  readonly #shared: ReadonlyMap<string, SharedName>;

  constructor(key: Pick<Key, 'taxa'>) {
    this.#entries = key.taxa.flatMap(entriesOf);
    this.#shared = sharedNames(key);
    this.#fuse = new Fuse(this.#entries, {
      keys: ['folded'],
      threshold: UNLIKE,
      ignoreLocation: true,
      ignoreFieldNorm: true,
      includeScore: true,
    });
  }

  /** Plants whose names are, begin with, hold, or are nearly what was typed; none for an empty query. */
  find(query: string): Found {
    const ranked = this.#rank(foldName(query));
    const best = ranked[0];
    if (best === undefined) return { taxa: [] };
    const near = ranked.filter(({ far }) => far <= best.far + NEAR_BEST);
    // Whoever wrote a name as it is means that name; whoever nearly wrote a shared one is shown that it is shared.
    const meant = best.far <= FAR.closed ? [best] : near.filter(({ far }) => far <= MEANT);
    const shared = meant.map(({ entry }) => this.#shared.get(entry.folded)).find((one) => one !== undefined);
    const taxa = [...new Set([...(shared?.taxa ?? []), ...near.map(({ entry }) => entry.taxon)])];
    const most = Math.max(AT_MOST, shared?.taxa.length ?? 0);
    return { taxa: taxa.slice(0, most), ...(shared ? { shared } : {}) };
  }

  /** Each plant once, by its name that lies nearest to what was typed. */
  #rank(folded: string): { readonly entry: Entry; readonly far: number }[] {
    if (folded === '') return [];
    const nearest = new Map<Taxon, { entry: Entry; far: number }>();
    const note = (entry: Entry, at: number) => {
      const far = at + (entry.misspelled ? FAR.misspelling : 0);
      const before = nearest.get(entry.taxon);
      if (before === undefined || far < before.far) nearest.set(entry.taxon, { entry, far });
    };
    for (const entry of this.#entries) {
      if (entry.folded === folded) note(entry, 0);
      else if (closed(entry.folded) === closed(folded)) note(entry, FAR.closed);
      else if (entry.folded.startsWith(folded)) note(entry, FAR.start);
      else if (` ${entry.folded}`.includes(` ${folded}`)) note(entry, FAR.word);
    }
    if (folded.length >= FEW_LETTERS)
      for (const { item, score = 1 } of this.#fuse.search(folded)) note(item, FAR.slip + score);
    return [...nearest.values()].sort((a, b) => a.far - b.far);
  }
}

/** "coco yam" and "cocoyam" are one to the ear, and may be two plants. */
const closed = (folded: string): string => folded.replaceAll(' ', '');

function entriesOf(taxon: Taxon): Entry[] {
  const entries = (names: readonly string[], misspelled: boolean) =>
    [...new Set(names.map(foldName))].map((folded) => ({ taxon, folded, misspelled }));
  const names = [taxon.name, ...[...taxon.common.values()].flat(), ...taxon.synonyms];
  return [...entries(names, false), ...entries(taxon.misspellings, true)];
}
