import { matchLanguage } from './language.ts';
import type { Key } from './types.ts';

/** The language of the key that serves somebody who asks for `language`; the key's first when none does. */
export function languageFor(key: Pick<Key, 'languages'>, language: string): string {
  return matchLanguage(language, key.languages) ?? key.languages[0] ?? language;
}

/** A sentence of the key in the wanted language, or, where that has no translation, as the key has it. */
export function translate(key: Pick<Key, 'languages' | 'text'>, language: string, sentence: string): string {
  return key.text.get(languageFor(key, language))?.get(sentence) ?? sentence;
}
