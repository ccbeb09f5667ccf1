// The small key as the one file that a page loads, and an address for it that lasts as long as the test page.
import characters from '../fixtures/small-key/characters.json' with { type: 'json' };
import couplets from '../fixtures/small-key/couplets.json' with { type: 'json' };
import guidance from '../fixtures/small-key/guidance.json' with { type: 'json' };
import key from '../fixtures/small-key/key.json' with { type: 'json' };
import sources from '../fixtures/small-key/sources.json' with { type: 'json' };
import taxa from '../fixtures/small-key/taxa.json' with { type: 'json' };
import es from '../fixtures/small-key/text/es.json' with { type: 'json' };

export const smallBundle = { format: 1, key, characters, taxa, couplets, guidance, sources, text: { es } };

/** The same without its branching key, which begins with what serves best. */
export const { couplets: _couplets, ...freeBundle } = smallBundle;

/** A blob's address with this content. */
export const addressOf = (content: unknown): string =>
  URL.createObjectURL(new Blob([typeof content === 'string' ? content : JSON.stringify(content)]));

/** The bundle with its characters changed by hand. */
export function withCharacter(id: string, changes: object): object {
  const changed = characters.characters.map((one) => (one.id === id ? { ...one, ...changes } : one));
  return { ...freeBundle, characters: { ...characters, characters: changed } };
}
