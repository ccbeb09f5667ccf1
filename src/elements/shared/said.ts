// What a person answered, in words.
import { type Character, formatMeasure, type KeyAnswer } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';

/** How the words of an answer are made: the interface's words, the key's sentences, and the units asked for. */
export interface Saying {
  readonly words: Words;
  readonly language: string;
  readonly units: 'us' | 'metric';
  readonly say: (sentence: string) => string;
}

/** The states ticked, or the number typed; empty for what was skipped. */
export function said(character: Character, answer: KeyAnswer, { words, language, units, say }: Saying): string {
  if ('skipped' in answer) return '';
  if ('value' in answer) return formatMeasure(answer.value, answer.unit, { system: units, locale: language });
  const labels = answer.states.flatMap((id) => {
    const state = character.states.find((one) => one.id === id);
    return state ? [say(state.label)] : [];
  });
  return words.common.or(labels);
}
