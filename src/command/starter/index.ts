// What a new key folder starts from: two plants out of the key of this repository, with the sources of their facts.
import characters from './characters.json' with { type: 'json' };
import es from './es.json' with { type: 'json' };
import guidance from './guidance.json' with { type: 'json' };
import key from './key.json' with { type: 'json' };
import { readMe } from './read-me.ts';
import sources from './sources.json' with { type: 'json' };
import taxa from './taxa.json' with { type: 'json' };

/** Files by name in the folder, in the order in which they are best read. `id` names the key, `shown` is the folder's path. */
export function starter(id: string, shown: string): ReadonlyMap<string, string> {
  const json = { key: { ...key, id }, characters, taxa, guidance, sources, 'text/es': es };
  return new Map([
    ...Object.entries(readMe(shown)),
    ...Object.entries(json).map(
      ([name, content]) => [`${name}.json`, `${JSON.stringify(content, null, 2)}\n`] as const,
    ),
  ]);
}
