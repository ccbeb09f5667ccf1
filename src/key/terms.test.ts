import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Term } from './album/types.ts';
import { termIn, termsIn } from './terms.ts';

const term = (id: string, words: readonly string[], es: readonly string[] = []): Term => ({
  id,
  term: id,
  words,
  plain: 'Plain.',
  definition: 'Trade.',
  part: 'leaf',
  where: 'Look.',
  source: ['memory'],
  text: new Map(es.length > 0 ? [['es', { term: es[0] ?? '', words: es, plain: '', definition: '', where: '' }]] : []),
});
const glossary = [
  term('ligule', ['ligule', 'ligules'], ['lígula', 'lígulas']),
  term('spike', ['spike', 'spikes']),
  term('spike-like', ['spike-like']),
  term('upland', ['upland']),
  term('facultative', ['facultative'], ['facultativa']),
  term('facultative-upland', ['facultative upland'], ['facultativa de terreno alto']),
];
/** "[ligule]" where a term was found. */
const marked = (sentence: string, language = 'en', earlier = '') =>
  termsIn(sentence, glossary, language, earlier)
    .map((piece) => (piece.term ? `[${piece.text}]` : piece.text))
    .join('');

describe('termsIn', () => {
  test.each([
    ['finds a term whatever its case', 'Ligule, or LIGULES?', '[Ligule], or LIGULES?'],
    ['takes whole words only', 'ligulelike spiked spike', 'ligulelike spiked [spike]'],
    ['takes a hyphened word as one', 'a spike-like head, not a spike', 'a [spike-like] head, not a [spike]'],
    ['takes the longest form first', 'FACU, facultative upland', 'FACU, [facultative upland]'],
    [
      'does not look inside what it has found',
      'facultative upland, then upland',
      '[facultative upland], then [upland]',
    ],
    ['needs nothing but space between the words of a form', 'facultative, upland', '[facultative], [upland]'],
    ['takes a line break for a space', 'facultative\n upland', '[facultative\n upland]'],
    ['marks each term where it stands first', 'a spike of spikes', 'a [spike] of spikes'],
    ['leaves a sentence without terms as it is', 'Look up.', 'Look up.'],
  ])('%s', (_, sentence, expected) => {
    expect(marked(sentence)).toBe(expected);
  });

  test('finds the forms of the language asked for, accents however they are written', () => {
    expect(marked('la lígula facultativa de terreno alto', 'es')).toBe('la [lígula] [facultativa de terreno alto]');
    expect(marked('la lígula'.normalize('NFD'), 'es-MX')).toBe(`la [${'lígula'.normalize('NFD')}]`);
    expect(marked('the ligule and the spike', 'es')).toBe('the ligule and the [spike]');
  });

  test('does not mark again what the same block said earlier', () => {
    expect(marked('a ligule and a spike', 'en', 'The ligules are long.')).toBe('a ligule and a [spike]');
  });

  test('an empty sentence has no piece, and an empty glossary leaves one', () => {
    expect(termsIn('', glossary, 'en')).toEqual([]);
    expect(termsIn('a ligule', [], 'en')).toEqual([{ text: 'a ligule' }]);
  });

  test('pieces joined are the sentence, none is empty, and no term comes twice, whatever is written', () => {
    const words = fc.constantFrom(
      'ligule',
      'Ligules',
      'spike-like',
      'spike',
      'facultative',
      'upland',
      'é',
      '’',
      '-',
      ' ',
      ', ',
      '\n',
    );
    const sentence = fc.oneof(
      fc.array(words, { maxLength: 14 }).map((all) => all.join('')),
      fc.string({ unit: 'binary' }),
    );
    fc.assert(
      fc.property(sentence, fc.constantFrom('en', 'es', 'fr'), (text, language) => {
        const pieces = termsIn(text, glossary, language);
        expect(pieces.map((piece) => piece.text).join('')).toBe(text);
        expect(pieces.every((piece) => piece.text !== '')).toBe(true);
        const found = pieces.flatMap((piece) => piece.term ?? []);
        expect(new Set(found).size).toBe(found.length);
      }),
    );
  });
});

test('termIn gives a term in the language asked for, or as the key has it', () => {
  const [ligule] = glossary as [Term];
  expect(termIn(ligule, 'es-US').term).toBe('lígula');
  expect(termIn(ligule, 'fr')).toBe(ligule);
});
