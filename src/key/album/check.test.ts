import { describe, expect, test } from 'vitest';
import { edited, smallKey } from '../../../tests/support/small-key.ts';
import { checkKey } from '../check.ts';
import { readKey } from '../folder.ts';
import { Problems } from '../problem.ts';
import { readGlossary } from './glossary.ts';
import type { Listed, LooseTerm } from './loose.ts';

const key = readKey(smallKey());
const said = {
  term: 'caña',
  words: ['caña'],
  plain: 'Un tallo hueco.',
  definition: 'Un culmo.',
  where: 'En la orilla.',
};
const cane: LooseTerm = {
  ...{ id: 'cane', term: 'cane', words: ['cane', 'canes'], plain: 'A stiff stem.', definition: 'A woody culm.' },
  ...{ part: 'stem', where: 'At the bank.', source: ['memory'], picture: { character: 'growth-form', state: 'grass' } },
  text: { es: said },
};
const term = (word: string): LooseTerm => ({
  ...cane,
  id: word.replaceAll(' ', '-').toLowerCase(),
  term: word,
  words: [word],
});

function read(terms: readonly object[], of = key) {
  const problems = new Problems();
  const glossary = readGlossary(JSON.stringify({ terms }), of, problems);
  return { glossary, problems: problems.list };
}

describe('a glossary', () => {
  test('is read with its translations by language', () => {
    const { glossary, problems } = read([cane]);
    expect(problems).toEqual([]);
    expect(glossary).toEqual([{ ...cane, text: new Map([['es', said]]) }]);
  });

  test.each([
    ['a source that is none', { source: ['nowhere'] }, 'terms[0].source[0]', 'unknown-id'],
    ['no source', { source: [] }, 'terms[0].source', 'length'],
    [
      'a character that is none',
      { picture: { character: 'x', state: 'grass' } },
      'terms[0].picture.character',
      'unknown-id',
    ],
    [
      'a state that is none',
      { picture: { character: 'growth-form', state: 'x' } },
      'terms[0].picture.state',
      'unknown-id',
    ],
    ['a language that is none', { text: { fr: said } }, 'terms[0].text.fr', 'language'],
    ['its own language again', { text: { en: said } }, 'terms[0].text.en', 'language'],
    ['half a translation', { text: { es: { ...said, plain: undefined } } }, 'terms[0].text.es.plain', 'missing-field'],
    ['a part that is none', { part: 'elbow' }, 'terms[0].part', 'value'],
    ['no words', { words: [] }, 'terms[0].words', 'length'],
    ['a field of no use', { colour: 'red' }, 'terms[0].colour', 'unknown-field'],
  ])('with %s is refused where it stands', (_, change, path, code) => {
    const { glossary, problems } = read([{ ...cane, ...change }]);
    expect(glossary).toBeUndefined();
    expect(problems).toMatchObject([{ file: 'glossary.json', path, code, severity: 'error' }]);
  });

  test('has each term once', () => {
    expect(read([cane, cane]).problems).toMatchObject([{ path: 'terms[1].id', code: 'duplicate-id' }]);
  });
});

