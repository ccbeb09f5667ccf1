// English words of the first question and of what frames it. They come with the first script, and hold until all words are there.
import { oddsOf } from './odds.ts';
import type { FirstWords } from './words.ts';

export const odds = (probability: number): string => {
  const { kind, of, number } = oddsOf(probability);
  const words = `${number} in ${of}`;
  return kind === 'about' ? `about ${words}` : kind === 'more-than' ? `more than ${words}` : `less than ${words}`;
};
const list = (type: 'conjunction' | 'disjunction') => (items: readonly string[]) =>
  new Intl.ListFormat('en', { type }).format(items);

export const first: FirstWords = {
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
  key: {
    mistakes: 'This key has mistakes in it and cannot be used. Whoever keeps the key needs to see this:',
    moreMistakes: (n) => `and ${n} more`,
    missing: 'A part of this page did not come. Check your connection.',
    restart: 'Start with a new plant',
    restartSure: 'Press again: your answers will be gone',
  },
  question: {
    number: (n) => `Question ${n}`,
    again: (n) => `Question ${n} again`,
    help: 'How to look',
    trade: (words) => `Botanists call this: ${words}`,
    careful: 'Careful',
    dig: 'Do not dig or pull. Answer only if the water has already washed it bare.',
    ticked: (n) => (n === 0 ? 'Tick all that could be right.' : n === 1 ? '' : `It could be any of these ${n}.`),
    showAll: (n) => `Show all ${n}`,
    under: (size) => `under ${size}`,
    between: (from, to) => `${from} to ${to}`,
    over: (size) => `over ${size}`,
    type: 'Type a number instead',
    length: 'Length',
    count: 'Number',
    unit: 'Unit',
    unitName: { mm: 'mm', cm: 'cm', m: 'm', in: 'inches', ft: 'feet' },
    wrongLength: (unit) => `Enter a length in ${unit}, for example 3.5`,
    wrongCount: 'Enter a number, for example 6',
    cannotTell: 'Can’t tell',
    howSure: 'How sure are you?',
    sureness: { sure: 'Sure', think: 'I think so', guess: 'A guess' },
    keep: 'Keep as it was',
    back: 'Back to the next question',
    else: 'Look at something else',
    mark: {
      skipped: 'not seen',
      hidden: (month) => `not to be seen in ${month}`,
      dig: 'below the ground: only if it lies bare',
    },
    settled: 'That is enough for a verdict.',
    onward: 'Look at more features',
    exhausted: 'There is nothing more in this key that would help.',
  },
  couplet: {
    which: 'Which is more like your plant?',
    also: (clauses) => `Also: ${clauses}`,
    usually: (clause) => `usually ${clause}`,
    else: 'Something else',
    ways: 'How to go on',
    way: { couplets: 'Step by step', free: 'Choose what to look at' },
    out: (names) => `Step by step you have come to ${names}.`,
  },
};
