// Syllables of a Spanish word. Its spelling says them: a syllable is a vowel, or a diphthong or triphthong.

const STRONG = 'aeoáéóíú';

/**
 * At least 1. Two strong vowels are two syllables (ma-re-a), as are a strong one and an i or u with an accent (rí-o,
 * ra-íz); a weak one joins its neighbour (ha-cia, ciu-dad); an h between them changes nothing (prohi-bir). The u of que,
 * qui, gue and gui is not heard, and y is a vowel at a word's end. From the rules of the Spanish academies' spelling
 * (from memory).
 */
export function spanishSyllables(word: string): number {
  const letters = word
    .toLowerCase()
    .normalize('NFC')
    .replace(/[^a-záéíóúüñ]/g, '')
    .replace(/([qg])u(?=[eiéí])/g, '$1')
    .replace(/y$/, 'i')
    .replace(/([aeiouáéíóúü])y(?=s$)/, '$1i')
    .replace(/(?<=[aeiouáéíóúü])h(?=[aeiouáéíóúü])/g, '');
  let count = 0;
  for (const [vowels] of letters.matchAll(/[aeiouáéíóúü]+/g)) {
    // Each strong vowel carries a syllable; weak ones lean on it. A run of weak ones alone is one.
    const strong = [...vowels].filter((vowel) => STRONG.includes(vowel)).length;
    count += Math.max(1, strong);
  }
  return Math.max(1, count);
}
