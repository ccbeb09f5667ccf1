import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { changedKey } from '../../tests/support/temporary.ts';

interface Counted {
  readonly count: number;
  readonly n: number;
}

const trial = async (...words: string[]) => {
  const { code, stdout, stderr } = await runCommand(['trial', 'keys/streambank', '--json', ...words]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  return JSON.parse(stdout);
};

describe('the streambank key, on 150 plants for each kind of observer', () => {
  const ran = trial('--plants', '150');

  // What is asked of the key; the bounds leave room for chance on so few plants (see README.md for 10,000).
  test('names the right plant among the first two when one answer is wrong', async () => {
    const one = (await ran).observers.find(({ id }: { id: string }) => id === 'one-wrong-answer');
    expect(one.topTwo.share).toBeGreaterThanOrEqual(0.9);
    expect(one.secondLook.amongTwo.share).toBeGreaterThanOrEqual(0.8);
  });

  test('settles plants right, and next to no native as invasive, whoever reads them', async () => {
    const inKey = (await ran).observers.filter(({ id }: { id: string }) => id !== 'not-in-the-key');
    const total = (of: (one: { settledRight: Counted; nativesSettledAsInvasive: Counted }) => number) =>
      inKey.reduce((sum: number, one: Parameters<typeof of>[0]) => sum + of(one), 0);
    expect(total((one) => one.settledRight.n)).toBeGreaterThan(300);
    expect(total((one) => one.settledRight.count) / total((one) => one.settledRight.n)).toBeGreaterThanOrEqual(0.95);
    expect(total((one) => one.nativesSettledAsInvasive.count)).toBeLessThanOrEqual(4);
  });

  // Other programs read these: names may be added, and are never changed or dropped.
  test('is told in JSON of exactly these names', async () => {
    const report = await ran;
    expect(Object.keys(report)).toEqual([
      'key',
      'way',
      'seed',
      'month',
      'plants',
      'observers',
      'calibration',
      'bound',
      'beside',
    ]);
    expect(Object.keys(report.beside)).toEqual(['way', 'plants', 'observers', 'calibration', 'bound']);
    expect(report).toMatchObject({ key: { id: 'streambank' }, way: 'free', seed: 1, month: null, plants: 150 });
    expect(Object.keys(report.bound)).toEqual([
      'bits',
      'character',
      'capacity',
      'questions',
      'questionsOnce',
      'ratio',
      'ratioOnce',
    ]);
    expect(Object.keys(report.calibration)).toEqual(['outside', 'atTheEnd', 'alongTheWay']);
    expect(report.observers.map(({ id, assumed }: { id: string; assumed: boolean }) => [id, assumed])).toEqual([
      ['novice', true],
      ['technician', true],
      ['botanist', true],
      ['twice-the-slips', false],
      ['habitual-mix-up', false],
      ['hanging-together', false],
      ['dwarfed-plants', false],
      ['not-in-the-key', false],
      ['one-wrong-answer', false],
    ]);
    const [novice] = report.observers;
    expect(Object.keys(novice)).toEqual([
      'id',
      'assumed',
      'slipsMade',
      'slipsTold',
      'plants',
      'natives',
      'topOne',
      'topTwo',
      'settled',
      'leaning',
      'open',
      'outside',
      'settledRight',
      'leaningRight',
      'settledWrong',
      'leaningWrong',
      'nativesSettledAsInvasive',
      'nativesLeaningToInvasive',
      'questions',
      'answers',
      'questionsToSettled',
      'answersToSettled',
      'atTheEnd',
      'alongTheWay',
      'slips',
      'pairs',
    ]);
    expect(Object.keys(novice.topOne)).toEqual(['count', 'n', 'share', 'low', 'high']);
    expect(Object.keys(novice.questions)).toEqual(['mean', 'median', 'p95']);
    expect(Object.keys(novice.slips[0])).toEqual([
      'character',
      'asked',
      'cannotTell',
      'misread',
      'lostWhenMisread',
      'lostWhenRight',
      'hurt',
    ]);
    expect(Object.keys(novice.pairs[0])).toEqual(['taxon', 'takenFor', 'plants', 'count', 'settled']);
    expect(Object.keys(novice.atTheEnd)).toEqual([
      'brier',
      'reliability',
      'resolution',
      'uncertainty',
      'within',
      'error',
      'bins',
    ]);
    expect(Object.keys(novice.atTheEnd.bins[0])).toEqual(['from', 'to', 'n', 'predicted', 'observed']);
  });

  test('asks no fewer questions than information allows', async () => {
    const { bound } = await ran;
    expect(bound.ratio).toBeGreaterThan(1);
    expect(bound.ratioOnce).toBeGreaterThan(1);
    expect(bound.ratioOnce).toBeLessThanOrEqual(bound.ratio);
  });
});

describe('the couplets', () => {
  test('stand beside the free way, on the same plants and people', async () => {
    const { beside } = await trial('--plants', '60', '--observer', 'novice');
    const alone = await trial('--plants', '60', '--observer', 'novice', '--way', 'couplets');
    expect(alone).toMatchObject({ way: 'couplets', beside: null, plants: 60 });
    expect(beside.way).toBe('couplets');
    expect(beside.observers).toEqual(alone.observers);
  });

  test('alone are no way through a key that has none', async () => {
    const cwd = changedKey();
    rmSync(join(cwd, 'key/couplets.json'));
    const { code, stderr } = await runCommand(['trial', 'key', '--way', 'couplets'], { cwd });
    expect(code).toBe(1);
    expect(stderr).toContain('leadwort couplets builds them');
    const without = await runCommand(['trial', 'key', '--plants', '5', '--json'], { cwd });
    expect(JSON.parse(without.stdout).beside).toBeNull();
  });
});

test('a season, one kind of observer and another seed can be asked for', async () => {
  const report = await trial('--plants', '20', '--month', '7', '--seed', '9', '--observer', 'botanist');
  expect(report).toMatchObject({ month: 7, seed: 9, plants: 20 });
  expect(report.observers.map(({ id }: { id: string }) => id)).not.toContain('novice');
  expect(report.observers.find(({ id }: { id: string }) => id === 'twice-the-slips')).toMatchObject({
    slipsMade: 0.5,
    slipsTold: 0.25,
  });
});

test('for people there are tables with an interval behind every share', async () => {
  const { code, stdout, stderr } = await runCommand(['trial', 'keys/streambank', '--plants', '20']);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  expect(stdout).toContain('20 plants for each kind of observer, a month drawn for each, seed 1, free way');
  expect(stdout).toMatch(/^ {2}novice +\d+\.\d % \(\d+\.\d-\d+\.\d\) +/m);
  for (const title of ['Named', 'Not settled', 'Natives called invasive', 'Questions', 'One answer made wrong'])
    expect(stdout).toMatch(new RegExp(`^${title}$`, 'm'));
});

test('how far it has come is drawn where somebody watches, and wiped in the end', async () => {
  const drawn: string[] = [];
  await runCommand(['trial', 'keys/streambank', '--plants', '5'], { progress: (line) => drawn.push(line) });
  expect(drawn.at(0)).toMatch(/^#+\.+ \d+ % novice$/);
  expect(drawn.at(-2)).toMatch(/^#+ 100 % /);
  expect(drawn.at(-1)).toBe('');
});

describe('--tune', () => {
  test('suggests thresholds and leaves the folder as it is', async () => {
    const cwd = changedKey();
    const before = readFileSync(join(cwd, 'key/key.json'), 'utf8');
    const { stdout, code } = await runCommand(['trial', 'key', '--plants', '30', '--tune'], { cwd });
    expect(code).toBe(0);
    expect(stdout).toContain('a suggestion: no file was changed');
    // Thirty plants cannot show that natives are safe.
    expect(stdout).toContain('nothing that was tried keeps this.');
    expect(readFileSync(join(cwd, 'key/key.json'), 'utf8')).toBe(before);
  });

  test('has a suggestion, or none, for each limit', async () => {
    const { tune } = await trial('--plants', '20', '--tune');
    expect(tune.suggestions.map((one: { leftOutSettledAtMost: number }) => one.leftOutSettledAtMost)).toEqual([
      1, 0.2, 0.15, 0.1, 0.05,
    ]);
    expect(Object.keys(tune.suggestions[0])).toEqual(['leftOutSettledAtMost', 'thresholds', 'observers']);
  });
});

test('another key, smaller and with other thresholds, is tried as well', async () => {
  const cwd = changedKey();
  cpSync(join(ROOT, 'tests/fixtures/small-key'), join(cwd, 'small'), { recursive: true });
  const { code, stdout } = await runCommand(['trial', 'small', '--plants', '30', '--json'], { cwd });
  expect(code).toBe(0);
  expect(JSON.parse(stdout).observers[0]).toMatchObject({ id: 'novice', plants: 30 });
});

describe('a wrong command line ends with 2', () => {
  test.each([
    [['--plants', '0'], '--plants: a whole number from 1 to 1000000.'],
    [['--plants', '1.5'], '--plants: a whole number'],
    [['--plants', '1e3'], '--plants: a whole number'],
    [['--seed=-1'], '--seed: a whole number from 0'],
    [['--month', '13'], '--month: a whole number from 1 to 12.'],
    [['--observer', 'nobody'], '--observer: one of novice, technician, botanist, all.'],
    [['--way', 'sideways'], '--way: one of free, couplets.'],
  ])('%j', async (words, why) => {
    const { code, stdout, stderr } = await runCommand(['trial', 'keys/streambank', ...words]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(why);
  });
});
