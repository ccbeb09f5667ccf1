// One scale for several plants, so that the taller one is drawn taller.
import type { Key, Taxon } from '../../key/index.ts';
import type { Asked } from './individual.ts';
import { portraitOf } from './portrait.ts';

/** The scale at which all of the plants find room; undefined where fewer than two can be drawn. */
export function sharedScale(key: Key, taxa: readonly Taxon[], asked: Asked = {}): Asked['scale'] {
  const figures = taxa.map((taxon) => portraitOf(key, taxon, asked)).filter(({ metre }) => metre > 0);
  if (figures.length < 2) return undefined;
  const tall = Math.max(...figures.map(({ height = 0 }) => height));
  // What stands beside the tallest may need more room beside the others than what stood there: so once more.
  const together = taxa.map(
    (taxon) => portraitOf(key, taxon, { ...asked, scale: { tall, metre: Number.POSITIVE_INFINITY } }).metre,
  );
  return { tall, metre: Math.min(...figures.map(({ metre }) => metre), ...together.filter((metre) => metre > 0)) };
}
