// What the people who keep a key should look at in its pictures and its glossary. Warnings all: a key works without.
import { foldName } from '../names.ts';
import { list, type Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Character, Key } from '../types.ts';
import { GLOSSARY } from './glossary.ts';
import type { Manifest } from './loose.ts';
import type { Term } from './types.ts';

/** How many of the missing are told. */
const TOLD = 3;

const some = (all: readonly string[]): string =>
  `${all.length}: ${all.slice(0, TOLD).join('; ')}${all.length > TOLD ? ` and ${all.length - TOLD} more` : ''}`;

/** A manifest, and the name under which its problems are told. */
export interface Pictures {
  readonly file: string;
  readonly manifest: Manifest;
}

const fieldOf = ({ kind }: Character): string => (kind === 'measure' ? 'classes' : 'states');

/** States without a picture, pictures of nothing in the key, and alternative text that is missing. */
export function checkPictures(
  key: Key,
  { file, manifest: { pictures, wanted = [] } }: Pictures,
  problems: Problems,
): void {
  const states = new Set(key.characters.flatMap(({ id, states }) => states.map((state) => `${id}/${state.id}`)));
  const taxa = new Set(key.taxa.map(({ id }) => id));
  const shown = new Set<string>();
  pictures.forEach(({ shows }, i) => {
    const at: Path = ['pictures', i, 'shows'];
    if ('state' in shows) {
      const state = `${shows.character}/${shows.state}`;
      shown.add(state);
      if (!states.has(state)) problems.warn(file, at, 'unknown-picture', 'a state of a character of the key', state);
    } else if (!taxa.has(shows.taxon)) problems.warn(file, at, 'unknown-picture', 'a taxon of the key', shows.taxon);
  });
  wanted.forEach(({ taxon }, i) => {
    if (!taxa.has(taxon)) problems.warn(file, ['wanted', i, 'taxon'], 'unknown-picture', 'a taxon of the key', taxon);
  });
  key.characters.forEach((character, i) => {
    const without = character.states.filter(({ id }) => !shown.has(`${character.id}/${id}`)).map(({ id }) => id);
    if (without.length === 0) return;
    const expected = `a picture of each of the ${character.states.length} states of ${character.id}`;
    problems.warn(
      'characters.json',
      ['characters', i, fieldOf(character)],
      'no-picture',
      expected,
      `${without.length} without: ${list(without)}`,
    );
  });
  for (const language of key.languages) {
    const without = pictures.flatMap(({ file, alt }, i) =>
      Object.hasOwn(alt, language) ? [] : [`${file} (pictures[${i}])`],
    );
    if (without.length > 0)
      problems.warn(
        file,
        ['pictures'],
        'no-alt',
        `alternative text in ${language} for every picture`,
        `none for ${some(without)}`,
      );
  }
}

/** Trade terms that nothing in the glossary explains, and entries that lack a language of the key. */
export function checkGlossary(key: Key, terms: readonly Term[], problems: Problems): void {
  const words = terms.flatMap(({ term, words }) => [term, ...words]).map((word) => ` ${foldName(word)} `);
  const warn = (at: Path, trade: string | undefined) => {
    if (trade === undefined) return;
    const folded = ` ${foldName(trade)} `;
    // Figures explain themselves.
    if (!/\p{L}/u.test(folded) || words.some((word) => folded.includes(word))) return;
    problems.warn('characters.json', at, 'no-term', `a word that ${GLOSSARY} explains`, `"${trade}"`);
  };
  key.characters.forEach((character, i) => {
    warn(['characters', i, 'trade'], character.trade);
    character.states.forEach(({ trade }, j) => {
      warn(['characters', i, fieldOf(character), j, 'trade'], trade);
    });
  });
  for (const language of key.languages.slice(1)) {
    const without = terms.filter(({ text }) => !text.has(language)).map(({ id }) => id);
    if (without.length > 0)
      problems.warn(GLOSSARY, ['terms'], 'untranslated', `every term in ${language}`, `without it ${some(without)}`);
  }
}
