// The rehearsal: the same seed the same numbers, as many tasks on both sides, and nothing to tell apart for who never forgets.
import { describe, expect, test } from 'vitest';
import courses from '../../../keys/streambank/courses.json' with { type: 'json' };
import { streambank } from '../../../tests/support/streambank.ts';
import { type LooseCourse, strictCourse } from '../../key/courses/index.ts';
import { SimulatedLearner } from './learner.ts';
import { type Memory, PowerMemory } from './memory.ts';
import { type LearnerRun, rehearse } from './rehearse.ts';

const prepared = streambank();
const whole = strictCourse(courses.courses[1] as LooseCourse);
/** Few plants, so that the rehearsal is short. */
const taxa = ['colocasia-esculenta', 'peltandra-virginica', 'sagittaria-latifolia', 'pontederia-cordata'];
const course = { ...whole, taxa };
const options = { learners: 2, days: 3, seed: 5 } as const;

describe('a rehearsal', () => {
  const once = rehearse(prepared, course, options);

  test('comes to the same numbers with the same seed, and to others with another', () => {
    expect(rehearse(prepared, course, options)).toEqual(once);
    expect(rehearse(prepared, course, { ...options, seed: 6 })).not.toEqual(once);
  });

  test('sets the first learner the same tasks however many there are', () => {
    expect(rehearse(prepared, course, { ...options, learners: 1 }).ours).toEqual(once.ours.slice(0, 1));
  });

  test('gives both as many tasks', () => {
    const done = (runs: readonly LearnerRun[]) => runs.map((run) => run.done);
    expect(done(once.random)).toEqual(done(once.ours));
    expect(Math.min(...done(once.ours))).toBeGreaterThan(10);
  });

  test('tells shares, of which less is left later', () => {
    for (const { after, later, alarms, tasks, day, done } of [...once.ours, ...once.random]) {
      for (const share of [after, later, alarms]) expect(share >= 0 && share <= 1).toBe(true);
      expect(later).toBeLessThan(after);
      expect(tasks === undefined).toBe(day === undefined);
      expect(tasks ?? done).toBeLessThanOrEqual(done);
    }
  });

  test('leaves out runs and cover', () => {
    const more = { ...course, kinds: [...course.kinds, 'cover' as const] };
    expect(rehearse(prepared, more, options)).toEqual(once);
  });
});

/** Nothing is learnt and nothing forgotten. */
const silent = { wait: () => {}, sleep: () => {}, meet: () => {} };

test('who never forgets does as well by our order as by chance: every ratio is 1', () => {
  const { ours, random } = rehearse(prepared, course, {
    ...options,
    days: 2,
    memory: () => ({ ...silent, recall: () => 1 }),
  });
  for (const [i, run] of ours.entries()) expect(run).toEqual(random[i]);
  for (const { after, later, alarms, day } of ours) {
    expect([after, later]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
    expect(alarms).toBeCloseTo(0, 12);
    expect(day).toBe(1);
  }
});

describe('a simulated learner', () => {
  const [truth = '', ...others] = taxa;

  test('names a plant with chances that add up to one', () => {
    const learner = new SimulatedLearner(prepared, 1, new PowerMemory());
    const sum = () => [...learner.chances(truth, taxa).values()].reduce((a, b) => a + b, 0);
    expect(sum()).toBeCloseTo(1, 12);
    learner.memory.meet(`taxon:${truth}`);
    expect(sum()).toBeCloseTo(1, 12);
  });

  test('who knows a plant still takes it for a look-alike, until the two were told apart', () => {
    const known = new Set([`taxon:${truth}`]);
    const memory: Memory = { ...silent, recall: (item) => (known.has(item) ? 1 : 0) };
    const learner = new SimulatedLearner(prepared, 1, memory);
    const before = learner.chances(truth, taxa).get(truth) as number;
    expect(before).toBeLessThan(1);
    for (const other of others) known.add(`pair:${[truth, other].sort().join('+')}`);
    expect(learner.chances(truth, taxa).get(truth)).toBeCloseTo(1, 12);
  });
});
