// A round from its first task to its last, with learners who are always right, always wrong, or in between.
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { streambank } from '../../../tests/support/streambank.ts';
import { Random } from '../../engine/trial/random.ts';
import { type Course, type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import { isAlarm, judge, UNSURE } from '../judge/judge.ts';
import { replay } from '../schedule/schedule.ts';
import { markOf, shownBy } from '../specimen/specimen.ts';
import { itemsOf } from '../task/items.ts';
import type { Attempt, Task } from '../types.ts';
import { NEW, nextTask, type RoundPlan, secondsOf } from './round.ts';
import { planTest } from './test.ts';

const prepared = streambank();
const { key } = prepared;
const statusOf = (id: string) => key.taxa.find((one) => one.id === id)?.status;
const reed = strictCourse(courses.courses[0] as LooseCourse);
const START = Date.parse('2026-05-04T08:00:00Z');
const DAY = 86_400_000;

type Say = (task: Task) => { said: string };
const right: Say = ({ truth }) => ({ said: truth });
const wrong: Say = ({ options, truth }) => ({ said: options.find((one) => one !== truth) ?? UNSURE });

let count = 0;
function attemptOf(task: Task, say: Say, at: number): Attempt {
  const reply = { seconds: 10, sureness: 'think' as const, ...say(task) };
  count++;
  return {
    ...task,
    ...reply,
    id: `00000000-0000-4000-8000-${count.toString(16).padStart(12, '0')}`,
    at: new Date(at).toISOString(),
    course: 'giant-reed',
    right: judge(prepared, task, reply).right,
  };
}

/** Every attempt of one round. */
function roundOf(more: Partial<RoundPlan>, say: Say, at = START): Attempt[] {
  const plan: RoundPlan = { course: reed, before: [], seed: 1, minutes: 10, ...more };
  const done: Attempt[] = [];
  for (let now = at; ; now += 16_000) {
    const task = nextTask(prepared, plan, done, now);
    if (task === undefined) return done;
    done.push(attemptOf(task, say, now));
    if (done.length > 500) throw new Error('a round without end');
  }
}

describe('a round', () => {
  test('fits its minutes, and uses them', () => {
    for (const minutes of [5, 10]) {
      const done = roundOf({ minutes }, right);
      const seconds = done.reduce((sum, one) => sum + one.seconds + 6, 0);
      expect(seconds).toBeLessThanOrEqual(minutes * 60);
      expect(seconds).toBeGreaterThan(minutes * 60 - 40);
    }
  });

  test('asks no run of somebody for whom there is no time left to walk one', () => {
    for (const one of roundOf({ minutes: 1 }, right)) expect(one.kind).not.toBe('run');
  });

  test('begins with a pair of native and invasive, and meets no more new items than would stay', () => {
    const done = roundOf({ minutes: 60 }, right);
    const items = done.map(({ item }) => item);
    const order = itemsOf(prepared, reed);
    expect(items[0]).toBe(order[0]);
    // New ones only when their number is not yet full, or nothing else is left that was not asked for just now.
    expect(new Set(items.slice(0, NEW + 4)).size).toBeLessThanOrEqual(NEW + 4);
    expect(new Set(items.slice(0, NEW)).size).toBe(NEW);
  });

  test('brings back what went wrong, after other tasks and before what is new', () => {
    let first: string | undefined;
    const done = roundOf({}, (task) => {
      first ??= task.item;
      return task.item === first ? wrong(task) : right(task);
    });
    const places = done.flatMap(({ item }, i) => (item === first ? [i] : []));
    expect(places.length).toBeGreaterThan(2);
    // Eight others lie between.
    for (const [i, place] of places.entries()) if (i > 0) expect(place - (places[i - 1] as number)).toBe(9);
  });

  test('brings back a native taken for an invasive before anything else that went wrong', () => {
    const done = roundOf({ minutes: 30 }, (task) => {
      const invasive = task.options.find((one) => one === 'invasive' || statusOf(one) === 'invasive');
      return invasive === undefined || invasive === task.truth ? wrong(task) : { said: invasive };
    });
    const waiting = (i: number) => {
      const before = done.slice(0, i);
      const recent = new Set(before.slice(-8).map(({ item }) => item));
      const last = new Map(before.map((one) => [one.item, one]));
      return [...last.values()].filter((one) => !recent.has(one.item));
    };
    let met = 0;
    done.forEach((one, i) => {
      const alarms = waiting(i).filter((before) => isAlarm(prepared, before));
      if (alarms.length === 0) return;
      met++;
      expect(alarms.map(({ item }) => item)).toContain(one.item);
    });
    expect(met).toBeGreaterThan(5);
  });

  test('comes back the next week to what is due, and what was never missed comes later than what was', () => {
    const known = new Random(4);
    const before = [0, 1, 2].flatMap((day) =>
      roundOf({ seed: day }, (task) => (known.next() < 0.6 ? right(task) : wrong(task)), START + day * DAY),
    );
    const now = START + 9 * DAY;
    const schedule = replay(prepared, before, now);
    const task = nextTask(prepared, { course: reed, before, seed: 9, minutes: 10 }, [], now);
    const found = schedule.get(task?.item as never);
    expect(found?.due).toBeLessThanOrEqual(now);
    const alarms = [...schedule.values()].some(
      (one) => one.alarm && one.due <= now && itemsOf(prepared, reed).includes(one.item),
    );
    expect(found?.alarm).toBe(alarms);
  });

  test('is the same for the same attempts, seed and time, and another for another seed', () => {
    const one = nextTask(prepared, { course: reed, before: [], seed: 1, minutes: 10 }, [], START);
    expect(nextTask(prepared, { course: reed, before: [], seed: 1, minutes: 10 }, [], START)).toEqual(one);
    expect(nextTask(prepared, { course: reed, before: [], seed: 2, minutes: 10 }, [], START)).not.toEqual(one);
  });

  test('of a course of two plants uses its minutes too', () => {
    const course: Course = { ...reed, taxa: ['arundo-donax', 'panicum-virgatum'], characters: ['height'] };
    const done = roundOf({ course }, right);
    expect(done.reduce((sum, one) => sum + one.seconds + 6, 0)).toBeGreaterThan(10 * 60 - 120);
    // Never the same twice in a row.
    for (let i = 1; i < done.length; i++) expect(done[i]?.item).not.toBe(done[i - 1]?.item);
  });

  test('of a course of which nothing can be asked ends at once', () => {
    expect(roundOf({ course: { ...reed, taxa: [], characters: [] } }, right)).toEqual([]);
  });
});

test('the time a task takes is the median of what it took so far', () => {
  const task = nextTask(prepared, { course: reed, before: [], seed: 1, minutes: 10 }, [], START) as Task;
  const took = (...all: number[]) =>
    secondsOf(all.map((seconds) => ({ ...attemptOf(task, right, START), kind: 'name' as const, seconds })));
  expect(took(3, 100, 5).name).toBe(5);
  expect(took(3).pair).toBe(secondsOf([]).pair);
});

describe('a final test', () => {
  const before = [1, 2, 3].flatMap((seed) => roundOf({ seed }, right, START + seed * DAY));
  const plan = planTest(prepared, reed, before, 1);
  const lookOf = ({ specimen }: Task) => `${specimen.taxon} ${markOf(shownBy(key, specimen))}`;

  test('asks for every plant as often as the course says, in the kinds it says', () => {
    for (const taxon of reed.taxa) {
      const own = plan.tasks.filter((one) => one.specimen.taxon === taxon);
      expect(own.length > 0 || plan.lacking.includes(taxon), taxon).toBe(true);
      expect(own.length).toBeLessThanOrEqual(reed.test.each);
      for (const { kind } of own) expect(reed.test.kinds).toContain(kind);
    }
    expect(plan.lacking).toEqual([]);
    expect(plan.tasks.length).toBe(reed.taxa.length * reed.test.each);
  });

  test('takes even seeds, and shows no specimen that looks like one met in practice but those it counts', () => {
    const met = new Set(before.filter(({ kind }) => kind !== 'cover').map(lookOf));
    const again = plan.tasks.filter((task) => met.has(lookOf(task)));
    expect(again.length).toBeLessThanOrEqual(plan.met);
    for (const { specimen } of plan.tasks) expect(specimen.seed % 2).toBe(0);
    expect(new Set(plan.tasks.map(lookOf)).size).toBeGreaterThanOrEqual(plan.tasks.length - plan.met);
  });

  test('says so when a plant hardly varies and all its looks were met', () => {
    // Every look that the test would choose was met: so often drawn that no other is left to find.
    const [taxon] = reed.taxa as [string];
    const course = { ...reed, taxa: [taxon, 'panicum-virgatum'], months: [8] as const };
    const still = planTest(prepared, course, [], 3);
    const again = planTest(
      prepared,
      course,
      still.tasks.map((task) => attemptOf(task, right, START)),
      3,
    );
    // The same draws, but what they showed is met now: others come in their place.
    expect(still.met).toBe(0);
    for (const task of again.tasks) if (again.met === 0) expect(still.tasks.map(lookOf)).not.toContain(lookOf(task));
  });

  test('is the same for everybody who has met none of its specimens', () => {
    expect(planTest(prepared, reed, [], 1)).toEqual(planTest(prepared, reed, [], 1));
    expect(planTest(prepared, reed, [], 1)).not.toEqual(planTest(prepared, reed, [], 2));
  });

  test('passes over a plant that the key no longer has, in the attempts and in the course', () => {
    const gone = { ...(before[0] as Attempt), specimen: { taxon: 'gone', month: 5 as const, seed: 1 } };
    const course = { ...reed, taxa: [...reed.taxa, 'gone'] };
    const found = planTest(prepared, course, [gone], 1);
    expect(found.lacking).toEqual(['gone']);
    expect(statusOf('gone')).toBeUndefined();
  });
});
