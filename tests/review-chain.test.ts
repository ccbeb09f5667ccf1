// From reports over a specialist's reviews to proposed rates, as whole files and the command itself.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { readFind, writeFind } from '../src/report/find/index.ts';
import { darwinCoreCsv } from '../src/report/forms/index.ts';
import { type Entered, reviewedFind } from '../src/report/review/index.ts';
import { aFind } from './support/finds.ts';
import { runCommand } from './support/run-command.ts';
import { streambank } from './support/streambank.ts';
import { temporaryFolder } from './support/temporary.ts';

const KEY = 'keys/streambank';
const said: Entered = {
  status: 'confirmed',
  taxon: '',
  by: 'R. Invented',
  remarks: '',
  wanted: [],
};
/** What became of eight invented reports: three plants, two wrong names, one of none, one that waits, one unread. */
const REVIEWS: readonly (readonly [Parameters<typeof aFind>[1], Partial<Entered> | undefined])[] = [
  ['giant-reed', {}],
  ['giant-reed', { remarks: '=HYPERLINK("x")' }],
  ['giant-reed', { status: 'corrected', taxon: 'typha-latifolia' }],
  ['native-common-reed', {}],
  ['arrow-arum', { status: 'corrected', taxon: 'colocasia-esculenta' }],
  ['elephant-ear', { status: 'corrected', taxon: 'outside' }],
  ['elephant-ear', { status: 'photo-wanted', wanted: ['leaf'] }],
  ['arrow-arum', undefined],
];
const reviewed = () =>
  REVIEWS.map(([plant, entered], i) => {
    const find = aFind({ id: `3f0d6c5e-5a51-4a0e-9d0b-00000000000${i}` }, plant);
    const now = `2026-09-2${i}T15:00:00-05:00`;
    return entered === undefined ? find : reviewedFind(streambank(), find, { ...said, ...entered }, now);
  });

/** Names and bytes of every file beneath. */
function hashOf(folder: string): string {
  const hash = createHash('sha256');
  const files = readdirSync(folder, {
    recursive: true,
    withFileTypes: true,
  }).filter((one) => one.isFile());
  for (const path of files.map(({ parentPath, name }) => join(parentPath, name)).sort())
    hash.update(path).update(readFileSync(path));
  return hash.digest('hex');
}

test('reviewed reports teach the same in any order and when replayed, and the key stays as it was', async () => {
  const before = hashOf(KEY);
  const folder = temporaryFolder();
  const paths = reviewed().map((find, i) => {
    const path = join(folder, `find-${i}.json`);
    writeFileSync(path, writeFind(find));
    expect(readFind(readFileSync(path, 'utf8'))).toEqual(find);
    return path;
  });
  const learn = async (names: readonly string[], ...more: string[]) => {
    const ran = await runCommand(['learn', KEY, ...names, '--json', ...more]);
    expect(ran).toMatchObject({ code: 0, stderr: '' });
    return JSON.parse(ran.stdout);
  };
  const target = join(folder, 'proposal.json');
  const once = await learn(paths, '-o', target);
  expect(once.finds).toBe(5);
  expect(once.notCounted.map(({ why }: { why: string }) => why).sort()).toEqual([
    'outside',
    'photo-wanted',
    'unreviewed',
  ]);
  expect(JSON.parse(readFileSync(target, 'utf8'))).toEqual(once);
  // The corrected ones are what raises a rate: some answers are not what the true plant shows.
  expect(once.mixups.length).toBeGreaterThan(0);
  expect(once.characters.some(({ proposed, rate }: { proposed: number; rate: number }) => proposed > rate)).toBe(true);

  expect(await learn([...paths].reverse())).toEqual(once);
  expect(await learn(paths)).toEqual(once);
  const { notCounted: _, ...numbers } = once;
  expect(await learn([...paths, ...paths])).toMatchObject(numbers);
  expect(hashOf(KEY)).toBe(before);
});

test('reviewed reports are a table that an outside reader takes, with the former name kept', () => {
  const csv = darwinCoreCsv(reviewed(), () => streambank().key);
  const rows: Record<string, string>[] = parse(csv, {
    columns: true,
    bom: true,
  });
  expect(rows).toHaveLength(REVIEWS.length);
  expect(rows[2]).toMatchObject({
    scientificName: 'Typha latifolia',
    identificationVerificationStatus: '1',
    identifiedBy: 'R. Invented',
    dateIdentified: '2026-09-22T15:00:00-05:00',
    verbatimIdentification: 'Arundo donax',
    previousIdentifications: 'Arundo donax',
  });
  // No field begins with what a spreadsheet would run.
  const { identificationRemarks } = rows[1] as Record<string, string>;
  expect(identificationRemarks).toContain('HYPERLINK');
  for (const row of rows) for (const field of Object.values(row)) expect(field).not.toMatch(/^[=@\t\r+]/);
  expect(rows[7]).toMatchObject({ identificationVerificationStatus: '0' });
});
