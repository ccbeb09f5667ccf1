// The demonstration key as a session for tests, in Node and in a browser.
import characters from '../../keys/streambank/characters.json' with { type: 'json' };
import guidance from '../../keys/streambank/guidance.json' with { type: 'json' };
import key from '../../keys/streambank/key.json' with { type: 'json' };
import sources from '../../keys/streambank/sources.json' with { type: 'json' };
import taxa from '../../keys/streambank/taxa.json' with { type: 'json' };
import { type KeyAnswer, type Month, type PreparedKey, prepareKey, readKey } from '../../src/key/index.ts';
import { SessionStore } from '../../src/session/index.ts';

let prepared: PreparedKey | undefined;

export function streambank(): PreparedKey {
  const files = { key, characters, taxa, guidance, sources };
  prepared ??= prepareKey(
    readKey(new Map(Object.entries(files).map(([name, content]) => [`${name}.json`, JSON.stringify(content)]))),
  );
  return prepared;
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
