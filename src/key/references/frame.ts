import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';
import { checkUnique } from './ids.ts';

/** key.json and the languages. */
export function checkFrame(key: Key, problems: Problems): void {
  const { settled, leaning, nativesSettled, nativesLeaning } = key.thresholds;
  if (!(leaning < settled)) {
    problems.wrong('key.json', ['thresholds', 'leaning'], 'order', `less than settled (${settled})`, leaning);
  }
  if (!(nativesSettled <= nativesLeaning)) {
    problems.wrong(
      'key.json',
      ['thresholds', 'nativesSettled'],
      'order',
      `at most nativesLeaning (${nativesLeaning})`,
      nativesSettled,
    );
  }
  checkUnique(key.languages, 'key.json', (i) => ['languages', i], problems);
  const [first, ...others] = key.languages;
  for (const language of key.text.keys()) {
    if (others.includes(language)) continue;
    const expected =
      language === first ? 'no translation into the language of the files' : 'a language that key.json lists';
    problems.wrong(`text/${language}.json`, ['language'], 'language', expected, language);
  }
}
