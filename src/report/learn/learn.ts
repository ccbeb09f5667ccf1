// From reviewed finds to how often each character was misread.
import { type KnownReading, learnRates, mixupsSeen, tells, USUAL_WEIGHT } from '../../engine/learn/index.ts';
import {
  AnswersError,
  type Character,
  engineAnswers,
  type KeyAnswer,
  type PreparedKey,
  readInquiry,
} from '../../key/index.ts';
import { answersIn, type Find } from '../find/index.ts';

/** Why a find says nothing of misreadings. */
export type NotCounted =
  /** Nobody reviewed it. */
  | 'unreviewed'
  /** The specialist asked for a photograph. */
  | 'photo-wanted'
  /** The plant is none of the key's, or the review names none. */
  | 'outside'
  /** No plant was seen. */
  | 'not-detected'
  /** It was made with a key of another id. */
  | 'other-key'
  /** The key at hand lacks the taxon, or the kind of observer. */
  | 'unknown-taxon'
  | 'unknown-observer'
  /** The same find came again, with a later review. */
  | 'older-copy';

/** A find, and where it came from. */
export interface Source {
  readonly name: string;
  readonly find: Find;
}

export interface Learned {
  readonly key: { readonly id: string; readonly version: string };
  /** How many readings the key's own rates are worth. */
  readonly weight: number;
  /** Finds counted, and answers in them. */
  readonly finds: number;
  readonly answers: number;
  readonly notCounted: readonly { readonly name: string; readonly find: string; readonly why: NotCounted }[];
  /** Answers in counted finds that the key at hand does not have. */
  readonly answersNotCounted: readonly {
    readonly name: string;
    readonly character: string;
    readonly expected: string;
  }[];
  /** Most readings off the key's own rate first. `misread` is an expected number; rates are shares, 0 to 1. */
  readonly characters: readonly {
    readonly character: string;
    readonly readings: number;
    readonly misread: number;
    readonly rate: number;
    readonly proposed: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** Most seen first; `count` is an expected number. */
  readonly mixups: readonly {
    readonly character: string;
    readonly shown: string;
    readonly said: string;
    readonly count: number;
  }[];
}

/** Fewer than this, expected, is not told as a mix-up (ours). */
const SEEN = 0.5;

const moment = (date: string): number => Date.parse(date);

/** Which of two copies of a find is later: by the review, then by the change; then any fixed order will do. */
function compareCopies(a: Find, b: Find): number {
  const reviewed = ({ review }: Find) => (review ? moment(review.date) : Number.NEGATIVE_INFINITY);
  const [one, other] = [reviewed(a), reviewed(b)];
  if (one !== other) return one < other ? -1 : 1;
  return moment(a.changed) - moment(b.changed) || order(JSON.stringify(a), JSON.stringify(b));
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Reckons from all finds at once, so that neither their order nor a copy changes what is learned. `practised` are readings
 * of the practice room.
 */
export function learnFrom(
  prepared: PreparedKey,
  sources: readonly Source[],
  weight: number = USUAL_WEIGHT,
  practised: readonly KnownReading[] = [],
): Learned {
  const { key, matrix } = prepared;
  const copies = new Map<string, Source[]>();
  for (const source of sources) copies.set(source.find.id, [...(copies.get(source.find.id) ?? []), source]);
  const readings: KnownReading[] = [];
  const notCounted: { name: string; find: string; why: NotCounted }[] = [];
  const answersNotCounted: { name: string; character: string; expected: string }[] = [];
  let finds = 0;
  for (const [, same] of [...copies].sort(([a], [b]) => order(a, b))) {
    const [latest, ...older] = same.sort((a, b) => compareCopies(b.find, a.find) || order(a.name, b.name)) as [Source];
    for (const { name, find } of older as Source[]) notCounted.push({ name, find: find.id, why: 'older-copy' });
    const { name, find } = latest;
    const taxon = prepared.taxonIndex.get(find.review?.taxon ?? '');
    const times = key.observers.get(find.observer);
    const why = whyNot(prepared, find);
    if (why !== undefined || taxon === undefined || times === undefined) {
      notCounted.push({ name, find: find.id, why: why ?? 'outside' });
      continue;
    }
    finds++;
    for (const answer of answersIn(find)) {
      const read = readOne(prepared, find, answer);
      if (typeof read === 'string') answersNotCounted.push({ name, character: answer.character, expected: read });
      else for (const one of engineAnswers(prepared, read)) readings.push({ taxon, times, answer: one });
    }
  }
  readings.push(...practised);
  const rates = learnRates(matrix, readings, weight);
  const character = (index: number) => key.characters[index] as Character;
  const state = (index: number, s: number) => character(index).states[s]?.id ?? '';
  const byName = <T extends { readonly name: string }>(list: T[]) => list.sort((a, b) => order(a.name, b.name));
  return {
    key: { id: key.id, version: key.version },
    weight,
    finds,
    answers: readings.filter((reading) => tells(matrix, reading)).length,
    notCounted: byName(notCounted),
    answersNotCounted: byName(answersNotCounted),
    characters: rates
      .map(({ character: c, readings: n, misread, before, mean, low, high }) => ({
        character: character(c).id,
        readings: n,
        misread,
        rate: before,
        proposed: mean,
        low,
        high,
      }))
      .sort((a, b) => Math.abs(b.proposed - b.rate) - Math.abs(a.proposed - a.rate) || order(a.character, b.character)),
    mixups: mixupsSeen(matrix, readings, rates)
      .filter(({ count }) => count >= SEEN)
      .map(({ character: c, shown, said, count }) => ({
        character: character(c).id,
        shown: state(c, shown),
        said: state(c, said),
        count,
      })),
  };
}

function whyNot({ key, taxonIndex }: PreparedKey, find: Find): NotCounted | undefined {
  const { review } = find;
  if (find.key.id !== key.id) return 'other-key';
  if (!find.detected) return 'not-detected';
  if (review === undefined) return 'unreviewed';
  if (review.status === 'photo-wanted') return 'photo-wanted';
  if (review.taxon === undefined || review.taxon === 'outside') return 'outside';
  if (!taxonIndex.has(review.taxon)) return 'unknown-taxon';
  return key.observers.has(find.observer) ? undefined : 'unknown-observer';
}

/** An answer as the key at hand takes it, or what the key expects in its place. */
function readOne(prepared: PreparedKey, { month, observer }: Find, answer: KeyAnswer): readonly KeyAnswer[] | string {
  try {
    return readInquiry(prepared, { month, observer, answers: [answer] }).answers;
  } catch (error) {
    if (error instanceof AnswersError) return error.problems[0]?.expected ?? '';
    throw error;
  }
}
