// Height classes of a stand: what a person chooses, what a find holds.
import type { Measure } from '../../report/find/index.ts';

/**
 * In metres (ours). A find's sizes are above zero: the lowest class begins with a plant just out of the ground; the
 * highest has no upper end.
 */
export const HEIGHTS: readonly { readonly from: number; readonly to?: number }[] = [
  { from: 0.01, to: 0.5 },
  { from: 0.5, to: 1 },
  { from: 1, to: 2 },
  { from: 2, to: 4 },
  { from: 4, to: 8 },
  { from: 8 },
];

/** The height of a class given by its place in the list; undefined for none. */
export function heightOf(index: string): Measure | undefined {
  const found = index === '' ? undefined : HEIGHTS[Number(index)];
  return found && { value: found.from, unit: 'm', ...(found.to === undefined ? {} : { high: found.to }) };
}

/** The class of a height; empty for one that was not chosen here. */
export function heightIndex(height: Measure | undefined): string {
  const index = HEIGHTS.findIndex(
    ({ from, to }) => height?.unit === 'm' && height.value === from && height.high === to,
  );
  return index < 0 ? '' : String(index);
}
