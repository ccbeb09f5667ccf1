import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Receiver, type Run } from '../../../tests/support/receiver.ts';
import type { Outcome } from './outcome.ts';
import { type Parcel, parcelOf } from './parcel.ts';
import { backoff, type SendOptions, send, sendOnce } from './send.ts';

const receiver = new Receiver();
let server: Awaited<ReturnType<Receiver['listen']>>;
beforeAll(async () => {
  server = await receiver.listen();
});
afterAll(() => server.close());

const FIND = JSON.stringify({ format: 1, id: '7f0c', remarks: 'cañas junto al agua "así"' });
const photo = { id: 'p1', blob: new Blob([new Uint8Array(2000)], { type: 'image/jpeg' }) };
const parcel = (find = FIND): Promise<Parcel> => parcelOf('7f0c', find, [photo]);

let runs = 0;
/** Sends against these steps; `waited` are the pauses that were asked for. */
async function sending(steps: string, options: Partial<SendOptions> = {}) {
  const name = `run-${++runs}`;
  const waited: number[] = [];
  const outcome = await send(await parcel(), {
    endpoint: `${server.address}/${name}/${steps}`,
    random: () => 0,
    now: () => Date.UTC(2026, 10, 25, 13),
    wait: async (ms) => {
      waited.push(ms);
    },
    ...options,
  });
  return { outcome, waited, run: receiver.runs.get(name) as Run };
}
const receiptOf = (outcome: Outcome) => {
  if (outcome.state !== 'sent') throw new Error(`it was not sent: ${JSON.stringify(outcome)}`);
  return outcome.receipt;
};

describe('a report that is taken', () => {
  test('arrives whole, with its key, and the receipt says what was sent', async () => {
    const { outcome, run } = await sending('201');
    const { key } = await parcel();
    expect(receiptOf(outcome)).toEqual({
      number: 'R-1',
      when: '2026-11-25T13:00:00.000Z',
      key,
      photos: 1,
      bytes: new TextEncoder().encode(FIND).length + 2000,
      tries: 1,
    });
    expect(run.seen).toHaveLength(1);
    const [seen] = run.seen;
    expect(seen?.key).toBe(`"${key}"`);
    expect(seen?.find).toEqual(JSON.parse(FIND));
    expect(seen?.photos).toEqual([{ name: 'p1.jpg', type: 'image/jpeg', size: 2000 }]);
    expect(seen?.headers).not.toHaveProperty('cookie');
    expect(seen?.headers).not.toHaveProperty('referer');
  });

  test('has no number where the receiver gives none', async () => {
    expect(receiptOf((await sending('bare')).outcome)).not.toHaveProperty('number');
  });

  test('takes its number from the address of what was made', async () => {
    const receipt = receiptOf((await sending('where')).outcome);
    expect(receipt.number).toBe('R-1');
    expect(receipt.at).toBe(new URL('/reports/R-1', server.address).href);
  });
});

describe('a receiver that fails', () => {
  test('is tried again, each time later, under the same key', async () => {
    const { outcome, waited, run } = await sending('503,500,201');
    expect(receiptOf(outcome)).toMatchObject({ number: 'R-1', tries: 3 });
    expect(waited).toEqual([1000, 3000]);
    expect(new Set(run.seen.map(({ key }) => key)).size).toBe(1);
    expect(run.kept.size).toBe(1);
  });

  test('and goes on failing leaves the report waiting', async () => {
    const { outcome, run } = await sending('503');
    expect(outcome).toEqual({ state: 'waiting', reason: 'server', tries: 4 });
    expect(run.seen).toHaveLength(4);
  });

  test.each(['lost', 'half'])('after it took the report (%s) is asked again, and keeps one', async (step) => {
    const { outcome, run } = await sending(`${step},201`);
    expect(receiptOf(outcome)).toMatchObject({ number: 'R-1', tries: 2 });
    expect(run.seen).toHaveLength(2);
    expect(run.kept.size).toBe(1);
  });

  test('that asks for a little time gets it; one that asks for an hour is left for another occasion', async () => {
    expect((await sending('later,201')).waited).toEqual([1000]);
    const { outcome, waited, run } = await sending('far,201');
    expect(outcome).toEqual({ state: 'waiting', reason: 'busy', tries: 1, after: 3_600_000 });
    expect(waited).toEqual([]);
    expect(run.seen).toHaveLength(1);
  });

  test('that stalls is given up after the time set', async () => {
    const { outcome, run } = await sending('stall', { timeout: 150, tries: 2 });
    expect(outcome).toEqual({ state: 'waiting', reason: 'too-slow', tries: 2 });
    expect(run.seen).toHaveLength(2);
  });

  test('that is not there leaves the report waiting for a signal', async () => {
    const gone = await new Receiver().listen();
    await gone.close();
    const outcome = await sendOnce(await parcel(), { endpoint: gone.address });
    expect(outcome).toEqual({ state: 'waiting', reason: 'no-signal', tries: 1 });
  });
});

