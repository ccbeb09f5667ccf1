// The key folders of this repository are keys: they can be read, checked and bundled.
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bundleKey, checkKey, describeProblem, GLOSSARY, readBundle, readGlossary, readKey } from '../src/key/index.ts';
import { Problems } from '../src/key/problem.ts';
import { keyFiles } from './support/key-files.ts';

const names = readdirSync(new URL('../keys/', import.meta.url));

test('the demonstration has a key', () => {
  expect(names).toContain('streambank');
});

describe.each(names)('keys/%s', (name) => {
  const files = keyFiles(`keys/${name}`);

  test('is read, and nothing in it contradicts itself', () => {
    const errors = checkKey(readKey(files)).filter(({ severity }) => severity === 'error');
    expect(errors.map(describeProblem)).toEqual([]);
  });

  test('has a glossary that is read whole, or none', () => {
    const problems = new Problems();
    const text = files.get(GLOSSARY);
    if (text !== undefined) expect(readGlossary(text, readKey(files), problems)).toBeDefined();
    expect(problems.list.map(describeProblem)).toEqual([]);
  });

  test('is bundled into the key that it is', async () => {
    const { hash: _, ...key } = readBundle(await bundleKey(files));
    expect(key).toEqual(readKey(files));
  });
});
