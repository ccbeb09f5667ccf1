// The three invented technicians of the demonstration: simulated learners, seeded, so that their files can be made again.
import courses from '../../keys/streambank/courses.json' with { type: 'json' };
import { type LooseCourse, strictCourse } from '../../src/key/courses/index.ts';
import type { PreparedKey } from '../../src/key/index.ts';
import { type Attempt, type PracticeRecord, Sitting } from '../../src/practice/index.ts';
import { PowerMemory, SimulatedLearner } from '../../src/practice/simulate/index.ts';

interface Invented {
  readonly file: string;
  readonly name: string;
  readonly seed: number;
  /** Days of May 2026 with a round each. */
  readonly days: readonly number[];
  /** Sits the final test on the last of them. */
  readonly test: boolean;
}

/** Made-up people. */
export const CREW: readonly Invented[] = [
  { file: 'maribel.json', name: 'Maribel Q.', seed: 11, days: [4, 5, 6, 7, 8, 11, 12, 13, 14], test: true },
  { file: 'dale.json', name: 'Dale H.', seed: 12, days: [4, 6, 8, 12], test: true },
  { file: 'ruth.json', name: 'Ruth O.', seed: 13, days: [11, 12], test: false },
];

const uuid = (a: number, b: number) =>
  `${a.toString(16).padStart(8, '0')}-0000-4000-8000-${b.toString(16).padStart(12, '0')}`;

export function recordOf(prepared: PreparedKey, { name, seed, days, test }: Invented): PracticeRecord {
  const course = strictCourse(courses.courses[0] as LooseCourse);
  const asked = { ...course, kinds: course.kinds.filter((kind) => kind !== 'run') };
  const learner = new SimulatedLearner(prepared, seed, new PowerMemory());
  const attempts: Attempt[] = [];
  days.forEach((day, d) => {
    if (d > 0) learner.memory.sleep(day - (days[d - 1] as number));
    const sit = (sitting: Sitting, hour: number) => {
      for (let n = 0; ; n++) {
        const at = `2026-05-${String(day).padStart(2, '0')}T${String(hour + Math.floor(n / 180)).padStart(2, '0')}:${String(Math.floor(n / 3) % 60).padStart(2, '0')}:${String((n % 3) * 20).padStart(2, '0')}-05:00`;
        const task = sitting.next(Date.parse(at));
        if (task === undefined) return;
        const reply = learner.reply(task);
        attempts.push(sitting.reply(task, reply, { id: uuid(seed, attempts.length + 1), at }).attempt);
      }
    };
    sit(new Sitting(prepared, asked, attempts.slice(), { kind: 'round' }, seed * 100 + day), 8);
    if (test && d === days.length - 1)
      sit(new Sitting(prepared, asked, attempts.slice(), { kind: 'test', id: uuid(seed, 0xffff) }), 13);
  });
  const { id, version } = prepared.key;
  return { format: 1, learner: { id: uuid(seed, 0), name }, key: { id, version }, attempts };
}
