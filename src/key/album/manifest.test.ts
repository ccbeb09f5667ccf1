import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, changesTo } from '../../../tests/support/mutate.ts';
import { Problems } from '../problem.ts';
import { readManifest } from './manifest.ts';

const drawing = {
  file: 'height/head.svg',
  shows: { character: 'height', state: 'head' },
  alt: { en: 'A plant as tall as the person beside it.' },
};
const photo = {
  file: 'photographs/reed-1600.jpg',
  shows: { taxon: 'arundo-donax', organ: 'collar' },
  alt: { en: 'A brown wedge where the blade leaves the cane.' },
  licence: 'CC0-1.0',
  credit: 'A. Person',
  width: 1600,
  height: 1200,
  sizes: [{ file: 'photographs/reed-480.webp', width: 480 }],
};
const wanted = { taxon: 'arundo-donax', organ: 'flower', angle: 'From the side.', scale: 'A hand', season: '8-10' };
const manifest = { licence: 'CC BY 4.0', credit: 'Somebody', pictures: [drawing, photo], wanted: [wanted] };

const problemsOf = (content: unknown) => {
  const problems = new Problems();
  const read = readManifest(typeof content === 'string' ? content : JSON.stringify(content), 'manifest.json', problems);
  expect(read === undefined).toBe(!problems.none);
  return problems.list;
};
const withPicture = (picture: object) => ({ ...manifest, pictures: [picture] });

test('a list of drawings and photographs is read as it stands', () => {
  const problems = new Problems();
  expect(readManifest(JSON.stringify(manifest), 'manifest.json', problems)).toEqual(manifest);
  expect(problems.list).toEqual([]);
});

describe('a path stays inside the folder of pictures, so', () => {
  test.each([
    '../secret.svg',
    'a/../../secret.svg',
    '/etc/secret.svg',
    'C:\\secret.svg',
    'a\\b.svg',
    'https://example.org/a.svg',
    '//example.org/a.jpg',
    'data:image/svg+xml,a.svg',
    './a.svg',
    '.hidden/a.svg',
    'a//b.svg',
    'a.svg?x=.svg',
    'a b.svg',
    'a.html',
    'a.svgz',
    'a',
    '',
  ])('%s is refused', (file) => {
    const [problem] = problemsOf(withPicture({ ...drawing, file }));
    expect(problem).toMatchObject({ file: 'manifest.json', path: 'pictures[0].file', severity: 'error' });
    const [size] = problemsOf(withPicture({ ...photo, sizes: [{ file: `${file}`, width: 3 }] }));
    expect(size).toMatchObject({ path: 'pictures[0].sizes[0].file' });
  });
});

describe('a photograph', () => {
  test.each(['credit', 'licence', 'width', 'height'])('needs its %s', (name) => {
    expect(problemsOf(withPicture({ ...photo, [name]: undefined }))).toMatchObject([
      { path: 'pictures[0]', code: 'missing-field', expected: `the field "${name}", as every photograph has` },
    ]);
  });

  test('needs words in at least one language', () => {
    expect(problemsOf(withPicture({ ...photo, alt: {} }))).toMatchObject([{ path: 'pictures[0].alt', code: 'length' }]);
    expect(problemsOf(withPicture({ ...photo, alt: undefined }))).toMatchObject([{ code: 'missing-field' }]);
  });
});

test.each([
  ['a drawing of a plant', { ...drawing, shows: photo.shows }, 'pictures[0].shows'],
  ['a drawing with a width', { ...drawing, width: 96 }, 'pictures[0].width'],
  ['a picture of nothing', { ...drawing, shows: {} }, 'pictures[0].shows'],
  ['a picture of two things', { ...photo, shows: { ...photo.shows, ...drawing.shows } }, 'pictures[0].shows'],
  ['a state without its character', { ...drawing, shows: { state: 'head' } }, 'pictures[0].shows.character'],
  [
    'a part that no plant has',
    { ...photo, shows: { taxon: 'arundo-donax', organ: 'elbow' } },
    'pictures[0].shows.organ',
  ],
])('%s is refused where it stands', (_, picture, path) => {
  expect(problemsOf(withPicture(picture))[0]).toMatchObject({ path });
});

test('a picture that is listed twice is told', () => {
  expect(problemsOf({ ...manifest, pictures: [drawing, drawing] })).toMatchObject([
    { path: 'pictures[1].file', code: 'duplicate-id' },
  ]);
});

test('whatever is changed in a list, it is read or every problem has its place', () => {
  fc.assert(
    fc.property(changesTo(manifest), (changes) => {
      for (const problem of problemsOf(changed(manifest, changes) ?? null))
        expect(problem).toMatchObject({ file: 'manifest.json', severity: 'error', expected: expect.any(String) });
    }),
  );
});
