import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aFind } from '../../../tests/support/finds.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import type { Find, Review } from '../find/index.ts';
import { learnFrom, type Source } from './index.ts';

const idOf = (n: number) => `3f0d6c5e-5a51-4a0e-9d0b-${String(n).padStart(12, '0')}`;
const review: Review = { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Invented', date: '2026-09-20' };
const source = (n: number, changes: Partial<Find> = {}): Source => ({
  name: `find-${n}.json`,
  find: aFind({ id: idOf(n), review, ...changes }),
});
const other = { ...review, status: 'corrected', taxon: 'phragmites-australis' } as const;
const taxon = streambank().key.taxa.find(({ id }) => id.startsWith('phragmites'))?.id ?? '';
const some: readonly Source[] = [
  source(1),
  source(2, { review: { ...other, taxon } }),
  source(3, { review: { ...other, taxon, date: '2026-09-22T08:00:00-05:00' } }),
  source(3),
  source(4, { review: { ...review, date: '2026-10-01' }, observer: 'technician' }),
];

test('the same finds in any order, and twice over, teach the same', () => {
  const once = learnFrom(streambank(), some);
  expect(once.finds).toBe(4);
  expect(once.characters.length).toBeGreaterThan(3);
  fc.assert(
    fc.property(fc.shuffledSubarray([...some], { minLength: some.length }), (shuffled) => {
      expect(learnFrom(streambank(), shuffled)).toEqual(once);
    }),
    { numRuns: 30 },
  );
  const { characters, mixups, finds } = learnFrom(streambank(), [...some, ...some]);
  expect({ characters, mixups, finds }).toEqual({ characters: once.characters, mixups: once.mixups, finds: 4 });
});

test('a wrong name that the specialist corrects raises rates, and a confirmed one lowers them', () => {
  const right = learnFrom(
    streambank(),
    [1, 2, 3, 4, 5].map((n) => source(n)),
  );
  const wrong = learnFrom(
    streambank(),
    [1, 2, 3, 4, 5].map((n) => source(n, { review: { ...other, taxon } })),
  );
  const rose = (learned: typeof right) => learned.characters.filter(({ proposed, rate }) => proposed > rate).length;
  const shift = (learned: typeof right) => learned.characters.reduce((sum, one) => sum + one.proposed - one.rate, 0);
  expect(rose(wrong)).toBeGreaterThan(rose(right));
  expect(shift(wrong)).toBeGreaterThan(shift(right));
  for (const { low, proposed, high } of wrong.characters) expect(low < proposed && proposed < high).toBe(true);
});

describe('a find is not counted, and it is said why', () => {
  const { review: _, ...unreviewed } = aFind({ id: idOf(9) });
  test.each([
    ['unreviewed', unreviewed],
    ['photo-wanted', aFind({ review: { status: 'photo-wanted', by: 'R.', date: '2026-09-20' } })],
    ['outside', aFind({ review: { ...review, status: 'corrected', taxon: 'outside' } })],
    ['not-detected', aFind({ review, detected: false })],
    ['other-key', aFind({ review, key: { id: 'another', version: '1', title: 'Another' } })],
    ['unknown-taxon', aFind({ review: { ...review, taxon: 'constructor' } })],
    ['unknown-observer', aFind({ review, observer: 'stranger' })],
  ] as const)('%s', (why, find) => {
    const learned = learnFrom(streambank(), [{ name: 'a.json', find: find as Find }]);
    expect(learned).toMatchObject({ finds: 0, characters: [], notCounted: [{ name: 'a.json', find: find.id, why }] });
  });

  test('nor is one answer that the key does not have any more', () => {
    const find = aFind({ review });
    const [first, ...rest] = find.trail;
    const trail = [{ ...(first as Find['trail'][number]), character: 'gone' }, ...rest];
    const learned = learnFrom(streambank(), [{ name: 'a.json', find: { ...find, trail } }]);
    expect(learned.finds).toBe(1);
    expect(learned.answersNotCounted).toEqual([
      { name: 'a.json', character: 'gone', expected: `the id of a character of ${streambank().key.id}` },
    ]);
  });
});
