import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSchemas } from '../../../tests/support/build-validators.mjs';
import { changed, changesTo } from '../../../tests/support/mutate.ts';
import { edited, smallKey } from '../../../tests/support/small-key.ts';
import { bundleKey, hashed, readBundle } from '../bundle.ts';
import type { Drawing } from '../drawing.ts';
import { readKey } from '../folder.ts';
import type { Listed } from './loose.ts';
import { type AlbumParts, albumOf, openingOf } from './make.ts';
import { AlbumError, readAlbum } from './read.ts';

const key = readKey(smallKey());
const [first, second] = key.taxa.map(({ id }) => id) as [string, string];
const line: Drawing = [['line', 'M1 2L3 4']];
const drawn = (state: string, character = 'growth-form'): Listed => ({
  file: `${character}/${state}.svg`,
  shows: { character, state },
  alt: { en: `A drawing of ${state}.`, es: `Un dibujo de ${state}.` },
});
const photo = (file: string, shows: Listed['shows']): Listed => ({
  ...{ file, shows, alt: { en: `A photograph, ${file}.` }, credit: 'A. Person', licence: 'CC0-1.0' },
  ...{ width: 1600, height: 1200 },
});
const term = {
  ...{ id: 'ligule', term: 'ligule', words: ['ligule', 'ligules'], plain: 'A thin flap.', definition: 'A membrane.' },
  ...{ part: 'collar' as const, where: 'Where the blade begins.', source: ['memory'] },
};
const said = { term: 'lígula', words: ['lígula'], plain: 'Una lengüeta.', definition: 'Una membrana.', where: 'Ahí.' };
const parts = (pictures: readonly Listed[], missing: readonly string[] = []): AlbumParts => ({
  manifest: { licence: 'CC BY 4.0', credit: 'Somebody', pictures },
  drawings: new Map(
    pictures
      .filter(({ file }) => file.endsWith('.svg') && !missing.includes(file))
      .map(({ file }) => [file, { drawing: line, titles: new Map() }]),
  ),
  glossary: [{ ...term, text: new Map([['es', said]]) }],
});
const states = key.characters.flatMap(({ id, states }) => states.map((state) => drawn(state.id, id)));
const whole = albumOf(key, parts([...states, photo('a.jpg', { taxon: first, organ: 'collar' })]));
const problemsOf = (album: unknown, of?: Parameters<typeof readAlbum>[1]) => {
  try {
    readAlbum(typeof album === 'string' ? album : JSON.stringify(album), of);
    return [];
  } catch (error) {
    if (error instanceof AlbumError) return error.problems;
    throw error;
  }
};

test('an album holds every state that is drawn, every photograph of a plant, and the glossary', async () => {
  const album = readAlbum(await hashed(whole), key);
  expect([...album.states.keys()]).toEqual(states.map(({ shows }) => Object.values(shows).join('/')).sort());
  expect(album.states.get('growth-form/grass')).toEqual({
    drawing: line,
    alt: new Map(Object.entries(drawn('grass').alt)),
  });
  expect(album.taxa.get(first)).toEqual([
    {
      ...{ file: 'a.jpg', width: 1600, height: 1200, sizes: [], credit: 'A. Person', licence: 'CC0-1.0' },
      ...{ organ: 'collar', alt: new Map([['en', 'A photograph, a.jpg.']]) },
    },
  ]);
  expect(album.taxa.has(second)).toBe(false);
  expect(album.glossary).toEqual([{ ...term, text: new Map([['es', said]]) }]);
  expect(() => (album.states as Map<string, unknown>).clear()).toThrow(TypeError);
});

test('a photograph takes the place of the drawing with its own words, and the drawing stays behind it', () => {
  const shows = { character: 'growth-form', state: 'grass' };
  for (const pictures of [
    [drawn('grass'), photo('b.webp', shows), photo('c.png', shows)],
    [photo('b.webp', shows), photo('c.png', shows), drawn('grass')],
  ]) {
    const { states } = albumOf(key, parts(pictures));
    expect(states['growth-form/grass']).toMatchObject({
      drawing: line,
      photo: { file: 'b.webp', credit: 'A. Person' },
      alt: { en: 'A photograph, b.webp.' },
    });
  }
});

