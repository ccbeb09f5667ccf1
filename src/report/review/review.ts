// What a specialist sees of a find, held against today's key, and what comes of the review.
import {
  AnswersError,
  type Comparison,
  comparisonOf,
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
  readonly answer: TrailAnswer;
  /** One for each candidate; none where the key at hand does not have the answer. */
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
  /** What tells the candidates apart. */
  readonly comparison: Comparison | undefined;
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
    rows: find.trail.map((answer, i) => ({
      answer,
      fits: known[i] ? candidates.map((taxon) => fitOf(prepared, taxon, asked[i] as KeyAnswer)) : undefined,
    })),
    today,
    keyDiffers:
      find.key.id !== key.id ||
      find.key.version !== key.version ||
      (find.key.hash !== undefined && key.hash !== undefined && find.key.hash !== key.hash),
    comparison:
      candidates.length < 2
        ? undefined
        : comparisonOf(
            prepared,
            candidates.map(({ id }) => id),
            { month, answers },
          ),
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

function fitOf({ key, characterIndex }: PreparedKey, taxon: Taxon, answer: KeyAnswer): Fit {
  const character = key.characters[characterIndex.get(answer.character) ?? -1];
  if (character === undefined || 'skipped' in answer) return 'unknown';
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
 * The find with the review in it. `now`: ISO 8601 with time and offset. Nothing may be lacking.
 * @throws FindError when a text is longer than a find takes
 */
export function reviewedFind(prepared: PreparedKey, find: Find, entered: Entered, now: string): Find {
  const status = entered.status as Review['status'];
  const taxon = status === 'confirmed' ? claimOf(find) : status === 'corrected' ? entered.taxon : undefined;
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
