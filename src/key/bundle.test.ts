import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyValue, changed, changesTo } from '../../tests/support/mutate.ts';
import { edited, smallContent, smallKey } from '../../tests/support/small-key.ts';
import { bundleKey, readBundle, readVerifiedBundle } from './bundle.ts';
import { readKey } from './folder.ts';
import { KeyContentError, type Problem } from './problem.ts';

/** The same content with every object's fields the other way round, and other white space. */
function rewritten(files: ReadonlyMap<string, string>): Map<string, string> {
  const turned = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(turned);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([name, field]) => [name, turned(field)]),
    );
  };
  return new Map(
    [...files]
      .reverse()
      .map(([file, text]) => [file, `\uFEFF${JSON.stringify(turned(JSON.parse(text)), null, 7)}\r\n`]),
  );
}

function problemsOf(text: string): readonly Problem[] {
  try {
    readBundle(text);
    return [];
  } catch (error) {
    if (error instanceof KeyContentError) return error.problems;
    throw error;
  }
}

describe('bundleKey', () => {
  test('makes one text of a folder, and readBundle the same key of it', async () => {
    const { hash, ...key } = readBundle(await bundleKey(smallKey()));
    expect(key).toEqual(readKey(smallKey()));
    expect(hash).toMatch(/^sha256-[0-9a-f]{64}$/);
  });

  test('gives the same bytes for the same content, however it is written', async () => {
    const turned = await bundleKey(rewritten(smallKey()));
    expect(turned).toBe(await bundleKey(smallKey()));
  });

  test('leaves comments out, so that one does not change the hash', async () => {
    const commented = edited(
      ['taxa.json', '$comment', 'changed'],
      ['key.json', '$schema', undefined],
      ['text/es.json', '$comment', 'x'],
    );
    const bundle = await bundleKey(commented);
    expect(bundle).toBe(await bundleKey(smallKey()));
    expect(bundle).not.toContain('$');
  });

  test.each([
    ['a title', edited(['key.json', 'title', 'Other'])],
    [
      'the order of taxa',
      edited(['taxa.json', 'taxa', (smallContent().taxa as { taxa: unknown[] }).taxa.toReversed()]),
    ],
    ['a translation', edited(['text/es.json', 'text.Height', 'Talla'])],
  ])('gives another hash for another content: %s', async (_, files) => {
    const hash = async (one: ReadonlyMap<string, string>) => readBundle(await bundleKey(one)).hash;
    expect(await hash(files)).not.toBe(await hash(smallKey()));
  });

  test('hashes everything but the hash with SHA-256, as Node counts it', async () => {
    const bundle = await bundleKey(smallKey());
    const { hash } = JSON.parse(bundle);
    const rest = bundle.replace(`"hash":"${hash}",`, '');
    expect(hash).toBe(`sha256-${createHash('sha256').update(rest).digest('hex')}`);
  });

  test('does not bundle what is no key', async () => {
    await expect(bundleKey(edited(['key.json', 'id', 'X']))).rejects.toThrow(
      'key.json line 5, id: expected lower-case letters',
    );
  });
});

describe('readVerifiedBundle', () => {
  test('reads a bundle that is whole', async () => {
    expect((await readVerifiedBundle(await bundleKey(smallKey()))).id).toBe('small-key');
  });

  test('refuses one that was changed, and one without a hash', async () => {
    const bundle = await bundleKey(smallKey());
    await expect(readVerifiedBundle(bundle.replace('Three tall grasses', 'Three tall weeds'))).rejects.toThrow(
      /bundle, hash: expected sha256-[0-9a-f]{64}, the hash of this content, found "sha256-/,
    );
    await expect(readVerifiedBundle(JSON.stringify(smallContent()))).rejects.toThrow('found nothing');
  });

  test('takes a digest that is handed in', async () => {
    const digest = async () => new Uint8Array(32).fill(7).buffer;
    const bundle = await bundleKey(smallKey(), {}, digest);
    expect(bundle).toContain(`"hash":"sha256-${'07'.repeat(32)}"`);
    expect((await readVerifiedBundle(bundle, {}, digest)).id).toBe('small-key');
    await expect(readVerifiedBundle(bundle)).rejects.toThrow(KeyContentError);
  });
});

describe('readBundle', () => {
  test('names the file of the folder in which a fault belongs', () => {
    const content = smallContent() as Record<string, Record<string, unknown>>;
    const faulty = { ...content, text: { es: 3 }, taxa: { ...content.taxa, taxon: [] }, extra: 1 };
    expect(problemsOf(JSON.stringify(faulty)).map(({ file, path, code }) => [file, path, code])).toEqual([
      ['taxa.json', 'taxon', 'unknown-field'],
      ['text/es.json', '', 'type'],
      ['bundle', 'extra', 'unknown-field'],
    ]);
  });

  test.each([
    ['{', 'json'],
    ['[]', 'type'],
    ['null', 'type'],
    ['{"format": 1}', 'missing-field'],
    [`${'['.repeat(10_000)}`, 'too-deep'],
    ['{"__proto__": {"format": 1}}', 'reserved-field'],
    [`"${'x'.repeat(5_000_000)}"`, 'too-large'],
  ])('refuses %.20s', (text, code) => {
    expect(problemsOf(text)[0]?.code).toBe(code);
  });

  test('gives a key or located problems, whatever is changed in a bundle', () => {
    fc.assert(
      fc.property(changesTo(smallContent()), (changes) => {
        for (const { file, expected } of problemsOf(JSON.stringify(changed(smallContent(), changes)))) {
          expect(file).toMatch(/^(bundle|[a-z]+\.json|text\/.*\.json)$/s);
          expect(expected).not.toBe('');
        }
      }),
      { numRuns: 400 },
    );
    fc.assert(
      fc.property(anyValue(), (value) => void expect(problemsOf(JSON.stringify(value)).length).toBeGreaterThan(0)),
    );
  });
});
