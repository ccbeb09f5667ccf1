import { describe, expect, test } from 'vitest';
import { attempt, record } from '../../../tests/support/attempts.ts';
import { writeRecord } from '../../practice/index.ts';
import { type Coming, takeIn, upTo } from './intake.ts';

const coming = (name: string, content: string): Coming => ({ name, text: async () => content });
const lost: Coming = {
  name: 'gone.json',
  text: async () => {
    throw new Error('no connection');
  },
};
const good = record([attempt(1, 'arundo-donax')]);

describe('of files that come together', () => {
  test('the good ones are kept, and each bad one is told by its name and the place of its mistake', async () => {
    const text = writeRecord(good);
    const spoilt = text.replace('"seconds"', '"hours"');
    const { records, faults } = await takeIn([
      coming('a.json', text),
      coming('b.json', '{"format": 1,'),
      coming('c.json', spoilt),
      lost,
      coming('d.json', text),
    ]);
    expect(records).toEqual([good, good]);
    expect(faults.map(({ name }) => name)).toEqual(['b.json', 'c.json', 'gone.json']);
    expect(faults[0]?.lines[0]).toMatch(/^\d+/);
    const line = spoilt.split('\n').findIndex((one) => one.includes('"hours"')) + 1;
    expect(faults[1]?.lines.some((one) => one.startsWith(`${line}, attempts`))).toBe(true);
    expect(faults[2]).toEqual({ name: 'gone.json', lines: [], more: 0 });
  });

  test('one with many mistakes tells five, and how many more there are', async () => {
    const many = Array.from({ length: 9 }, (_, n) => attempt(n + 1, 'arundo-donax'));
    const { faults } = await takeIn([
      coming('a.json', writeRecord(record(many)).replaceAll('"right":true', '"right":"yes"')),
    ]);
    expect(faults[0]?.lines).toHaveLength(5);
    expect(faults[0]?.more).toBe(4);
  });
});

test('up to a day counts that day as the person lived it, and nothing later', () => {
  const late = { ...attempt(2, 'arundo-donax'), at: '2026-05-04T23:50:00-05:00' };
  const next = { ...attempt(3, 'arundo-donax'), at: '2026-05-05T00:10:00-05:00' };
  const [only] = upTo('2026-05-04', [record([late, next])]);
  expect(only?.attempts).toEqual([late]);
});
