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
  let metre = Math.min(...figures.map((figure) => figure.metre), ...together.filter((one) => one > 0));
  // At the scale of another a plant may need a little more room than at its own: until all of them keep it.
  for (let round = 0; round < 4; round++) {
    const kept = taxa.map((taxon) => portraitOf(key, taxon, { ...asked, scale: { tall, metre } }).metre);
    const least = Math.min(...kept.filter((one) => one > 0));
    if (least >= metre) break;
    metre = least;
  }
  return { tall, metre };
}
