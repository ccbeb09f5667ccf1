import { time } from './clock.ts';

/** Bytes read and written for each second, by the best of some copies of 128 MiB. */
export function bandwidth(): number {
  const from = new Float64Array(1 << 24).fill(1);
  const to = new Float64Array(from.length);
  return (2 * from.byteLength) / (time(() => to.set(from), 1000).best / 1e3);
}
