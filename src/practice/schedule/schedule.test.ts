// The schedule against the scheduler it is made with, and that it follows from the attempts alone.
import fc from 'fast-check';
import { createEmptyCard, forgetting_curve, fsrs, generatorParameters, Rating } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import type { Attempt } from '../types.ts';
import { gradeOf, inOrder, QUICK, replay } from './schedule.ts';

const prepared = streambank();
const START = Date.parse('2026-05-04T08:00:00Z');
const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

function attempt(n: number, at: number, more: Partial<Attempt> = {}): Attempt {
  const said = more.said ?? 'panicum-virgatum';
  const truth = more.truth ?? 'panicum-virgatum';
  return {
    id: `00000000-0000-4000-8000-${n.toString(16).padStart(12, '0')}`,
    at: new Date(at).toISOString(),
    course: 'giant-reed',
    kind: 'name',
    item: `taxon:${truth}`,
    specimen: { taxon: truth, month: 8, seed: 1 },
    options: ['arundo-donax', 'panicum-virgatum', 'tripsacum-dactyloides'],
    truth,
    said,
    right: said === truth,
    seconds: 10,
    sureness: 'think',
    ...more,
  };
}
const alarm = (n: number, at: number) => attempt(n, at, { said: 'arundo-donax' });

describe('the grade', () => {
  test.each([
    ['wrong is again', { sureness: 'sure' }, false, false, Rating.Again],
    ['right after a guess is hard', { sureness: 'guess' }, true, false, Rating.Hard],
    ['right is good', { sureness: 'think' }, true, false, Rating.Good],
    ['sure but slow is good', { sureness: 'sure', seconds: QUICK.name }, true, false, Rating.Good],
    ['sure and quick is easy', { sureness: 'sure', seconds: QUICK.name - 1 }, true, false, Rating.Easy],
    ['what was just missed is never easy', { sureness: 'sure', seconds: 1 }, true, true, Rating.Good],
  ] as const)('%s', (_, more, right, missed, grade) => {
    expect(gradeOf(attempt(1, START, more), right, missed)).toBe(grade);
  });
});

describe('one item', () => {
  const days = [0, 0.001, 1, 4, 12];
  const attempts = days.map((day, n) => attempt(n, START + day * DAY));

  test('is scheduled as ts-fsrs 5.4.2 by itself schedules a card with the same grades', () => {
    const library = fsrs({
      request_retention: 0.9,
      enable_fuzz: false,
      learning_steps: ['1m', '5m'],
      relearning_steps: ['5m'],
    });
    let card = createEmptyCard(new Date(START));
    for (const day of days) card = library.next(card, new Date(START + day * DAY), Rating.Good).card;
    const now = START + 20 * DAY;
    const found = replay(prepared, attempts, now).get('taxon:panicum-virgatum');
    expect(found).toMatchObject({
      due: card.due.getTime(),
      difficulty: card.difficulty,
      looks: days.length,
      failing: 0,
      alarm: false,
    });
    expect(found?.recall).toBe(library.get_retrievability(card, new Date(now), false));
    // The forgetting curve that the library exports, at the library's own usual parameters.
    const elapsed = (now - (card.last_review?.getTime() ?? 0)) / DAY;
    expect(found?.recall).toBeCloseTo(forgetting_curve(generatorParameters().w, elapsed, card.stability), 6);
  });

  test('comes back when nine in ten are expected to know it still, and is known less as time goes by', () => {
    const recallAt = (now: number) => replay(prepared, attempts, now).get('taxon:panicum-virgatum')?.recall as number;
    const due = replay(prepared, attempts, START).get('taxon:panicum-virgatum')?.due as number;
    // Days are whole: within half a day's forgetting.
    expect(Math.abs(recallAt(due) - 0.9)).toBeLessThan(0.005);
    const recalls = [13, 20, 40, 80, 160].map((day) => recallAt(START + day * DAY));
    expect(recalls).toEqual([...recalls].sort((a, b) => b - a));
  });

  test('that went wrong is due within minutes, and one that went right does not come before it', () => {
    const now = START + 20 * DAY;
    const wrong = replay(prepared, [...attempts, alarm(9, now)], now).get('taxon:panicum-virgatum');
    const right = replay(prepared, [...attempts, attempt(9, now)], now).get('taxon:panicum-virgatum');
    expect((wrong?.due as number) - now).toBeLessThanOrEqual(5 * MINUTE);
    expect((right?.due as number) - now).toBeGreaterThan(DAY);
    expect(wrong).toMatchObject({ failing: 1, alarm: true });
  });
});

test('a native called an invasive is remembered until the plant is known again', () => {
  const item = 'taxon:panicum-virgatum';
  const seen = (attempts: readonly Attempt[]) => replay(prepared, attempts, START + DAY).get(item);
  const first = [alarm(1, START)];
  expect(seen(first)).toMatchObject({ alarm: true, failing: 1 });
  const second = [...first, attempt(2, START + MINUTE, { said: 'unsure' })];
  expect(seen(second)).toMatchObject({ alarm: true, failing: 2 });
  expect(seen([...second, attempt(3, START + 2 * MINUTE)])).toMatchObject({ alarm: false, failing: 0 });
});

test('a wrong name also schedules the pair that was mixed up', () => {
  const found = replay(prepared, [alarm(1, START)], START);
  expect(found.get('pair:arundo-donax+panicum-virgatum')).toMatchObject({ failing: 1, looks: 1 });
});

test('the same attempts in any order give the same schedule', () => {
  const attempts = Array.from({ length: 24 }, (_, n) =>
    // Some at the same moment.
    n % 5 === 0 ? alarm(n, START + Math.floor(n / 2) * MINUTE) : attempt(n, START + Math.floor(n / 2) * MINUTE),
  );
  const now = START + 3 * DAY;
  const once = [...replay(prepared, attempts, now)];
  fc.assert(
    fc.property(fc.shuffledSubarray(attempts, { minLength: attempts.length }), (mixed) => {
      expect([...replay(prepared, mixed, now)]).toEqual(once);
      expect(inOrder(mixed)).toEqual(attempts);
    }),
    { seed: 5, numRuns: 50 },
  );
});
