// One plant on one page: what it is, how to be sure, what to do and not to do, and whom to ask.
import {
  type Key,
  type Lookalike,
  languageFor,
  type Source,
  type Standing,
  type Statement,
  type Taxon,
  type Topic,
  translate,
} from '../../key/index.ts';
import type { Words } from '../../words/index.ts';
import { linesOf, Room } from './room.ts';
import { type HandoutWords, handoutWords } from './words.ts';

/** Whom to ask, as the page's owner gives it. */
export interface Contact {
  readonly phone?: string;
  readonly mail?: string;
}

export interface HandoutOptions {
  /** BCP 47 tag; the key's own first language serves whoever asks for one that it has not. */
  readonly language: string;
  readonly words: Words;
  readonly contact?: Contact;
}

export interface HandoutName {
  readonly common: string;
  readonly scientific: string;
  readonly status: Standing;
}

export interface HandoutTopic {
  readonly topic: Topic;
  readonly heading: string;
  /** Each with the numbers, from 1, of the sources that bear it out. */
  readonly said: readonly { readonly text: string; readonly sources: readonly number[] }[];
}

export interface Handout {
  /** Of the sentences; that of the words is in `words`. */
  readonly language: string;
  readonly words: HandoutWords;
  readonly name: HandoutName;
  /** What its standing is called. */
  readonly status: Readonly<Record<Standing, string>>;
  readonly alike: readonly { readonly name: HandoutName; readonly tells: readonly string[] }[];
  /** Look-alikes that found no room. */
  readonly moreAlike: number;
  readonly topics: readonly HandoutTopic[];
  readonly cautions: readonly string[];
  readonly contact: Contact;
  readonly sources: readonly Source[];
  readonly edition: string;
}

/** Look-alikes with room on the page, and what is said of each (ours). */
const MOST_ALIKE = 3;
const MOST_TELLS = 2;
/** About as long as the two names and the standing of a look-alike. */
const NAMES = ' '.repeat(45);

/** What goes on the page, in the order in which it is read. How it spreads, the law and photographs stay with the key. */
const TOPICS_OF: Readonly<Record<Standing, readonly Topic[]>> = {
  native: ['leave', 'benefit', 'dont', 'do', 'when', 'safety', 'who'],
  introduced: ['harm', 'dont', 'do', 'when', 'safety', 'disposal', 'who'],
  invasive: ['harm', 'dont', 'do', 'when', 'safety', 'disposal', 'followup', 'who'],
};
/** Where there is room; of the other topics nothing is left out. What helps most comes first (ours). */
const WITH_ROOM: readonly Topic[] = ['leave', 'disposal', 'followup', 'benefit', 'harm'];

/** The hand-out on a plant of the key; a plant without guidance gets one that says to leave it and ask. Pure. */
export function handoutOf(key: Key, taxon: Taxon, { language: wanted, words, contact = {} }: HandoutOptions): Handout {
  const language = languageFor(key, wanted);
  const say = (sentence: string) => translate(key, language, sentence);
  const own = handoutWords(words.language);
  const taxa = new Map(key.taxa.map((one) => [one.id, one]));
  const pairs = key.lookalikes.filter(({ taxa: both }) => both.includes(taxon.id));
  const guidance = key.guidance.get(taxon.id);
  const sources: Source[] = [];

  function said({ text, source }: Statement): HandoutTopic['said'][number] {
    const found = source.flatMap((id) => key.sources.get(id) ?? []);
    for (const one of found) if (!sources.includes(one)) sources.push(one);
    return { text: say(text), sources: found.map((one) => sources.indexOf(one) + 1).sort((a, b) => a - b) };
  }

  const room = new Room();
  const cautions = key.cautions.map(say);
  const statementsOf = (topic: Topic) => (guidance?.statements ?? []).filter((one) => one.topic === topic);
  const linesFor = (topic: Topic) => linesOf(statementsOf(topic).map(({ text }) => say(text)));
  const shown = [...pairs].sort((a, b) => weight(b, taxon, taxa) - weight(a, taxon, taxa)).slice(0, MOST_ALIKE);
  const tells = shown.map((pair) => tellsOf(pair).map(say));
  const topics = TOPICS_OF[taxon.status];
  const must = topics.filter((topic) => !WITH_ROOM.includes(topic));
  room.take(linesOf(cautions));
  room.take(linesOf(tells.map(([first = '']) => `${NAMES}${first}`)));
  for (const topic of must) room.take(linesFor(topic));
  const fits = new Set(WITH_ROOM.filter((topic) => topics.includes(topic) && room.has(linesFor(topic))));
  const many = room.has(tells.length * 2.5);

  return {
    language,
    words: own,
    name: nameOf(key, taxon, language),
    status: words.common.status,
    alike: shown.flatMap((pair, i) => {
      const other = taxa.get(otherOf(pair, taxon));
      return other
        ? [{ name: nameOf(key, other, language), tells: (tells[i] ?? []).slice(0, many ? MOST_TELLS : 1) }]
        : [];
    }),
    moreAlike: Math.max(0, pairs.length - MOST_ALIKE),
    topics: topics.flatMap((topic) => {
      const statements = must.includes(topic) || fits.has(topic) ? statementsOf(topic) : [];
      return statements.length === 0
        ? []
        : [{ topic, heading: words.guidance.topic[topic], said: statements.map(said) }];
    }),
    cautions,
    contact,
    sources,
    edition: own.edition(say(key.title), key.version, dayIn(guidance?.reviewed ?? key.reviewed, own.language)),
  };
}

function nameOf(key: Key, { name, common, status }: Taxon, language: string): HandoutName {
  const shown = (common.get(language) ?? common.get(key.languages[0] ?? ''))?.[0] ?? name;
  return { common: shown, scientific: name, status };
}

const otherOf = ({ taxa: [a, b] }: Lookalike, { id }: Taxon): string => (a === id ? b : a);

/** What is always so first. */
const tellsOf = ({ separate }: Lookalike): string[] =>
  [...separate]
    .sort((a, b) => Number(b.how === 'always') - Number(a.how === 'always'))
    .slice(0, MOST_TELLS)
    .map(({ words }) => words);

/** An invader and a native that are taken for each other come first: those are the mistakes that do harm. */
function weight(pair: Lookalike, taxon: Taxon, taxa: ReadonlyMap<string, Taxon>): number {
  const other = taxa.get(otherOf(pair, taxon))?.status;
  const either = new Set([taxon.status, other]);
  if (!either.has('native')) return 0;
  return either.has('invasive') ? 2 : either.size - 1;
}

/** "November 25, 2026"; what is no date stays as it is written. */
function dayIn(day: string, language: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  return new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
