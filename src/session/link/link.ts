// A trail as the value of one parameter of a web address: short, of signs that no address escapes, read strictly.
import type { KeyAnswer, Month, Sureness, Unit } from '../../key/index.ts';
import { printPath } from '../../key/path.ts';
import type { Carried } from '../restore.ts';
import type { Snapshot } from '../state.ts';
import type { Turn } from '../walk.ts';

/** What a link carries. The answers' form is in order; whether the key knows them, restoreTrail says. */
export interface Link extends Carried {
  /** Id of the key. */
  readonly key: string;
  /** BCP 47 tag of the language it was read in. */
  readonly language: string;
  readonly answers: readonly KeyAnswer[];
  readonly turns: readonly Turn[];
}

/** A link's text that is none, or was cut or changed: what is wrong, and which of its fields. */
export class LinkError extends Error {
  override readonly name = 'LinkError';
  constructor(
    readonly path: string,
    readonly expected: string,
  ) {
    super(`${path}: expected ${expected}`);
  }
}

const FORM = '1';
/** Fields are parted by the first, what stands in one of them by the second; no id of a key holds either. */
const FIELD = '_';
const PART = '.';
/** Longest text that is read, and most answers in it (ours). */
const MOST_SIGNS = 8000;
const MOST_ANSWERS = 400;

/** How sure, for states in small letters and for a size in capitals; `x` is skipped. */
const SIGNS: Readonly<Record<Sureness, string>> = { sure: 's', think: 't', guess: 'g' };
const SURE = new Map(Object.entries(SIGNS).map(([sureness, sign]) => [sign, sureness as Sureness]));
const SKIPPED = 'x';
const UNITS: ReadonlySet<string> = new Set<Unit>(['mm', 'cm', 'm', 'in', 'ft', 'count']);

const ID = /^[a-z0-9][a-z0-9-]{0,79}$/;
const VERSION = /^[0-9A-Za-z][0-9A-Za-z.+-]{0,39}$/;
const LANGUAGE = /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]{1,8})*$/;
const SIZE = /^\d+(?:\.\d+)?(?:e[+-]?\d+)?$/;

type Told = Pick<Snapshot, 'prepared' | 'month' | 'observer' | 'way' | 'trail' | 'turns'>;

/** Of a page that says no language in order: undetermined (BCP 47). */
const UNDETERMINED = 'und';

/** The session as text. The seconds that looks took stay behind: they say more of the person than of the plant. */
export function writeLink({ prepared, month, observer, way, trail, turns }: Told, language: string): string {
  const { id, version } = prepared.key;
  const said = turns.map(({ couplet, lead }) => `${couplet}-${lead ?? SKIPPED}`).join(PART);
  const tag = LANGUAGE.test(language) ? language : UNDETERMINED;
  return [FORM, id, version, tag, month, observer, way[0], said, ...trail.map(writeAnswer)].join(FIELD);
}

function writeAnswer(answer: KeyAnswer): string {
  if ('skipped' in answer) return [answer.character, SKIPPED].join(PART);
  const sign = SIGNS[answer.sureness];
  return 'value' in answer
    ? [answer.character, sign.toUpperCase(), answer.unit, answer.value].join(PART)
    : [answer.character, sign, ...answer.states].join(PART);
}

/** @throws LinkError */
export function readLink(text: string): Link {
  if (text.length > MOST_SIGNS) throw new LinkError('(link)', `at most ${MOST_SIGNS} signs`);
  const [form, key = '', version = '', language = '', month, observer = '', way, said = '', ...answers] =
    text.split(FIELD);
  if (form !== FORM) throw new LinkError('form', FORM);
  const check = (good: boolean, path: string, expected: string) => {
    if (!good) throw new LinkError(path, expected);
  };
  check(ID.test(key), 'key', 'the id of a key');
  check(VERSION.test(version), 'version', 'the version of a key');
  check(LANGUAGE.test(language), 'language', 'a language tag');
  check(/^(?:[1-9]|1[0-2])$/.test(month ?? ''), 'month', '1 to 12');
  check(ID.test(observer), 'observer', 'the id of a kind of observer');
  check(way === 'c' || way === 'f', 'way', 'c or f');
  check(answers.length <= MOST_ANSWERS, 'answers', `at most ${MOST_ANSWERS} answers`);
  return {
    key,
    version,
    language,
    month: Number(month) as Month,
    observer,
    way: way === 'c' ? 'couplets' : 'free',
    took: [],
    turns: said === '' ? [] : said.split(PART).map(readTurn),
    answers: answers.map(readAnswer),
  };
}

function readTurn(text: string, index: number): Turn {
  const [, couplet, lead] = /^(\d{1,6})-(\d{1,3}|x)$/.exec(text) ?? [];
  if (couplet === undefined) throw new LinkError(printPath(['turns', index]), 'a couplet and its lead, such as 3-0');
  return { couplet: Number(couplet), ...(lead === SKIPPED ? {} : { lead: Number(lead) }) };
}

function readAnswer(text: string, index: number): KeyAnswer {
  const [character = '', sign = '', ...rest] = text.split(PART);
  const fail = (expected: string) => new LinkError(printPath(['answers', index]), expected);
  if (!ID.test(character)) throw fail('the id of a character first');
  if (sign === SKIPPED && rest.length === 0) return { character, skipped: true };
  const sureness = SURE.get(sign.toLowerCase());
  if (sureness === undefined) throw fail('how sure it was, or x');
  if (sign === sign.toLowerCase()) {
    if (rest.length === 0 || !rest.every((state) => ID.test(state))) throw fail('ids of states');
    return { character, states: rest, sureness };
  }
  const [unit = '', ...digits] = rest;
  const value = digits.join(PART);
  if (!UNITS.has(unit) || !SIZE.test(value)) throw fail('a unit and a size');
  return { character, value: Number(value), unit: unit as Unit, sureness };
}
