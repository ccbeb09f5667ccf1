import { cpSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';
import { SKETCHES } from '../drawing/sketches/index.ts';
import type { Manifest } from '../key/index.ts';

const book = [...SKETCHES.values()].find(({ forms }) => forms.length >= 3);
if (book === undefined) throw new Error('no sketch book has three forms');
const forms = book.forms.slice(0, 3);
/** The first character of the small key and its states, in their order. */
const STATES = ['tall-cane', 'grass', 'leafy-herb'];
const file = (state: string) => `pictures/growth-form/${state}.svg`;

interface Folder {
  readonly cwd: string;
  readonly read: (name: string) => string;
  readonly write: (name: string, text: string) => void;
  readonly manifest: () => Manifest;
  readonly change: (change: (manifest: Manifest) => object) => void;
  readonly draw: (...words: readonly string[]) => Promise<{ code: number; stdout: string; stderr: string }>;
}

/** A folder with the small key, whose first character draws what a book knows. */
function folder(change: (character: Record<string, unknown>) => void = () => {}): Folder {
  const cwd = temporaryFolder();
  cpSync(join(ROOT, 'tests/fixtures/small-key'), join(cwd, 'key'), { recursive: true });
  const read = (name: string) => readFileSync(join(cwd, name), 'utf8');
  const write = (name: string, text: string) => writeFileSync(join(cwd, name), text);
  const key = JSON.parse(read('key/key.json'));
  write('key/key.json', JSON.stringify({ ...key, pictures: '../pictures/manifest.json' }));
  const content = JSON.parse(read('key/characters.json'));
  const [first] = content.characters;
  first.draws = book?.role;
  for (const [i, state] of first.states.entries()) state.form = forms[i];
  change(first);
  write('key/characters.json', JSON.stringify(content));
  return {
    ...{ cwd, read, write },
    manifest: () => JSON.parse(read('pictures/manifest.json')),
    change: (edit) => write('pictures/manifest.json', JSON.stringify(edit(JSON.parse(read('pictures/manifest.json'))))),
    draw: (...words) => runCommand(['draw', 'key', ...words], { cwd }),
  };
}

const filesIn = (cwd: string) => readdirSync(join(cwd, 'pictures'), { recursive: true, encoding: 'utf8' }).sort();
const altOf = ({ pictures }: Manifest, state: string) =>
  pictures.find((one) => one.file === `growth-form/${state}.svg`)?.alt;

test('every state whose form a book knows is drawn and listed with its words, and the rest is told', async () => {
  const { cwd, draw, manifest, read } = folder();
  const { code, stdout } = await draw();
  expect(code).toBe(0);
  expect(stdout).toMatch(/^pictures: 3 drawings written, 0 as before, 0 made by hand and kept\n/);
  expect(stdout).toContain('not drawn: habitat (standing-water, waterline, moist-bank): it has no "draws"\n');
  expect(filesIn(cwd)).toEqual(['growth-form', ...STATES.map((s) => `growth-form/${s}.svg`).sort(), 'manifest.json']);
  expect(manifest()).toMatchObject({ licence: 'CC0-1.0', credit: 'Three tall grasses' });
  expect(manifest().pictures).toEqual(
    STATES.map((state, i) => ({
      file: `growth-form/${state}.svg`,
      shows: { character: 'growth-form', state },
      alt: book.sketch({ form: forms[i] ?? '' })?.alt,
    })),
  );
  expect(new Set(manifest().wanted?.map(({ taxon }) => taxon)).size).toBe(3);
  expect(read(file('grass'))).toContain('data-drawn-by="leadwort"');
});

test('a second run changes nothing, not even the time of a file', async () => {
  const { cwd, draw, read } = folder();
  await draw();
  const times = () => filesIn(cwd).map((name) => statSync(join(cwd, 'pictures', name)).mtimeMs);
  const [before, list] = [times(), read('pictures/manifest.json')];
  const { stdout } = await draw('--json');
  expect(JSON.parse(stdout)).toMatchObject({ changed: false, written: [], unchanged: 3, kept: [] });
  expect(times()).toEqual(before);
  expect(read('pictures/manifest.json')).toBe(list);
});

describe('what somebody made is kept:', () => {
  const byHand = '<svg viewBox="0 0 96 96"><title>By hand</title><path class="line" d="M1 2L3 4"/></svg>';

  test('a file without the mark of the command, whether it was drawn before or not', async () => {
    const { draw, manifest, read, write } = folder();
    await draw();
    const before = manifest();
    write(file('grass'), byHand);
    const { stdout } = await draw('--json');
    expect(JSON.parse(stdout)).toMatchObject({ written: [], unchanged: 2, kept: ['growth-form/grass.svg'] });
    expect(read(file('grass'))).toBe(byHand);
    expect(manifest()).toEqual(before);
  });

  test('words changed by hand, language by language, also when the drawing changes its own', async () => {
    const { draw, manifest, change, read, write } = folder();
    await draw();
    const drawn = altOf(manifest(), 'grass');
    // As if an older sketch had said something else in both languages, and somebody had then mended the Spanish.
    write(file('grass'), read(file('grass')).replace(/(<title lang="..">).*(<\/title>)/g, '$1Older.$2'));
    change((manifest) => ({
      ...manifest,
      pictures: manifest.pictures.map((one) =>
        one.file === 'growth-form/grass.svg' ? { ...one, alt: { en: 'Older.', es: 'Mejor.', fr: 'Une herbe.' } } : one,
      ),
    }));
    await draw();
    expect(altOf(manifest(), 'grass')).toEqual({ en: drawn?.en, es: 'Mejor.', fr: 'Une herbe.' });
    await draw();
    expect(altOf(manifest(), 'grass')).toEqual({ en: drawn?.en, es: 'Mejor.', fr: 'Une herbe.' });
  });

  test('entries of photographs, comments, own credits, and rows of wanted photographs that are marked', async () => {
    const { draw, manifest, change } = folder();
    await draw();
    const photo = {
      ...{ file: 'grass.jpg', shows: { character: 'growth-form', state: 'grass' }, alt: { en: 'Grass.' } },
      ...{ licence: 'CC0-1.0', credit: 'A. Person', width: 800, height: 600 },
    };
    const row = { taxon: 'arundo-donax', organ: 'leaf', angle: 'Mine.', scale: 'A coin', season: '5', keep: true };
    change(({ pictures, wanted = [], ...rest }) => ({
      ...{ $comment: 'Ours.', ...rest },
      pictures: [photo, ...pictures.map((one, i) => (i === 0 ? { ...one, credit: 'B. Person' } : one))],
      wanted: [row, ...wanted.slice(0, 1)],
    }));
    await draw();
    expect(manifest()).toMatchObject({ $comment: 'Ours.', pictures: [{ credit: 'B. Person' }, photo, {}, {}] });
    expect(manifest().wanted?.filter(({ organ, taxon }) => organ === 'leaf' && taxon === 'arundo-donax')).toEqual([
      row,
    ]);
    expect(manifest().wanted?.length).toBeGreaterThan(3);
  });
});

test('a drawing of ours that is damaged is drawn again', async () => {
  const { draw, read, write } = folder();
  await draw();
  const whole = read(file('grass'));
  write(file('grass'), whole.slice(0, 200));
  await draw();
  expect(read(file('grass'))).toBe(whole);
});

test('-o draws into another folder, and makes it', async () => {
  const { cwd, draw } = folder();
  expect((await draw('-o', 'other/place')).code).toBe(0);
  expect(readdirSync(join(cwd, 'other/place')).sort()).toEqual(['growth-form', 'manifest.json']);
});

describe('nothing is written, and nothing lost,', () => {
  test('when the list of pictures is at fault', async () => {
    const { cwd, draw, read, write } = folder();
    mkdirSync(join(cwd, 'pictures'));
    write('pictures/manifest.json', '{"pictures": [\n}');
    const { code, stderr } = await draw();
    expect(code).toBe(1);
    expect(stderr).toMatch(/^leadwort: pictures\/manifest\.json: line 2: expected /);
    expect(read('pictures/manifest.json')).toBe('{"pictures": [\n}');
    expect(filesIn(cwd)).toEqual(['manifest.json']);
  });

  test('when one of the files cannot be written', async () => {
    const { cwd, draw } = folder();
    mkdirSync(join(cwd, 'pictures/manifest.json'), { recursive: true });
    const { code, stderr } = await draw();
    expect({ code, stderr }).toEqual({ code: 1, stderr: expect.stringContaining('this is a folder where a file') });
    expect(filesIn(cwd).filter((name) => name.includes('svg'))).toEqual([]);
  });

  test('when the folder is no key', async () => {
    const { cwd, draw } = folder((character) => {
      character.kind = 'sort';
    });
    const { code, stderr } = await draw();
    expect({ code, stderr }).toEqual({ code: 1, stderr: expect.stringContaining('found "sort"') });
    expect(readdirSync(cwd)).toEqual(['key']);
  });
});

test('a form that no book knows, and a role that nothing draws, are told', async () => {
  const form = folder((character) => {
    (character.states as Record<string, unknown>[])[1] = { id: 'grass', label: 'A grass', form: 'no-such-form' };
  });
  expect((await form.draw()).stdout).toContain(`not drawn: growth-form (grass): "${book.role}" has no such form\n`);
  const role = folder((character) => {
    character.draws = 'no-such-role';
  });
  expect((await role.draw()).stdout).toContain(
    'not drawn: growth-form (tall-cane, grass, leafy-herb): nothing draws "no-such-role"\n',
  );
});

test('without a word of where pictures lie, it says what is missing', async () => {
  const { code, stderr } = await runCommand(['draw', 'tests/fixtures/small-key']);
  expect(code).toBe(1);
  expect(stderr).toBe(
    'leadwort: tests/fixtures/small-key: key.json does not say where its pictures lie ("pictures"), and no -o DIR does\n',
  );
});

test('the files of a picture that are missing or broken are warnings of check, each in its file', async () => {
  const { cwd, draw, change, write } = folder();
  await draw();
  write(file('grass'), '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 96 96">\n<script/></svg>');
  change((manifest) => ({
    ...manifest,
    pictures: [
      ...manifest.pictures,
      { file: 'gone.svg', shows: { character: 'height', state: 'head' }, alt: { en: 'A.', es: 'B.' } },
      {
        ...{ file: 'gone.jpg', shows: { taxon: 'arundo-donax', organ: 'leaf' }, alt: { en: 'A.', es: 'B.' } },
        ...{ licence: 'CC0-1.0', credit: 'A. Person', width: 800, height: 600 },
      },
    ],
  }));
  const { code, stdout } = await runCommand(['check', 'key'], { cwd });
  expect(code).toBe(0);
  expect(stdout).toMatch(
    /^\.\.\/pictures\/growth-form\/grass\.svg\n {2}warning {2}line 2: expected <title> or <path> and nothing else, found /m,
  );
  expect(stdout).toMatch(
    /^\.\.\/pictures\/gone\.svg\n {2}warning {2}expected a file that can be read, found there is no/m,
  );
  expect(stdout).toMatch(/^ {2}warning {2}line \d+, pictures\[4\]\.file: expected this file, found gone\.jpg$/m);
  expect(stdout).toMatch(/^ {2}\d+ photographs still wanted: /m);
  const { stdout: listed } = await runCommand(['check', 'key', '--wanted'], { cwd });
  expect(listed).toMatch(/^taxon +organ +months +angle +scale +why$/m);
  expect(listed).toMatch(/^arundo-donax +leaf +/m);
});
