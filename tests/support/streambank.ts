// The demonstration key as a session for tests, in Node and in a browser.

import characters from '../../keys/streambank/characters.json' with { type: 'json' };
import guidance from '../../keys/streambank/guidance.json' with { type: 'json' };
import key from '../../keys/streambank/key.json' with { type: 'json' };
import sources from '../../keys/streambank/sources.json' with { type: 'json' };
import taxa from '../../keys/streambank/taxa.json' with { type: 'json' };
import text from '../../keys/streambank/text/es.json' with { type: 'json' };
import {
  type KeyAnswer,
  type Month,
  type PreparedKey,
  prepareKey,
  readInquiry,
  readKey,
  type VerdictKind,
} from '../../src/key/index.ts';
import { SessionStore, type Snapshot } from '../../src/session/index.ts';
import arrowArum from '../answers/arrow-arum.json' with { type: 'json' };
import elephantEar from '../answers/elephant-ear.json' with { type: 'json' };
import giantReed from '../answers/giant-reed.json' with { type: 'json' };
import nativeReed from '../answers/native-common-reed.json' with { type: 'json' };
import pondAlgae from '../answers/pond-algae.json' with { type: 'json' };

let prepared: PreparedKey | undefined;

const files = { key, characters, taxa, guidance, sources, 'text/es': text };
const prepare = (content: Readonly<Record<string, unknown>>): PreparedKey =>
  prepareKey(readKey(new Map(Object.entries(content).map(([name, one]) => [`${name}.json`, JSON.stringify(one)]))));

/** The demonstration's plants and characters, without its branching key: what its questions ask by themselves. */
export function streambank(): PreparedKey {
  prepared ??= prepare(files);
  return prepared;
}

/** The same with these couplets, as a file has them; none for an empty list. */
export const streambankWith = (couplets: readonly object[]): PreparedKey =>
  prepare(couplets.length > 0 ? { ...files, couplets: { couplets } } : files);

/** The name of a plant that is shown in a language. */
export function commonName(taxon: string, language = 'en'): string {
  const name = streambank()
    .key.taxa.find((one) => one.id === taxon)
    ?.common.get(language)?.[0];
  if (name === undefined) throw new Error(`no ${language} name of ${taxon}`);
  return name;
}

/** A session in which characters were answered with these states, surely. */
export function answered(
  answers: Readonly<Record<string, string | readonly string[]>>,
  month: Month = 9,
): SessionStore {
  return new SessionStore(streambank(), {
    month,
    trail: Object.entries(answers).map(
      ([character, states]): KeyAnswer => ({ character, states: [states].flat(), sureness: 'sure' }),
    ),
  });
}

const FILES = {
  'arrow-arum': arrowArum,
  'elephant-ear': elephantEar,
  'giant-reed': giantReed,
  'native-common-reed': nativeReed,
  'pond-algae': pondAlgae,
};

/** A session that was answered as the sources describe a plant (see tests/answers/README.md). */
export function answersOf(plant: keyof typeof FILES): SessionStore {
  const { month, answers } = readInquiry(streambank(), FILES[plant]);
  return new SessionStore(streambank(), { month, trail: answers });
}

/** The same, with answers given one by one only until `wanted` holds. @throws when it never does. */
export function answeredUntil(plant: keyof typeof FILES, wanted: (snapshot: Snapshot) => boolean): SessionStore {
  const { month, answers } = readInquiry(streambank(), FILES[plant]);
  const store = new SessionStore(streambank(), { month });
  for (const answer of answers) {
    store.request('answer', { answer });
    if (wanted(store.snapshot)) return store;
  }
  throw new Error(`the answers of ${plant} never come to what is wanted`);
}

export const verdictIs =
  (kind: VerdictKind) =>
  ({ identification }: Snapshot): boolean =>
    identification.verdict.kind === kind;
