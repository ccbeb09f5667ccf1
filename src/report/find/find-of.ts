// From a session to a find: what was answered, what follows from it, and nothing that is not known yet.
import type { Character, KeyAnswer } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { type Find, FORMAT, type TrailAnswer } from './types.ts';

/** How the find is put into words. */
export interface Telling {
  /** BCP 47 tag of the words. */
  readonly language: string;
  /** A sentence of the key in that language. */
  readonly say: (sentence: string) => string;
  /** What was answered, as the person saw it. */
  readonly said: (character: Character, answer: KeyAnswer) => string;
  /** Said of a character that was passed over. */
  readonly skipped: string;
}

/** What a session does not know: an identifier and a clock are for the caller to read. */
export interface Made {
  /** UUID. */
  readonly id: string;
  /** ISO 8601 with time and offset. */
  readonly now: string;
}

/** Taxa that stand in a find have at least this probability, and are at most so many. */
const LEAST = 0.005;
const MOST = 12;

/** The find of a session: everything about place, pictures and person is still to be said. */
export function findOf(snapshot: Snapshot, telling: Telling, { id, now }: Made): Find {
  const { prepared, identification, month, observer } = snapshot;
  const { verdict, standing, outside, concern } = identification;
  const { key } = prepared;
  const first = verdict.taxa[0];
  const held = standing.find(({ taxon }) => taxon === first)?.probability;
  return {
    format: FORMAT,
    id,
    made: now,
    changed: now,
    language: telling.language,
    key: {
      id: key.id,
      version: key.version,
      ...(key.hash === undefined ? {} : { hash: key.hash }),
      title: telling.say(key.title),
    },
    month,
    observer,
    trail: trailOf(snapshot, telling),
    standing: standing
      .filter(({ probability }) => probability >= LEAST)
      .slice(0, MOST)
      .map(({ taxon, name, probability }) => ({ taxon, name, probability })),
    outside,
    verdict: { kind: verdict.kind, taxa: verdict.taxa, probability: held ?? outside, concern },
    detected: true,
    photos: [],
    consent: { contact: false, exactPlace: false, photos: false },
  };
}

function trailOf({ prepared, trail, took }: Snapshot, { say, said, skipped }: Telling): TrailAnswer[] {
  return trail.flatMap((answer): TrailAnswer[] => {
    const known = prepared.key.characters[prepared.characterIndex.get(answer.character) ?? -1];
    if (known === undefined) return [];
    const seconds = took.get(known.id);
    const common = {
      character: known.id,
      label: say(known.label),
      ...(seconds === undefined ? {} : { seconds: Math.max(0, Math.round(seconds * 10) / 10) }),
    };
    if ('skipped' in answer) return [{ ...common, skipped: true, words: skipped }];
    const { sureness } = answer;
    const words = said(known, answer);
    return 'value' in answer
      ? [{ ...common, value: { value: answer.value, unit: answer.unit }, sureness, words }]
      : [{ ...common, states: answer.states, sureness, words }];
  });
}

/** The same find after the answers changed: all that was said of place, pictures and person stays. */
export function answeredAnew(find: Find, snapshot: Snapshot, telling: Telling, now: string): Find {
  const { key, month, observer, language, trail, standing, outside, verdict } = findOf(snapshot, telling, {
    id: find.id,
    now,
  });
  return { ...find, changed: now, language, key, month, observer, trail, standing, outside, verdict };
}

/** The answers of a find as the key takes them. Whether the key at hand has them, `readInquiry` says. */
export const answersIn = ({ trail }: Pick<Find, 'trail'>): readonly KeyAnswer[] =>
  trail.map(({ character, states, value, sureness = 'sure' }): KeyAnswer => {
    if (states) return { character, states, sureness };
    return value ? { character, value: value.value, unit: value.unit, sureness } : { character, skipped: true };
  });
