// A range of sizes in plain words: "2 to 6 m, rarely 10 m".
import { type Length, type Range, shownRange, type Unit } from '../../key/index.ts';
import type { ComparisonWords } from '../../words/index.ts';
import type { Saying } from '../shared/said.ts';
import { lengthWords } from '../shared/sizes.ts';

export function rangeIn(range: Range, { words, language, units }: Saying, own: ComparisonWords): string {
  const { between } = words.question;
  const extent = shownRange(range, units);
  const say = (value: number, bare = false) => sizeWords(value, extent.unit, language, bare);
  const or = (values: readonly (number | undefined)[]) =>
    words.common.or(values.flatMap((value) => (value === undefined ? [] : [say(value)])));
  const about = (size: string) => (extent.approximate ? own.about(size) : size);
  const withSeldom = (usual: string, seldom: readonly (number | undefined)[]) =>
    seldom.some((value) => value !== undefined) ? own.seldom(about(usual), or(seldom)) : about(usual);
  switch (extent.form) {
    case 'span':
      return withSeldom(between(say(extent.low, true), say(extent.high)), [extent.min, extent.max]);
    case 'single':
      return withSeldom(say(extent.typical), [extent.min, extent.max]);
    case 'up-to':
      return withSeldom(own.upTo(say(extent.high)), [extent.max]);
    case 'at-least':
      return about(own.atLeast(say(extent.low)));
    case 'alternatives': {
      const some = (how: string) => extent.values.flatMap((one) => (one.how === how ? [one.value] : []));
      return withSeldom(or(some('usually')), some('rarely'));
    }
  }
}

function sizeWords(value: number, unit: Unit, language: string, bare: boolean): string {
  return unit === 'count'
    ? new Intl.NumberFormat(language).format(value)
    : lengthWords({ value, unit: unit satisfies Length }, language, bare);
}
