// What a person says of a character, by id: the shape that files, links, the session and the command share.
import { type Answer, SURENESS, type Sureness } from '../engine/index.ts';
import { printPath } from './path.ts';
import type { PreparedKey } from './prepared.ts';
import type { Character, Month } from './types.ts';
import { toCanonical, type Unit } from './units.ts';

export type KeyAnswer =
  | { readonly character: string; readonly states: readonly string[]; readonly sureness: Sureness }
  | { readonly character: string; readonly value: number; readonly unit: Unit; readonly sureness: Sureness }
  | { readonly character: string; readonly skipped: true };

/** Everything the engine is asked about: month, kind of observer, and answers in the order given. */
export interface Inquiry {
  readonly month: Month;
  readonly observer: string;
  readonly answers: readonly KeyAnswer[];
}

/** Names what is wrong with an inquiry from outside: every fault with the path to it. */
export class AnswersError extends Error {
  override readonly name = 'AnswersError';
  readonly problems: readonly { readonly path: string; readonly expected: string }[];
  constructor(problems: AnswersError['problems']) {
    super(problems.map(({ path, expected }) => `${path}: expected ${expected}`).join('\n'));
    this.problems = problems;
  }
}

const SURE = Object.keys(SURENESS) as Sureness[];
const SURE_WORDS = SURE.join(', ');
const UNITS: readonly Unit[] = ['mm', 'cm', 'm', 'in', 'ft'];
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Turns loose content (a parsed answers file) into a strict inquiry.
 * @throws AnswersError with every fault, not only the first.
 */
export function readInquiry(prepared: PreparedKey, content: unknown): Inquiry {
  const problems: { path: string; expected: string }[] = [];
  const fault = (path: string, expected: string) => {
    problems.push({ path, expected });
  };
  if (!isRecord(content))
    throw new AnswersError([{ path: '(file)', expected: 'an object with month, observer and answers' }]);
  for (const name of Object.keys(content))
    if (!['month', 'observer', 'answers'].includes(name)) fault(printPath([name]), 'only month, observer and answers');
  const { month, observer = 'novice', answers } = content;
  if (!Number.isInteger(month) || (month as number) < 1 || (month as number) > 12) fault('month', 'a month, 1 to 12');
  const observers = [...prepared.key.observers.keys()];
  if (typeof observer !== 'string' || !observers.includes(observer))
    fault('observer', `one of ${observers.join(', ')}`);
  if (!Array.isArray(answers)) fault('answers', 'a list of answers');
  const read = Array.isArray(answers)
    ? answers.map((answer, i) =>
        readAnswer(prepared, answer, (below, expected) => fault(`answers[${i}]${below}`, expected)),
      )
    : [];
  const firstAt = new Map<string, number>();
  read.forEach((answer, i) => {
    if (answer === undefined) return;
    const before = firstAt.get(answer.character);
    if (before !== undefined)
      fault(
        `answers[${i}].character`,
        `one answer for each character, but answers[${before}] has ${answer.character} too`,
      );
    else firstAt.set(answer.character, i);
  });
  if (problems.length > 0) throw new AnswersError(problems);
  return { month: month as Month, observer: observer as string, answers: read as KeyAnswer[] };
}

type Fault = (below: string, expected: string) => void;

function readAnswer(prepared: PreparedKey, answer: unknown, fault: Fault): KeyAnswer | undefined {
  if (!isRecord(answer)) return void fault('', 'an object with a character and states, value or skipped');
  const character = typeof answer.character === 'string' ? prepared.characterIndex.get(answer.character) : undefined;
  if (character === undefined) return void fault('.character', `the id of a character of ${prepared.key.id}`);
  const known = prepared.key.characters[character] as Character;
  const given = ['states', 'value', 'skipped'].filter((name) => Object.hasOwn(answer, name));
  if (given.length !== 1) return void fault('', 'exactly one of states, value and skipped');
  for (const name of Object.keys(answer))
    if (!['character', 'states', 'value', 'unit', 'skipped', 'sureness'].includes(name))
      fault(
        printPath(['answer', name]).slice('answer'.length),
        'only character, states, value, unit, skipped and sureness',
      );
  if (given[0] === 'skipped') {
    if (answer.skipped !== true) return void fault('.skipped', 'true');
    return { character: known.id, skipped: true };
  }
  const sureness = answer.sureness ?? 'sure';
  if (!SURE.includes(sureness as Sureness)) fault('.sureness', `one of ${SURE_WORDS}`);
  return given[0] === 'value'
    ? readValue(known, answer, sureness as Sureness, fault)
    : readStates(known, answer.states, sureness as Sureness, fault);
}

function readValue(
  known: Character,
  answer: Record<string, unknown>,
  sureness: Sureness,
  fault: Fault,
): KeyAnswer | undefined {
  const { value, unit = known.unit } = answer;
  if (known.kind !== 'measure') return void fault('.value', `states, since ${known.id} is not a measure`);
  if (typeof value !== 'number' || !Number.isFinite(value) || value <= 0 || value > 1e6)
    return void fault('.value', 'a size above zero, up to a million');
  const allowed = known.unit === 'count' ? ['count'] : UNITS;
  if (!allowed.includes(unit as Unit)) return void fault('.unit', `one of ${allowed.join(', ')}`);
  return { character: known.id, value, unit: unit as Unit, sureness };
}

function readStates(known: Character, states: unknown, sureness: Sureness, fault: Fault): KeyAnswer | undefined {
  if (!Array.isArray(states) || states.length === 0) return void fault('.states', 'a list of at least one state');
  const ids = known.states.map((state) => state.id);
  states.forEach((state, i) => {
    if (!ids.includes(state as string)) fault(`.states[${i}]`, `one of ${ids.join(', ')}`);
    else if (states.indexOf(state) !== i) fault(`.states[${i}]`, 'each state once');
  });
  return { character: known.id, states: states as string[], sureness };
}

/** The engine's form of the answers; what was skipped is no answer. */
export function engineAnswers(prepared: PreparedKey, answers: readonly KeyAnswer[]): Answer[] {
  return answers.flatMap((answer): Answer[] => {
    if ('skipped' in answer) return [];
    const index = prepared.characterIndex.get(answer.character) as number;
    const character = prepared.key.characters[index] as Character;
    const { sureness } = answer;
    if ('value' in answer)
      return [{ character: index, value: toCanonical(answer.value, answer.unit, character.unit as Unit), sureness }];
    return [
      {
        character: index,
        states: answer.states.map((id) => character.states.findIndex((state) => state.id === id)),
        sureness,
      },
    ];
  });
}
