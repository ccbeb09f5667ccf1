// What a specialist sees of a find, held against today's key, and what comes of the review.
import {
  AnswersError,
  type Character,
  type Identification,
  identify,
  type KeyAnswer,
  MOST_COMPARED,
  type PreparedKey,
  readInquiry,
  type Taxon,
} from '../../key/index.ts';
import { showsOf } from '../../key/shows.ts';
import { answersIn, type Find, type Review, type TrailAnswer, toFind } from '../find/index.ts';

/** How an answer goes with what a plant shows; `absent`: the character means nothing for it. */
export type Fit = 'usually' | 'sometimes' | 'rarely' | 'no' | 'absent' | 'unknown';

export interface Weighed {
  /** As the person saw it. */
  readonly answer: TrailAnswer;
  /** The same as the key at hand has it; none where it does not have the answer. */
  readonly known?: { readonly character: Character; readonly answer: KeyAnswer };
  /** One for each candidate; none where the answer is not known. */
  readonly fits: readonly Fit[] | undefined;
}

export interface Dossier {
  /** The likeliest of today's standing, three at most. */
  readonly candidates: readonly Taxon[];
  readonly rows: readonly Weighed[];
  /** What today's key makes of those of the answers that it has. */
  readonly today: Identification;
  /** Whether the key at hand is another than the one that the find was made with. */
  readonly keyDiffers: boolean;
  /** Those of the answers that today's key has. */
  readonly answers: readonly KeyAnswer[];
}

export function dossierOf(prepared: PreparedKey, find: Find): Dossier {
  const { key } = prepared;
  const { month } = find;
  const observer = key.observers.has(find.observer) ? find.observer : ([...key.observers.keys()][0] ?? '');
  const asked = answersIn(find);
  const known = asked.map((answer) => isKnown(prepared, { month, observer, answers: [answer] }));
  const answers = asked.filter((_, i) => known[i]);
  const today = identify(prepared, { month, observer, answers });
  const candidates = today.standing.slice(0, MOST_COMPARED).flatMap(({ taxon }) => taxonIn(prepared, taxon) ?? []);
  return {
    candidates,
    rows: find.trail.map((answer, i): Weighed => {
      const held = asked[i] as KeyAnswer;
      const character = key.characters[prepared.characterIndex.get(held.character) ?? -1];
      if (!known[i] || character === undefined) return { answer, fits: undefined };
      return {
        answer,
        known: { character, answer: held },
        fits: candidates.map((taxon) => fitOf(taxon, character, held)),
      };
    }),
    today,
    keyDiffers:
      find.key.id !== key.id ||
      find.key.version !== key.version ||
      (find.key.hash !== undefined && key.hash !== undefined && find.key.hash !== key.hash),
    answers,
  };
}

export const taxonIn = ({ key, taxonIndex }: PreparedKey, id: string): Taxon | undefined =>
  key.taxa[taxonIndex.get(id) ?? -1];

function isKnown(prepared: PreparedKey, inquiry: Parameters<typeof readInquiry>[1]): boolean {
  try {
    readInquiry(prepared, inquiry);
    return true;
  } catch (error) {
    if (error instanceof AnswersError) return false;
    throw error;
  }
}

const FREQUENCIES = ['usually', 'sometimes', 'rarely'] as const;

function fitOf(taxon: Taxon, character: Character, answer: KeyAnswer): Fit {
  if ('skipped' in answer) return 'unknown';
  const shows = showsOf(taxon, character, answer);
  if (shows.kind === 'absent' || shows.kind === 'unknown') return shows.kind;
  if (shows.kind === 'range') return shows.seen ? 'usually' : 'no';
  return FREQUENCIES.find((how) => shows.states.some((one) => one.seen && one.how === how)) ?? 'no';
}

/** What a specialist has entered; all but the verdict may be empty. */
export interface Entered {
  readonly status: Review['status'] | '';
  /** Id of a taxon, or `outside`. */
  readonly taxon: string;
  readonly by: string;
  readonly remarks: string;
  readonly wanted: readonly string[];
}

export const LACKING = ['status', 'taxon', 'wanted', 'by'] as const;
/** What a review lacks before it can be written, in the order of the fields. */
export function lackingIn({ status, taxon, by, wanted }: Entered): readonly (typeof LACKING)[number][] {
  const lacking = {
    status: status === '',
    taxon: status === 'corrected' && taxon === '',
    wanted: status === 'photo-wanted' && wanted.length === 0,
    by: by.trim() === '',
  };
  return LACKING.filter((one) => lacking[one]);
}

/** The plant that the find says it is: what `confirmed` confirms. Undefined while it says several. */
export const claimOf = ({ verdict: { kind, taxa } }: Find): string | undefined =>
  kind === 'outside' ? 'outside' : kind === 'open' && taxa.length !== 1 ? undefined : taxa[0];

/**
 * The find with the review in it; a correction to what the find says anyway confirms it. `now`: ISO 8601 with time and
 * offset. Nothing may be lacking.
 * @throws FindError when a text is longer than a find takes
 */
export function reviewedFind(prepared: PreparedKey, find: Find, entered: Entered, now: string): Find {
  const claim = claimOf(find);
  const same = entered.status === 'corrected' && entered.taxon === claim;
  const status = same ? 'confirmed' : (entered.status as Review['status']);
  const taxon = status === 'confirmed' ? claim : status === 'corrected' ? entered.taxon : undefined;
  const name = taxon === undefined ? undefined : taxonIn(prepared, taxon)?.name;
  const remarks = entered.remarks.trim();
  const review: Review = {
    status,
    ...(taxon === undefined ? {} : { taxon }),
    ...(name === undefined ? {} : { name }),
    by: entered.by.trim(),
    date: now,
    ...(remarks === '' ? {} : { remarks }),
    ...(status === 'photo-wanted' ? { wanted: entered.wanted } : {}),
  };
  return toFind({ ...find, changed: now, review });
}
