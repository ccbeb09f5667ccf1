// Files made to do harm, and files that are anything at all.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyValue, changed, changesTo } from '../../tests/support/mutate.ts';
import { edited, problemsOf, smallKey } from '../../tests/support/small-key.ts';
import { KEY_FILES } from './content.ts';
import { readKey } from './folder.ts';

type Json = Record<string, unknown>;

describe('hostile files', () => {
  test.each(KEY_FILES)('%s with prototype keys is refused, and nothing is polluted', (file) => {
    const text = smallKey().get(file) ?? '';
    const poisoned = text.replace(
      '{',
      '{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}},',
    );
    const problems = problemsOf(smallKey().set(file, poisoned));
    expect(problems.filter(({ code }) => code === 'reserved-field').map(({ path }) => path)).toEqual([
      '__proto__',
      'constructor',
      'constructor.prototype',
    ]);
    expect(({} as Json).polluted).toBeUndefined();
  });

  test('prototype keys are refused as ids of traits, sentences, languages and file names too', () => {
    const at = (file: string, from: string, to: string) => {
      const files = smallKey();
      return problemsOf(files.set(file, (files.get(file) ?? '').replace(from, to))).map(({ code }) => code);
    };
    expect(
      at('taxa.json', '"traits": {', '"traits": { "__proto__": { "usually": ["x"], "source": ["memory"] },'),
    ).toContain('reserved-field');
    expect(at('text/es.json', '"text": {', '"text": { "constructor": "x",')).toContain('reserved-field');
    expect(problemsOf(smallKey().set('text/__proto__.json', '{"language": "es", "text": {}}'))).toEqual([
      expect.objectContaining({ file: 'text/__proto__.json', code: 'form' }),
    ]);
    expect(problemsOf(smallKey().set('text/toString.json', '{"language": "es", "text": {}}')).length).toBeGreaterThan(
      0,
    );
  });

  test.each([
    ['ten megabytes', `{"taxa": "${'x'.repeat(10_000_000)}"}`, 'too-large'],
    ['ten thousand nested lists', `{"taxa": ${'['.repeat(10_000)}${']'.repeat(10_000)}}`, 'too-deep'],
    ['ten thousand nested objects', `${'{"a":'.repeat(10_000)}1${'}'.repeat(10_000)}`, 'too-deep'],
    ['more than a million values', `[${'1,'.repeat(1_000_000)}1]`, 'too-many'],
    ['half a surrogate pair', '{"taxa": "\\ud800"}', 'bad-text'],
    ['a number past all bounds', '{"taxa": 1e999}', 'bad-number'],
    ['a field given twice', '{"taxa": [], "taxa": []}', 'duplicate-field'],
  ])('%s are told of, whatever else', (_, text, code) => {
    expect(problemsOf(smallKey().set('taxa.json', text))[0]).toMatchObject({ file: 'taxa.json', code });
  });

  test('limits can be set', () => {
    expect(() => readKey(smallKey(), { limits: { depth: 3 } })).toThrow(
      'at most 3 objects and lists inside one another',
    );
    expect(() => readKey(smallKey(), { limits: { bytes: 100 } })).toThrow('at most 100 bytes');
  });

  test('signs that could disguise a message do not reach it', () => {
    const [problem] = problemsOf(edited(['taxa.json', 'taxa[0].status', '\u001b[31m\u202Eevitan\u2066\u200B\n\u2028']));
    expect(problem?.found).toBe('"\uFFFD[31m\uFFFDevitan\uFFFD\uFFFD\uFFFD\uFFFD"');
    const [long] = problemsOf(edited(['taxa.json', 'taxa[0].status', '🌱'.repeat(500)]));
    expect(long?.found).toBe(`"${'🌱'.repeat(60)}…"`);
  });
});

describe('whatever the content', () => {
  test('any JSON in any file gives a key or located problems, and nothing else is thrown', () => {
    fc.assert(
      fc.property(fc.constantFrom(...KEY_FILES, 'text/es.json'), anyValue(), (file, value) => {
        for (const one of problemsOf(smallKey().set(file, JSON.stringify(value)))) expect(one.expected).not.toBe('');
      }),
      { numRuns: 300 },
    );
  });

  test('any text in any file does so too', () => {
    fc.assert(
      fc.property(fc.constantFrom(...KEY_FILES), fc.string(), (file, text) => {
        expect(problemsOf(smallKey().set(file, text)).length).toBeGreaterThan(0);
      }),
    );
  });

  test('changes to the fixture give a key, or problems of which each leads to a line of the file it names', () => {
    const files = [...smallKey()].map(([file, text]) => [file, JSON.parse(text)] as const);
    const content = Object.fromEntries(files);
    fc.assert(
      fc.property(changesTo(content), (changes) => {
        const texts = Object.entries(changed(content, changes) as Json).map(
          ([file, value]) => [file, JSON.stringify(value, null, 1)] as const,
        );
        for (const problem of problemsOf(new Map(texts))) {
          expect(problem.severity).toBe('error');
          expect(problem.expected).not.toBe('');
          if (problem.path !== '') expect(problem.line).toBeGreaterThan(0);
        }
      }),
      { numRuns: 600 },
    );
  });
});
