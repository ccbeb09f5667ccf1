// A range of sizes in plain words: "2 to 6 m, rarely 10 m".
import type { Range } from '../../key/index.ts';
import type { ComparisonWords } from '../../words/index.ts';
import type { Saying } from '../shared/said.ts';
import { lengthWords, show } from '../shared/sizes.ts';

/** The unit is said once where both ends have the same. */
export function rangeIn(range: Range, { words, language, units }: Saying, own: ComparisonWords): string {
  const { unit } = range;
  const shown = (value: number) => (unit === 'count' ? { value, unit } : show(value, unit, units));
  const say = (value: number, bare = false) => {
    const size = shown(value);
    return size.unit === 'count'
      ? size.value.toLocaleString(language)
      : lengthWords({ value: size.value, unit: size.unit }, language, bare);
  };
  const or = (values: readonly number[]) => words.common.or(values.map((value) => say(value)));
  const about = (size: string) => (range.approximate ? own.about(size) : size);
  const seldom = (usual: string, ...values: readonly (number | undefined)[]) => {
    const some = values.filter((value) => value !== undefined);
    return about(usual) + (some.length > 0 ? own.seldom(or(some)) : '');
  };
  switch (range.form) {
    case 'span': {
      const { low, high, min, max } = range;
      const same = shown(low).unit === shown(high).unit;
      return seldom(say(low) === say(high) ? say(low) : words.question.between(say(low, same), say(high)), min, max);
    }
    case 'single':
      return seldom(say(range.typical), range.min, range.max);
    case 'up-to':
      return seldom(own.upTo(say(range.high)), range.max);
    case 'at-least':
      return about(own.atLeast(say(range.low)));
    case 'alternatives': {
      const some = (which: string) => range.values.flatMap(({ value, how }) => (how === which ? [value] : []));
      return seldom(or(some('usually')), ...some('rarely'));
    }
  }
}
