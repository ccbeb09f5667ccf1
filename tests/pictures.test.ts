// The pictures of the key folders of this repository: each key's list, its files and its album hang together.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { inspect } from '../src/command/inspect.ts';
import { albumOf, describeProblem, hashed, readAlbum, readSvg } from '../src/key/index.ts';
import { Problems } from '../src/key/problem.ts';
import { keyFiles } from './support/key-files.ts';

const pictures = fileURLToPath(new URL('../images-placeholder/', import.meta.url));
const inspection = await inspect(
  keyFiles('keys/streambank'),
  fileURLToPath(new URL('../keys/streambank', import.meta.url)),
  '',
);

describe('the pictures of keys/streambank', () => {
  const { key, glossary, pictures: there } = inspection;
  if (key === undefined || there?.manifest === undefined) throw new Error('the key has no pictures');

  test('are all there, sound, of states that the key has, and with words in every language', () => {
    const codes = ['missing-file', 'form', 'value', 'unknown-picture', 'no-alt', 'no-picture'];
    const problems = inspection.problems.filter(({ code, file }) => codes.includes(code) || file.startsWith('..'));
    expect(problems.map(describeProblem)).toEqual([]);
  });

  test('are small enough to be fetched over a weak signal', () => {
    for (const { file } of there.manifest?.pictures ?? [])
      expect(statSync(`${pictures}${file}`).size).toBeLessThan(20_000);
  });

  test('make an album that belongs to the key and shows every state', async () => {
    const album = readAlbum(await hashed(albumOf(key, { ...there, glossary })), key);
    for (const { id, states } of key.characters)
      for (const state of states) expect(album.states.get(`${id}/${state.id}`)?.drawing?.length).toBeGreaterThan(0);
  });

  test('lie in the folder only if they are listed', () => {
    const listed = new Set(there.manifest?.pictures.map(({ file }) => file));
    const files = readdirSync(pictures, { recursive: true, encoding: 'utf8' }).map((name) =>
      name.replaceAll('\\', '/'),
    );
    expect(files.filter((name) => name.endsWith('.svg') && !listed.has(name))).toEqual([]);
  });

  test('name the pens they were drawn with, and nothing else that a page would run or fetch', () => {
    const files = (there.manifest?.pictures ?? []).map(({ file }) => file).filter((file) => file.endsWith('.svg'));
    for (const file of files) {
      const text = readFileSync(`${pictures}${file}`, 'utf8');
      expect(readSvg(text, file, new Problems())).toBeDefined();
      expect(text.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
        /https?:|javascript:|<script|\son\w+=|url\(/i,
      );
    }
  });
});
