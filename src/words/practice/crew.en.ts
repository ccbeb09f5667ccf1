import type { CrewWords } from './crew.words.ts';

const plural = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];

export const crew: CrewWords = {
  heading: 'The crew',
  intro: 'Open the files that your technicians saved in the practice room. They are read here and stay on this device.',
  open: 'Open practice files',
  drop: 'or drop them here',
  examples: (n) => `Open ${NUMBERS[n] ?? n} example ${n === 1 ? 'file' : 'files'}`,
  notFetched: (address) => `${address} could not be fetched. Check the connection and try again.`,
  day: 'As of',
  dayHelp: 'Looks after this day are not counted.',
  people: 'Who is here',
  seen: (looks, last) =>
    last === undefined ? plural(looks, 'look', 'looks') : `${plural(looks, 'look', 'looks')}, the last on ${last}`,
  remove: (name) => `Take ${name} out`,
  removed: (name) => `${name} is taken out. The file itself is as it was.`,
  opened: (n) => `${plural(n, 'file', 'files')} opened.`,
  nobody: 'No file is open yet.',
  otherKey: (name, key) => `The file of ${name} is of another key (${key}) and is not counted.`,
  conflicts: (n) =>
    `${plural(n, 'look is', 'looks are')} told differently by two files of one person. The later counts.`,
  ready: 'Who is ready for what',
  readySays: 'Tap a cell to read which rule decided.',
  readyOf: (n, all) => `ready for ${n} of ${all}`,
  teach: 'What to teach next week',
  teachSays:
    'First where natives were called invaders, then what most surely goes wrong. All looks of all people together.',
  teachNone: 'Nothing stands out. Let them practise on.',
  wrongOf: (wrong, n) => `${wrong} of ${n} wrong`,
  likely: (low, high) => `most likely ${low} to ${high} of the time`,
  alarms: (n) => plural(n, 'time a native was called an invader', 'times a native was called an invader'),
  readsWrong: (character) => `Reading: ${character}`,
  missed: (plant) => `${plant}, whatever it was taken for`,
  avoid: 'Characters your crew misreads more often than the key believes',
  avoidSays: 'The stroke is what the key counts on. The line is where the truth most likely lies, 19 times in 20.',
  avoidNone: (least) =>
    `None, as far as these looks can tell. Nothing is said of a character read fewer than ${least} times.`,
  keySays: 'The key counts on',
  agree: 'Whether two say the same',
  agreeSays:
    'Of the same specimen, asked in the same way. Kappa is agreement beyond chance: 0 is chance alone, 1 is always. Two can agree and both be wrong.',
  agreeNone: 'No two of them have done the same task yet. Two who sit the same final test have.',
  agreeAlone: 'This takes the files of two people.',
  nothingShared: (pairs) => `Nothing done by both yet: ${pairs}`,
  pair: (one, other) => `${one} and ${other}`,
  two: 'Two people',
  shared: 'Tasks of both',
  same: 'Said the same',
  beyondChance: 'Kappa, and where it most likely lies',
  noKappa: 'cannot be told: both used one name throughout',
  cover: 'Whether two judge cover alike',
  coverSays:
    'What the first says less what the second says, in percent of the ground. 95 % of differences are expected between the limits.',
  difference: 'Difference in the mean',
  limits: 'Limits',
  points: (n) => `${n} points`,
  tooFew: 'too few to tell',
  take: 'Take it with you',
  csvPlants: 'Save a table: one line for each person and plant',
  csvAttempts: 'Save a table: one line for each look',
  print: 'Print this page',
  unnamed: (n) => `Somebody ${n}`,
  learn: 'To let the key learn from these looks, put the files into a folder and run:',
};
