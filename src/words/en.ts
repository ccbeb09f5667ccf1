// English, the language that is always there.
import { oddsOf } from './odds.ts';
import type { Words } from './words.ts';

const odds = (probability: number): string => {
  const { kind, of, number } = oddsOf(probability);
  const words = `${number} in ${of}`;
  return kind === 'about' ? `about ${words}` : kind === 'more-than' ? `more than ${words}` : `less than ${words}`;
};
const list = (type: 'conjunction' | 'disjunction') => (items: readonly string[]) =>
  new Intl.ListFormat('en', { type }).format(items);

export const en: Words = {
  language: 'en',
  common: {
    loading: 'The key is on its way.',
    failed: 'The key could not be opened.',
    retry: 'Try again',
    close: 'Close',
    change: 'Change',
    remove: 'Take back',
    source: 'Source',
    memory: 'From memory, not read in a source',
    months: {
      1: 'January',
      2: 'February',
      3: 'March',
      4: 'April',
      5: 'May',
      6: 'June',
      7: 'July',
      8: 'August',
      9: 'September',
      10: 'October',
      11: 'November',
      12: 'December',
    },
    status: { native: 'native', introduced: 'introduced', invasive: 'invasive' },
    part: {
      whole: 'Whole plant',
      place: 'Where it stands',
      leaf: 'Leaf',
      collar: 'Where the blade leaves the stem',
      stem: 'Stem',
      flower: 'Flowers',
      fruit: 'Fruit and seed',
      sap: 'Sap',
      underground: 'Below the ground',
    },
    odds,
    list: list('conjunction'),
    or: list('disjunction'),
  },
  key: { month: 'Month', observer: 'Who is looking', restart: 'Start with a new plant' },
  question: { number: (n) => `Question ${n}` },
  trail: { heading: 'What you have seen' },
  standing: { heading: 'What it could be' },
  verdict: { heading: 'What may be said' },
  guidance: {
    topic: {
      harm: 'What it does to a stream',
      leave: 'Why to leave it',
      benefit: 'What good it does',
      spread: 'How it spreads',
      dont: 'Do not',
      do: 'Do',
      when: 'When',
      who: 'Who can help',
      safety: 'Keep safe',
      disposal: 'What to do with pieces',
      followup: 'For how long',
      legal: 'What the law says',
      photos: 'Photographs that help',
    },
  },
  names: { label: 'Look up a name' },
};
