// The main job, end to end: answers as published descriptions have them, in; the plant they describe, out.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Identification } from '../src/key/index.ts';
import { ROOT, runCommand } from './support/run-command.ts';

const identify = async (name: string): Promise<Identification> => {
  const { code, stdout, stderr } = await runCommand([
    'identify',
    'keys/streambank',
    '--answers',
    `tests/answers/${name}.json`,
    '--json',
  ]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  return JSON.parse(stdout);
};

describe('answers as a published description gives them put the plant first', () => {
  // The source of each is named in tests/answers/README.md.
  test.each([
    ['giant-reed', 'arundo-donax'],
    ['elephant-ear', 'colocasia-esculenta'],
    ['arrow-arum', 'peltandra-virginica'],
    ['native-common-reed', 'phragmites-australis-subsp-americanus'],
  ])('%s: %s', async (file, taxon) => {
    const { standing, outside, verdict } = await identify(file);
    expect(standing[0]?.taxon).toBe(taxon);
    expect(standing[0]?.probability).toBeGreaterThan(outside);
    expect(verdict.taxa[0]).toBe(taxon);
  });
});

describe('a native is never settled as an invader', () => {
  test.each(['arrow-arum', 'native-common-reed'])('%s', async (file) => {
    const { verdict, concern } = await identify(file);
    expect(verdict.kind === 'settled' ? verdict.taxa : []).not.toContain('colocasia-esculenta');
    expect(concern).toBeLessThan(0.5);
  });
});

describe('a plant that the key lacks is more likely outside it than any plant in it', () => {
  // From memory: common knowledge of these plants.
  test.each(['banana', 'pond-algae'])('%s', async (file) => {
    const { standing, outside, verdict } = await identify(file);
    expect(outside).toBeGreaterThan(standing[0]?.probability ?? 1);
    expect(verdict.kind).not.toBe('settled');
  });
});

test('the standing is complete, descending, and sums to 1 with what is outside', async () => {
  const { standing, outside } = await identify('giant-reed');
  const shares = standing.map(({ probability }) => probability);
  expect(standing).toHaveLength(55);
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  expect(shares.reduce((a, b) => a + b, outside)).toBeCloseTo(1, 9);
});

test("the README's example of answers is taken as it stands", async () => {
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const stdin = /^### Answers\n+```json\n(.+?)^```/ms.exec(readme)?.[1] ?? '';
  const { code, stderr } = await runCommand(['identify', 'keys/streambank', '--answers', '-'], { stdin });
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
});
