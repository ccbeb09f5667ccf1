// The glossary of a key, from the loose shape of glossary.json to strict terms.
import { deepFreeze, frozenMap } from '../freeze.ts';
import { glossaryShape } from '../generated/album-shapes.js';
import { LIMITS, readJson } from '../json.ts';
import type { Problems } from '../problem.ts';
import { checkSources, checkStates, checkUnique, indexOf, look } from '../references/ids.ts';
import { compare } from '../shape.ts';
import type { Key } from '../types.ts';
import type { LooseGlossary, LooseTerm } from './loose.ts';
import type { Term } from './types.ts';

/** Name of the file in the key folder; it may be missing. */
export const GLOSSARY = 'glossary.json';

/** The terms that glossary.json explains, deep-frozen; undefined when it is at fault, which is then noted. */
export function readGlossary(text: string, key: Key, problems: Problems): readonly Term[] | undefined {
  const before = problems.findings.length;
  const content = readJson(text, { file: GLOSSARY, problems, limits: LIMITS });
  if (problems.findings.length === before)
    compare(content, glossaryShape, (at, code, expected, found) => problems.error(GLOSSARY, at, code, expected, found));
  if (problems.findings.length > before) return undefined;
  const terms = (content as LooseGlossary).terms.map(strictTerm);
  checkTerms(terms, key, problems);
  return problems.findings.length > before ? undefined : deepFreeze(terms);
}

export const strictTerm = ({ text = {}, ...term }: LooseTerm): Term => ({
  ...term,
  text: frozenMap(Object.entries(text)),
});

function checkTerms(terms: readonly Term[], key: Key, problems: Problems): void {
  const ids = indexOf(key);
  const others = key.languages.slice(1);
  checkUnique(
    terms.map(({ id }) => id),
    GLOSSARY,
    (i) => ['terms', i, 'id'],
    problems,
  );
  terms.forEach(({ source, picture, text }, i) => {
    const at = ['terms', i];
    checkSources(source, ids, GLOSSARY, [...at, 'source'], problems);
    if (picture) {
      const place = [...at, 'picture'];
      const character = look(
        picture.character,
        ids.characters,
        'character',
        GLOSSARY,
        [...place, 'character'],
        problems,
      );
      checkStates([picture.state], character, GLOSSARY, () => [...place, 'state'], problems);
    }
    for (const language of text.keys()) {
      if (others.includes(language)) continue;
      const expected = 'a language that key.json lists, and not the first';
      problems.wrong(GLOSSARY, [...at, 'text', language], 'language', expected, language);
    }
  });
}