describe('a check of the glossary', () => {
  const missing = (terms: readonly LooseTerm[], of = key) =>
    checkKey(of, { glossary: read(terms, of).glossary ?? [] })
      .filter(({ code }) => code === 'no-term')
      .map(({ path, found }) => `${path} ${found}`);

  test('tells every trade term of characters and states that nothing explains', () => {
    const trades = key.characters.flatMap(({ trade, states }) => [trade, ...states.flatMap((one) => one.trade ?? [])]);
    expect(missing([])).toHaveLength(trades.length);
    expect(missing([])[0]).toBe('characters[0].trade "Growth form"');
    expect(missing([])).toContain('characters[0].states[0].trade "cane or reed"');
  });

  test('takes one explained word in a term for enough, whatever its case, as a whole word', () => {
    expect(missing([term('growth form')])).not.toContain('characters[0].trade "Growth form"');
    expect(missing([term('FORM')])).not.toContain('characters[0].trade "Growth form"');
    expect(missing([term('row')])).toContain('characters[0].trade "Growth form"');
    expect(missing([cane])).not.toContain('characters[0].states[0].trade "cane or reed"');
  });

  test('asks for no word about bare figures, and says nothing where there is no glossary', () => {
    const figures = readKey(edited(['characters.json', 'characters[0].states[0].trade', '> 3.6']));
    expect(missing([], figures).join()).not.toContain('3.6');
    expect(checkKey(key).filter(({ code }) => code === 'no-term')).toEqual([]);
  });

  test('tells terms that lack a language of the key', () => {
    const { text: _, ...bare } = cane;
    const told = checkKey(key, { glossary: read([bare, term('reed')]).glossary ?? [] });
    expect(told.filter(({ file }) => file === 'glossary.json')).toMatchObject([
      { path: 'terms', code: 'untranslated', expected: 'every term in es', found: 'without it 1: cane' },
    ]);
  });

  test('counts a source that only the glossary names as used', () => {
    const unused = (options: Parameters<typeof checkKey>[1]) =>
      checkKey(withSource, options).filter(({ code, found }) => code === 'unused-source' && found.includes('flora'));
    const sources = JSON.parse(smallKey().get('sources.json') ?? '');
    const flora = { id: 'a-flora', title: 'A flora', institution: 'Nobody', kind: 'flora' };
    const withSource = readKey(edited(['sources.json', 'sources', [...sources.sources, flora]]));
    expect(unused({})).toHaveLength(1);
    expect(unused({ glossary: read([{ ...cane, source: ['a-flora'] }], withSource).glossary ?? [] })).toEqual([]);
  });
});

describe('a check of the pictures', () => {
  const drawn = (character: string, state: string, alt: Listed['alt'] = { en: 'A.', es: 'Un.' }): Listed => ({
    ...{ file: `${character}/${state}.svg`, shows: { character, state }, alt },
  });
  const all = key.characters.flatMap(({ id, states }) => states.map((state) => drawn(id, state.id)));
  const told = (pictures: readonly Listed[]) =>
    checkKey(key, { pictures: { file: '../m.json', manifest: { licence: 'x', credit: 'x', pictures } } })
      .filter(({ code }) => ['no-picture', 'unknown-picture', 'no-alt'].includes(code))
      .map(({ file, path, expected, found, severity }) => `${severity} ${file} ${path}: ${expected}; ${found}`);

  test('finds nothing where every state is shown, with words in every language', () => {
    expect(told(all)).toEqual([]);
  });

  test('tells the states without a picture, character by character', () => {
    expect(told(all.filter(({ file }) => !/growth-form.(grass|leafy)|height.head/.test(file)))).toEqual([
      'warning characters.json characters[0].states: a picture of each of the 3 states of growth-form; 2 without: grass, leafy-herb',
      'warning characters.json characters[2].classes: a picture of each of the 3 states of height; 1 without: head',
    ]);
  });

  test('tells pictures of what the key does not have', () => {
    const leaf: Listed = { file: 'a.jpg', shows: { taxon: 'nobody', organ: 'leaf' }, alt: { en: 'A.', es: 'Un.' } };
    expect(told([...all, drawn('height', 'moon'), leaf])).toEqual([
      `warning ../m.json pictures[${all.length}].shows: a state of a character of the key; "height/moon"`.replaceAll(
        '"',
        '',
      ),
      `warning ../m.json pictures[${all.length + 1}].shows: a taxon of the key; nobody`,
    ]);
  });

  test('tells pictures without words in a language of the key', () => {
    expect(told([drawn('growth-form', 'grass', { en: 'A.' }), ...all])).toEqual([
      'warning ../m.json pictures: alternative text in es for every picture; none for 1: growth-form/grass.svg (pictures[0])',
    ]);
  });
});