describe('a receiver that refuses', () => {
  test('is not asked again, and its reasons are told with the fields they are about', async () => {
    const { outcome, run } = await sending('refuse');
    expect(outcome).toEqual({
      state: 'refused',
      status: 422,
      moved: false,
      words: 'Two things are wrong.',
      faults: [
        { path: '/place/lat', words: 'The place is not in this county.' },
        { path: '/contact', words: 'Who are you?' },
      ],
    });
    expect(run.seen).toHaveLength(1);
    expect(run.kept.size).toBe(0);
  });

  test.each([400, 401, 403, 404, 410, 413, 415, 501])('with %i is not asked again', async (status) => {
    const { outcome, run } = await sending(String(status));
    expect(outcome).toMatchObject({ state: 'refused', status });
    expect(run.seen).toHaveLength(1);
  });

  test('by leading elsewhere gets nothing sent there', async () => {
    const { outcome, run } = await sending('moved');
    expect(outcome).toMatchObject({ state: 'refused', moved: true });
    expect(run.seen).toHaveLength(1);
  });
});

test('the same sent twice is answered twice the same and kept once; something changed is another report', async () => {
  const endpoint = `${server.address}/twice/201`;
  const once = receiptOf(await send(await parcel(), { endpoint }));
  const twice = receiptOf(await send(await parcel(), { endpoint }));
  expect(twice.number).toBe(once.number);
  expect(receiver.runs.get('twice')?.kept.size).toBe(1);
  const other = receiptOf(await send(await parcel(FIND.replace('junto', 'lejos')), { endpoint }));
  expect(other.number).not.toBe(once.number);
  expect(receiver.runs.get('twice')?.kept.size).toBe(2);
});

test('stopping it stops it, while it tries and while it pauses', async () => {
  const stop = new AbortController();
  const endpoint = `${server.address}/stopped/stall`;
  const trying = send(await parcel(), { endpoint, signal: stop.signal });
  stop.abort(new Error('enough'));
  await expect(trying).rejects.toThrow('enough');
  const pause = new AbortController();
  const pausing = send(await parcel(), { endpoint: `${server.address}/paused/far,503`, signal: pause.signal });
  expect(await pausing).toMatchObject({ state: 'waiting' });
  const really = send(await parcel(), { endpoint: `${server.address}/paused-2/503`, signal: pause.signal });
  await expect.poll(() => receiver.runs.get('paused-2')?.seen.length).toBe(1);
  pause.abort(new Error('enough'));
  await expect(really).rejects.toThrow('enough');
});

test('nothing is sent to what is no web address', async () => {
  for (const endpoint of ['javascript:alert(1)', 'data:text/plain,x', 'file:///x', 'ftp://example.org/'])
    await expect(sendOnce(await parcel(), { endpoint, fetch: () => expect.unreachable() })).rejects.toThrow(TypeError);
});

test('an answer of any shape is read without a fault of ours', async () => {
  const never = async () => expect.unreachable();
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 200, max: 599 }).filter((status) => status !== 204 && status !== 205 && status !== 304),
      fc.oneof(fc.json(), fc.string()),
      fc.option(fc.string().filter((text) => !/[^\x20-\x7e]/.test(text))),
      async (status, body, location) => {
        const answered = async () =>
          new Response(body, {
            status,
            headers: location === null ? {} : { Location: location, 'Retry-After': location },
          });
        const outcome = await sendOnce(await parcel(), {
          endpoint: 'https://example.org/',
          fetch: answered,
          wait: never,
        });
        expect(['sent', 'waiting', 'refused']).toContain(outcome.state);
        expect(outcome.state === 'sent').toBe(status < 300);
      },
    ),
    { numRuns: 300 },
  );
});

test('pauses grow threefold and are spread by at most a half', () => {
  expect([1, 2, 3].map((tries) => backoff(tries, 0))).toEqual([1000, 3000, 9000]);
  expect(backoff(1, 1)).toBe(1500);
});
