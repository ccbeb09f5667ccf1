// Every sentence of a key that somebody may be shown, and where it stands.
import type { Path } from './path.ts';
import type { Key } from './types.ts';

export interface Sentence {
  readonly text: string;
  readonly file: string;
  readonly at: Path;
  /** False for notes that are for the people who keep the key: they may stay untranslated. */
  readonly shown: boolean;
}

/** In the order of the files; a sentence that stands in several places comes several times. */
export function* sentencesOf(key: Key): Generator<Sentence> {
  const made = (file: string, shown: boolean) =>
    function* (at: Path, texts: Readonly<Record<string, string | undefined>>): Generator<Sentence> {
      for (const [name, text] of Object.entries(texts))
        if (text !== undefined) yield { text, file, at: [...at, name], shown };
    };
  const { title, region, licence } = key;
  yield* made('key.json', true)([], { title, region });
  yield* made('key.json', false)([], { licence });
  for (const [i, text] of key.cautions.entries()) yield { text, file: 'key.json', at: ['cautions', i], shown: true };

  const ofCharacter = made('characters.json', true);
  for (const [i, { kind, label, question, trade, help, caution, states }] of key.characters.entries()) {
    yield* ofCharacter(['characters', i], { label, question, trade, help, caution });
    for (const [j, { label, trade, help }] of states.entries()) {
      yield* ofCharacter(['characters', i, kind === 'measure' ? 'classes' : 'states', j], { label, trade, help });
    }
  }
  for (const [i, { statusNote, traits }] of key.taxa.entries()) {
    yield* made('taxa.json', true)(['taxa', i], { statusNote });
    for (const [id, { note }] of traits) yield* made('taxa.json', false)(['taxa', i, 'traits', id], { note });
  }
  for (const [i, { separate }] of key.lookalikes.entries()) {
    for (const [j, { words }] of separate.entries())
      yield* made('taxa.json', true)(['lookalikes', i, 'separate', j], { words });
  }
  for (const [i, { leads }] of key.couplets.entries()) {
    for (const [j, { text }] of leads.entries())
      yield* made('couplets.json', true)(['couplets', i, 'leads', j], { text });
  }
  for (const [i, { statements }] of [...key.guidance.values()].entries()) {
    for (const [j, { text }] of statements.entries()) {
      yield* made('guidance.json', true)(['entries', i, 'statements', j], { text });
    }
  }
}
