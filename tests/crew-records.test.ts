// The example files of the crew's page: what the simulated learners make of them, and what the page would tell.
// After a change on purpose: UPDATE_CREW=1 npx vitest run tests/crew-records.test.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import courses from '../keys/streambank/courses.json' with { type: 'json' };
import { type LooseCourse, strictCourse } from '../src/key/courses/index.ts';
import { attemptsCsv, crewFigures, plantsCsv, readRecord, writeRecord } from '../src/practice/index.ts';
import { CREW, recordOf } from './support/crew-records.ts';
import { streambank } from './support/streambank.ts';

const prepared = streambank();
const course = strictCourse(courses.courses[0] as LooseCourse);
const path = (file: string) => `src/site/crew/${file}`;

test.each(CREW)('$file is what the invented $name did', (one) => {
  const text = writeRecord(recordOf(prepared, one));
  if (process.env.UPDATE_CREW) writeFileSync(path(one.file), text);
  expect(readFileSync(path(one.file), 'utf8')).toBe(text);
});

describe('the crew', () => {
  const records = CREW.map((one) => readRecord(writeRecord(recordOf(prepared, one))));
  const now = Date.parse('2026-05-15T08:00:00-05:00');
  const figures = crewFigures(prepared, course, records, now);

  test('has people who are ready for some plants, and people who are not', () => {
    const ready = figures.members.map((one) => one.figures.readiness.filter((row) => row.ready).length);
    expect(Math.max(...ready)).toBeGreaterThan(0);
    expect(ready.at(-1)).toBe(0);
  });

  test('is told what to teach, natives called invasive first', () => {
    const { lessons } = figures;
    expect(lessons.length).toBeGreaterThan(0);
    const alarms = lessons.map((lesson) => lesson.alarms);
    expect(alarms).toEqual([...alarms].sort((a, b) => b - a));
  });

  test('agrees where two sat the same final test', () => {
    const [both] = figures.between;
    expect(both?.agreement?.n).toBeGreaterThanOrEqual(10);
    expect(both?.agreement?.observed).toBeGreaterThan(0.3);
  });

  test('is the same in any order of files and attempts, and when each file is given twice', () => {
    const shuffled = [...records].reverse().map((one) => ({ ...one, attempts: [...one.attempts].reverse() }));
    expect(crewFigures(prepared, course, shuffled, now)).toEqual(figures);
    expect(crewFigures(prepared, course, [...records, ...shuffled], now)).toEqual(figures);
  });

  test('comes out as tables, a line for each plant and for each look', () => {
    const lines = (csv: string) => csv.trimEnd().split('\r\n');
    expect(lines(plantsCsv(course.id, figures.members))).toHaveLength(1 + 3 * course.taxa.length);
    expect(lines(attemptsCsv(records))).toHaveLength(1 + records.flatMap((one) => one.attempts).length);
  });
});
