// What a person answered, in words.
import { type Character, formatMeasure, type KeyAnswer, systemOf } from '../../key/index.ts';
import { asClause } from '../../words/clause.ts';
import type { Words } from '../../words/index.ts';

/** How the words of an answer are made: the interface's words, the key's sentences, and the units asked for. */
export interface Saying {
  readonly words: Words;
  readonly language: string;
  readonly units: 'us' | 'metric';
  readonly say: (sentence: string) => string;
}

/** The states ticked, or the number as it was typed; empty for what was skipped. */
export function said(character: Character, answer: KeyAnswer, { words, language, units, say }: Saying): string {
  if ('skipped' in answer) return '';
  if ('value' in answer)
    return formatMeasure(answer.value, answer.unit, { system: systemOf(answer.unit) ?? units, locale: language });
  const labels = answer.states.flatMap((id) => {
    const state = character.states.find((one) => one.id === id);
    return state ? [say(state.label)] : [];
  });
  // A single word may be a name, as July is, and stays as it is.
  return words.common.or(labels.map((label, i) => (i > 0 && label.includes(' ') ? asClause(label, language) : label)));
}

/** The same, for labels within a line; the names of months keep the letter that their language gives them. */
export function clauses(saying: Saying): Saying {
  const { words, language } = saying;
  const months = Object.values(words.common.months);
  return {
    ...saying,
    say: (sentence) => {
      const label = saying.say(sentence);
      return months.includes(label) ? label : asClause(label, language);
    },
  };
}
