import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Outcome } from '../../report/send/index.ts';
import type { OutboxRecord } from '../records.ts';
import { begun, dueAt, faultOfEntry, hurried, LEASE, LONGEST, reset, settled } from './entry.ts';

const fresh: OutboxRecord = {
  ...{ key: 'k', format: 1, find: 'f', endpoint: 'https://example.org/', text: '{}', photos: [] },
  ...{ state: 'waiting', tries: 0, since: 0, next: 0 },
};
const arrived = (number: string): Outcome => ({
  state: 'sent',
  receipt: { number, when: '2026-07-01T12:00:00Z', key: 'k', photos: 0, bytes: 2, tries: 1 },
});
const waiting: Outcome = { state: 'waiting', reason: 'server', tries: 1 };
const refused: Outcome = { state: 'refused', status: 422, moved: false, words: 'no', faults: [] };

test('a failure waits longer each time, and never longer than the longest', () => {
  let entry = fresh;
  const waits: number[] = [];
  for (let i = 0; i < 12; i++) {
    const claimed = begun(entry, entry.next) as OutboxRecord;
    entry = settled(claimed, claimed.tries, waiting, claimed.since, 0) as OutboxRecord;
    waits.push(entry.next - entry.since);
  }
  expect(waits.slice(0, 4)).toEqual([1000, 3000, 9000, 27_000]);
  expect(waits.at(-1)).toBe(LONGEST);
});

test('a refusal is kept with its reason and never tried by itself', () => {
  const claimed = begun(fresh, 0) as OutboxRecord;
  const entry = settled(claimed, 1, refused, 5, 0) as OutboxRecord;
  expect(entry).toMatchObject({ state: 'refused', refusal: { status: 422, words: 'no' } });
  expect(dueAt(entry, Number.MAX_SAFE_INTEGER)).toBeUndefined();
});

test('what a closed tab was sending is tried again after the lease, not before', () => {
  const claimed = begun(fresh, 10) as OutboxRecord;
  expect(begun(claimed, 10 + LEASE - 1)).toBeUndefined();
  expect(begun(claimed, 10 + LEASE)).toMatchObject({ key: 'k', tries: 2 });
});

test('a clock that was set back delays nothing for long', () => {
  expect(begun({ ...fresh, since: 9e12, next: 9e12 }, 5)).toMatchObject({ state: 'sending', since: 5 });
  const sending = reset({ ...fresh, state: 'sending', since: 9e12 }, 5) as OutboxRecord;
  expect(begun(sending, 5 + LEASE)).toBeDefined();
});

test('the signal ends a wait, but not one that the receiver asked for', () => {
  const late = { ...fresh, next: 1000 };
  expect(hurried(late, 10)).toMatchObject({ next: 10 });
  expect(hurried({ ...late, asked: true }, 10)).toBeUndefined();
});

test.each([
  [null],
  [{}],
  [{ ...fresh, format: 3 }],
  [{ ...fresh, tries: Number.NaN }],
  [{ ...fresh, state: 'lost' }],
  [{ ...fresh, photos: [1] }],
])('tells what is no entry: %j', (raw) => {
  expect(faultOfEntry(raw)).toBeDefined();
});
test('takes an entry for one', () => {
  expect(faultOfEntry(fresh)).toBeUndefined();
});

/** What may happen, in any order, in any of three tabs. */
const step = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant('claim' as const) }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('answer' as const),
      which: fc.nat(5),
      taken: fc.boolean(),
      told: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('crash' as const), which: fc.nat(5) }) },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('clock' as const), by: fc.integer({ min: -2 * LEASE, max: 2 * LONGEST }) }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('signal' as const) }) },
);

test('whatever fails, crashes or comes twice: one report arrives, under one receipt, and nothing is lost', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 80 }), fc.double({ min: 0, max: 1, noNaN: true }), (steps, chance) => {
      let entry = fresh;
      let now = 0;
      /** The receiver's side: what it keeps, by key. */
      const kept = new Map<string, string>();
      let open: number[] = [];
      const take = () => {
        if (!kept.has(entry.key)) kept.set(entry.key, `R-${kept.size + 1}`);
        return arrived(kept.get(entry.key) as string);
      };
      const become = (next: OutboxRecord | undefined) => {
        if (!next) return;
        expect(next.tries).toBeGreaterThanOrEqual(entry.tries);
        expect(next.key).toBe(entry.key);
        if (entry.state === 'sent') expect(next.state).toBe('sent');
        entry = next;
      };
      const claim = () => {
        become(reset(entry, now));
        const claimed = begun(entry, now);
        if (claimed) open.push(claimed.tries);
        become(claimed);
      };
      for (const one of steps) {
        if (one.do === 'clock') now += one.by;
        else if (one.do === 'signal') become(hurried(entry, now));
        else if (one.do === 'claim') claim();
        else {
          const number = open[one.which];
          if (number === undefined) continue;
          open = open.filter((it) => it !== number);
          if (one.do === 'crash') continue;
          const outcome = one.taken ? take() : waiting;
          become(settled(entry, number, one.told ? outcome : waiting, now, chance));
        }
        if (entry.state === 'sent') expect(kept.get('k')).toBe(entry.receipt?.number);
      }
      // At last the world behaves: it arrives without anybody's help.
      for (let i = 0; i < 3 && entry.state !== 'sent'; i++) {
        now += LONGEST + LEASE;
        claim();
        become(settled(entry, entry.tries, take(), now, chance));
      }
      expect(entry.state).toBe('sent');
      expect(kept.size).toBe(1);
      expect(entry.receipt?.number).toBe('R-1');
    }),
    { numRuns: 500 },
  );
});
