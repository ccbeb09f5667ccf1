import { expect, test } from 'vitest';
import { untilDone } from './late.ts';

test('what did not come is asked for again, what came is not', async () => {
  const calls: number[] = [];
  const bring = untilDone(async () => {
    calls.push(calls.length);
    if (calls.length === 1) throw new TypeError('no connection');
    return 'here';
  });
  await expect(bring()).rejects.toThrow('no connection');
  expect(await bring()).toBe('here');
  expect(await bring()).toBe('here');
  expect(calls).toHaveLength(2);
});

test('two who ask at once share one load', async () => {
  let calls = 0;
  const bring = untilDone(async () => ++calls);
  expect(await Promise.all([bring(), bring()])).toEqual([1, 1]);
});
