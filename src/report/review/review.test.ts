import { describe, expect, test } from 'vitest';
import { aFind } from '../../../tests/support/finds.ts';
import { answersOf, streambank } from '../../../tests/support/streambank.ts';
import { answersIn, type Find, FindError, readFind, writeFind } from '../find/index.ts';
import { darwinCoreRow } from '../forms/index.ts';
import { claimOf, dossierOf, type Entered, lackingIn, reviewedFind } from './index.ts';

const NOW = '2026-09-20T10:00:00-05:00';
const entered: Entered = { status: 'confirmed', taxon: '', by: ' R. Invented ', remarks: '', wanted: [] };

describe('a dossier', () => {
  test("has today's standing, which with the same key is the one in the find", () => {
    const { today, candidates, keyDiffers, answers } = dossierOf(streambank(), aFind());
    expect(today.standing).toEqual(answersOf('giant-reed').snapshot.identification.standing);
    expect(candidates[0]?.id).toBe('arundo-donax');
    expect(candidates).toHaveLength(3);
    expect(answers).toEqual(answersIn(aFind()));
    expect(keyDiffers).toBe(false);
    expect(dossierOf(streambank(), aFind({ key: { ...aFind().key, version: '0.0.1' } })).keyDiffers).toBe(true);
  });

  test('holds each answer against what each candidate shows', () => {
    const { rows, candidates } = dossierOf(streambank(), aFind());
    expect(rows).toHaveLength(aFind().trail.length);
    for (const { fits } of rows) expect(fits).toHaveLength(candidates.length);
    expect(rows.map(({ fits }) => fits?.[0])).toContain('usually');
  });

  test('leaves out answers that the key does not have any more, and says so', () => {
    const [first, ...rest] = aFind().trail;
    const trail = [...rest, { ...(first as Find['trail'][number]), character: 'gone' }];
    const { rows, answers } = dossierOf(streambank(), aFind({ trail, observer: 'gone' }));
    expect(rows.map(({ fits }) => fits === undefined)).toEqual([...rest.map(() => false), true]);
    expect(rows.map(({ known }) => known?.answer.character)).toEqual([...rest.map((one) => one.character), undefined]);
    expect(answers.map(({ character }) => character)).toEqual(rest.map((one) => one.character));
  });
});

describe('a review', () => {
  test('that confirms is in the file, and in the columns of the standard', () => {
    const find = reviewedFind(streambank(), aFind(), { ...entered, remarks: ' ligule seen ' }, NOW);
    expect(find.review).toEqual({
      status: 'confirmed',
      taxon: 'arundo-donax',
      name: 'Arundo donax',
      by: 'R. Invented',
      date: NOW,
      remarks: 'ligule seen',
    });
    expect(readFind(writeFind(find))).toEqual(find);
    expect(darwinCoreRow(find, streambank().key)).toMatchObject({
      identificationVerificationStatus: '1',
      identifiedBy: 'R. Invented',
      dateIdentified: NOW,
      scientificName: 'Arundo donax',
    });
  });

  test('that corrects names any plant of the key, or none', () => {
    const to = (taxon: string) =>
      reviewedFind(streambank(), aFind(), { ...entered, status: 'corrected', taxon }, NOW).review;
    expect(to('typha-latifolia')).toMatchObject({ status: 'corrected', name: 'Typha latifolia' });
    expect(to('outside')).not.toHaveProperty('name');
  });

  test('that corrects to what the report says anyway confirms it', () => {
    const same: Entered = { ...entered, status: 'corrected', taxon: 'arundo-donax' };
    expect(reviewedFind(streambank(), aFind(), same, NOW).review).toMatchObject({
      status: 'confirmed',
      taxon: 'arundo-donax',
    });
  });

  test('that asks for photographs names them, and no plant', () => {
    const asked: Entered = { ...entered, status: 'photo-wanted', taxon: 'typha-latifolia', wanted: ['collar'] };
    expect(reviewedFind(streambank(), aFind(), asked, NOW).review).toEqual({
      status: 'photo-wanted',
      by: 'R. Invented',
      date: NOW,
      wanted: ['collar'],
    });
  });

  test('tells what it lacks', () => {
    expect(lackingIn({ ...entered, status: '', by: ' ' })).toEqual(['status', 'by']);
    expect(lackingIn({ ...entered, status: 'corrected' })).toEqual(['taxon']);
    expect(lackingIn({ ...entered, status: 'photo-wanted' })).toEqual(['wanted']);
    expect(lackingIn(entered)).toEqual([]);
  });

  test('cannot confirm what is open between several plants', () => {
    const { verdict } = aFind();
    expect(claimOf(aFind({ verdict: { ...verdict, kind: 'open', taxa: ['a', 'b'] } }))).toBeUndefined();
    expect(claimOf(aFind({ verdict: { ...verdict, kind: 'outside', taxa: [] } }))).toBe('outside');
  });

  test('is refused as a whole when a text is too long', () => {
    expect(() => reviewedFind(streambank(), aFind(), { ...entered, by: 'x'.repeat(10_000) }, NOW)).toThrow(FindError);
  });
});