test('a drawing that could not be read, and a picture of what the key does not have, are left out', () => {
  const { states, taxa } = albumOf(
    key,
    parts(
      [drawn('grass'), drawn('nothing-like-it'), drawn('tall-cane'), photo('d.jpg', { taxon: 'other', organ: 'leaf' })],
      ['growth-form/tall-cane.svg'],
    ),
  );
  expect(Object.keys(states)).toEqual(['growth-form/grass']);
  expect(taxa).toEqual({});
});

describe('what cannot be used is refused with its place:', () => {
  test('an album of another key, or of another version of it', () => {
    expect(problemsOf(whole, { id: 'other', version: key.version })).toMatchObject([{ file: 'album', path: 'key' }]);
    expect(problemsOf(whole, { id: key.id, version: '0.9' })).toMatchObject([{ path: 'version', found: '"1.0.0"' }]);
    expect(problemsOf(whole)).toEqual([]);
  });

  test.each([
    [['crayon', 'M1 2'], 'states.["growth-form/grass"].drawing[0][0]'],
    [['line', 'face'], 'states.["growth-form/grass"].drawing[0][1]'],
    [['line', 'M1 2"/><script>'], 'states.["growth-form/grass"].drawing[0][1]'],
    [['line'], 'states.["growth-form/grass"].drawing[0]'],
  ])('a mark that is none: %j', (mark, path) => {
    const states = { 'growth-form/grass': { drawing: [mark], alt: {} } };
    expect(problemsOf({ ...whole, states }).map((one) => one.path.replace('states[', 'states.['))).toEqual([path]);
  });

  test.each(['', '{', 'null', '[]', '<!doctype html>', '{"format":2}'])('a file that is no album: %s', (text) => {
    expect(problemsOf(text).length).toBeGreaterThan(0);
  });

  test('whatever is changed in an album, it is read or refused with an AlbumError', () => {
    const small = albumOf(key, parts([drawn('grass'), photo('a.jpg', { taxon: first, organ: 'collar' })]));
    const ajv = new Ajv2020({ allowUnionTypes: true, strictRequired: false, ownProperties: true });
    for (const schema of readSchemas().values()) ajv.addSchema(schema);
    const reference = ajv.getSchema('https://example.org/leadwort/key/1/album.json');
    fc.assert(
      fc.property(changesTo(small), (changes) => {
        const album = changed(small, changes) ?? null;
        // The common validator of JSON Schema as reference; ours also refuses reserved names and unknown pens.
        if (!reference?.(album)) expect(problemsOf(album).length).toBeGreaterThan(0);
        else problemsOf(album);
      }),
    );
  });
});

describe('the bundle of a key with pictures', () => {
  const told = { album: 'small.album.json', opening: openingOf(key, whole) };

  test('names the album, and holds the drawings of the first question and no others', async () => {
    const bundle = readBundle(await bundleKey(smallKey(), {}, undefined, told));
    expect(bundle.album).toBe('small.album.json');
    const leads = key.couplets[0]?.leads ?? [];
    const named = leads.flatMap(({ character, states = [] }) => states.map((state) => `${character}/${state}`));
    expect(named.length).toBeGreaterThan(1);
    expect([...(bundle.opening?.keys() ?? [])]).toEqual(expect.arrayContaining(named));
    expect(bundle.opening?.size).toBeLessThan(states.length);
    expect(bundle.opening?.get(named[0] as string)).toEqual(line);
  });

  test('does not say where the list of pictures lies', async () => {
    const files = edited(['key.json', 'pictures', '../pictures/manifest.json']);
    expect(await bundleKey(files)).toBe(await bundleKey(smallKey()));
  });

  test.each([
    [{ album: '../album.json' }, 'album'],
    [{ album: 'https://example.org/album.json' }, 'album'],
    [{ opening: { 'a/b': [['line', '<script>']] } }, 'opening["a/b"][0][1]'],
  ])('is refused with %j', async (wrong, path) => {
    const bundle = { ...JSON.parse(await bundleKey(smallKey(), {}, undefined, told)), ...wrong };
    expect(() => readBundle(JSON.stringify(bundle))).toThrow(`bundle, ${path}: expected`);
  });
});

test.each(['/etc/manifest.json', 'https://example.org/m.json', '../..', 'a/../../m.json', '..\\m.json', 'm.txt'])(
  'a key cannot have its pictures at %s',
  (pictures) => {
    expect(() => readKey(edited(['key.json', 'pictures', pictures]))).toThrow(/key\.json line \d+, pictures: expected/);
  },
);
