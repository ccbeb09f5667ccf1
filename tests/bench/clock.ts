import type { Time } from './bench.ts';

/** A sample lasts at least this long, since a browser's clock may tell no less than 0.1 ms. */
const SAMPLE_MS = 8;

/**
 * Times `work`, warmed up first, for about `ms` milliseconds. What else runs on a machine only ever adds time, so the
 * least of the samples is what to compare.
 */
export function time(work: () => unknown, ms = 400): Time {
  let runs = 0;
  const start = performance.now();
  while (performance.now() - start < ms / 3 || runs < 3) {
    work();
    runs++;
  }
  const each = Math.max(1, Math.ceil((SAMPLE_MS * runs) / (performance.now() - start)));
  const samples: number[] = [];
  for (const end = performance.now() + ms; performance.now() < end || samples.length < 5; ) {
    const begin = performance.now();
    for (let i = 0; i < each; i++) work();
    samples.push((performance.now() - begin) / each);
  }
  samples.sort((a, b) => a - b);
  return { best: samples[0] as number, median: samples[samples.length >> 1] as number };
}
