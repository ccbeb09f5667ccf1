import { describe, expect, test } from 'vitest';
import { countText, englishSyllables, fernandezHuerta, fleschEase, fleschKincaidGrade, MEASURES } from './index.ts';
import { spanishSyllables } from './spanish.ts';

describe('the formulas', () => {
  // A US health-research instrument page, archived 2009: a mean of 5.7 words a sentence and 1.02 syllables a word is
  // grade -1.3, and the lowest possible grade is -3.4, of one word of one syllable.
  test.each([
    [57, 10, 58.14, -1.3],
    [1, 1, 1, -3.4],
  ])('give the published grade of %d words, %d sentences and %d syllables', (words, sentences, syllables, grade) => {
    expect(fleschKincaidGrade({ words, sentences, syllables })).toBeCloseTo(grade, 1);
  });

  // Published, from memory: this sentence has an ease of 116.
  test('give the published ease of a sentence about a cat', () => {
    const counts = countText(['The cat sat on the mat.'], { syllables: englishSyllables });
    expect(counts).toEqual({ words: 6, sentences: 1, syllables: 6 });
    expect(fleschEase(counts)).toBeCloseTo(116, 0);
  });

  // Computed by hand from the constants as read: 100 words in 10 sentences.
  test('agree with a computation by hand', () => {
    expect(fleschEase({ words: 100, sentences: 10, syllables: 150 })).toBeCloseTo(69.785, 3);
    expect(fleschKincaidGrade({ words: 100, sentences: 10, syllables: 150 })).toBeCloseTo(6.01, 3);
    expect(fernandezHuerta({ words: 100, sentences: 10, syllables: 200 })).toBeCloseTo(76.64, 3);
  });

  test('in Spanish long sentences make a text harder, not easier', () => {
    const of = (sentences: number) => fernandezHuerta({ words: 100, sentences, syllables: 200 });
    expect(of(5)).toBeLessThan(of(10));
  });
});

// The four of the standard traps, then words of the key; divided by the academies' rules (from memory).
test.each([
  ['río', 2],
  ['hacia', 2],
  ['raíz', 2],
  ['orilla', 3],
  ['ciudad', 2],
  ['prohibir', 2],
  ['búho', 2],
  ['bahía', 3],
  ['quite', 2],
  ['guía', 2],
  ['guías', 2],
  ['pingüino', 3],
  ['agua', 2],
  ['leer', 2],
  ['aérea', 4],
  ['países', 3],
  ['arroyo', 3],
  ['muy', 1],
  ['y', 1],
  ['ribera', 3],
  ['especialista', 5],
  ['creciente', 3],
])('%s has %d syllables', (word, count) => {
  expect(spanishSyllables(word)).toBe(count);
  expect(spanishSyllables(word.toUpperCase())).toBe(count);
});

describe('a text is counted', () => {
  const one = { syllables: () => 1 };

  test('with each piece ending a sentence, and points within a number ending none', () => {
    expect(countText(['Ask first', 'It is 3.5 feet. Leave it!'], one)).toEqual({
      words: 8,
      sentences: 3,
      syllables: 8,
    });
  });

  test('with figures as one word of one syllable, and words joined by a hyphen as one word of all their syllables', () => {
    expect(countText(['1,100 water-primrose'], { syllables: englishSyllables })).toEqual({
      words: 2,
      sentences: 1,
      syllables: 1 + 4,
    });
  });

  test('without the names that are left out, the longer ones first', () => {
    const without = ['Phragmites australis', 'Phragmites australis subsp. australis'];
    expect(countText(['Leave Phragmites australis subsp. australis alone.'], { ...one, without })).toEqual({
      words: 2,
      sentences: 1,
      syllables: 2,
    });
  });

  test('as nothing when there is nothing to count', () => {
    expect(countText(['', ' ... '], one)).toEqual({ words: 0, sentences: 0, syllables: 0 });
    for (const measure of MEASURES.values()) expect(measure.of([])).toBeNaN();
  });
});
