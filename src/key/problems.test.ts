// Faults in a key folder, each told where it stands, all of them at once.
import { describe, expect, test } from 'vitest';
import { edited, faultTable, problemsOf, smallKey } from '../../tests/support/small-key.ts';
import { KEY_FILES } from './content.ts';
import { readKey } from './folder.ts';
import { KeyContentError } from './problem.ts';

/** Where one change leads to a second problem elsewhere, that one stands here. */
const FOLLOWING = new Map([
  ['characters[1].id', 'unknown-id'],
  ['characters[1].states[2].id', 'unknown-id'],
  ['couplets[1].number', 'unknown-id'],
  ['taxa[1].traits.habitat.applies', 'form'],
  ['taxa[2].id', 'unknown-id'],
  ['sources[1].id', 'unknown-id'],
]);

describe('a fault is told with its file, place, expectation and finding', () => {
  test.each(faultTable().map((fault) => [...fault.edit, fault] as const))('%s %s = %j', (file, place, value, fault) => {
    const { code, path, found, expected } = fault;
    const [first, ...others] = problemsOf(edited([file, place, value]));
    expect(first).toMatchObject({ file, code, path, found, severity: 'error' });
    expect(first?.expected).toContain(expected);
    for (const other of others) expect(other.code).toBe(FOLLOWING.get(path));
  });

  test('with the line on which it stands', () => {
    const [problem] = problemsOf(edited(['taxa.json', 'taxa[0].traits.growth-form.rarely', ['tree']]));
    const text = edited(['taxa.json', 'taxa[0].traits.growth-form.rarely', ['tree']]).get('taxa.json') ?? '';
    expect(problem?.line).toBe(text.split('\n').findIndex((line) => line.includes('"tree"')) + 1);
  });

  test('a circle of three characters is told at each of them, and not at one that leads into it', () => {
    const applies = (character: string, state: string) => ({ character, states: [state] });
    const files = edited(
      ['characters.json', 'characters[0].applies', applies('habitat', 'waterline')],
      ['characters.json', 'characters[1].applies', applies('leaf-base-mark', 'no-wedge')],
      ['characters.json', 'characters[5].applies', applies('growth-form', 'grass')],
    );
    expect(problemsOf(files).map(({ code, path, found }) => [code, path, found])).toEqual([
      ['cycle', 'characters[0].applies.character', 'growth-form > habitat > leaf-base-mark > growth-form'],
      ['cycle', 'characters[1].applies.character', 'habitat > leaf-base-mark > growth-form > habitat'],
      ['cycle', 'characters[4].applies.character', 'leaf-base-mark > growth-form > habitat > leaf-base-mark'],
    ]);
  });

  test.each(KEY_FILES.filter((file) => file !== 'couplets.json'))('a folder without %s', (file) => {
    const files = smallKey();
    files.delete(file);
    expect(problemsOf(files)[0]).toMatchObject({ file, path: '', code: 'missing-file' });
  });

  test.each([...KEY_FILES, 'text/es.json'])('%s that is no JSON, is no object, or is empty', (file) => {
    const broken = (text: string) => problemsOf(smallKey().set(file, text));
    expect(broken('{"a": }')).toEqual([expect.objectContaining({ file, line: 1, column: 7, code: 'json' })]);
    expect(broken('[]')).toEqual([expect.objectContaining({ file, path: '', code: 'type', found: 'a list of 0' })]);
    expect(broken('')).toEqual([expect.objectContaining({ file, code: 'json', found: 'the end of the file' })]);
  });

  test('translations into the first language, or into one that key.json does not list', () => {
    const french = smallKey().set('text/fr.json', '{"language": "fr", "text": {}}');
    const english = smallKey().set('text/en.json', '{"language": "en", "text": {}}');
    expect(problemsOf(french)).toEqual([
      expect.objectContaining({ file: 'text/fr.json', code: 'language', found: '"fr"' }),
    ]);
    expect(problemsOf(english)).toEqual([expect.objectContaining({ file: 'text/en.json', code: 'language' })]);
  });

  test('names of files that no key has are passed over', () => {
    expect(problemsOf(smallKey().set('notes.json', 'x').set('text/readme.txt', 'x'))).toEqual([]);
  });
});

describe('all problems come at once', () => {
  const many = edited(
    ['key.json', 'titel', 'x'],
    ['characters.json', 'characters[0].misread', 2],
    ['characters.json', 'characters[3].unit', 'yd'],
    ['taxa.json', 'taxa[0].family', ''],
    ['guidance.json', 'entries[0].statements[0].topic', 'x'],
    ['sources.json', 'sources[0].url', 'ftp://example.org'],
    ['text/es.json', 'text.Height', 3],
  );

  test('of every file', () => {
    const problems = problemsOf(many);
    expect(problems.map(({ file, path }) => `${file} ${path}`)).toEqual([
      'key.json titel',
      'characters.json characters[0].misread',
      'characters.json characters[3].unit',
      'taxa.json taxa[0].family',
      'guidance.json entries[0].statements[0].topic',
      'sources.json sources[0].url',
      'text/es.json text.Height',
    ]);
    expect(problems.every(({ line }) => typeof line === 'number')).toBe(true);
  });

  test('of the JSON of one file, the shape of another, and how the rest goes together', () => {
    const files = edited(
      ['key.json', 'reviewed', 'today'],
      ['taxa.json', 'taxa[0].colour', 'green'],
      ['taxa.json', 'taxa[0].traits.growth-form.usually', ['tree']],
      ['taxa.json', 'taxa[1].traits.habitat', 'waterline'],
      ['taxa.json', 'lookalikes[0].needs', 4],
      ['text/es.json', 'text.Height', 3],
    ).set('guidance.json', '{');
    expect(problemsOf(files).map(({ file, path, code }) => [file, path, code])).toEqual([
      ['guidance.json', '', 'json'],
      ['key.json', 'reviewed', 'form'],
      ['taxa.json', 'taxa[0].colour', 'unknown-field'],
      ['taxa.json', 'taxa[1].traits.habitat', 'type'],
      ['text/es.json', 'text.Height', 'type'],
      ['taxa.json', 'taxa[0].traits.growth-form.usually[0]', 'unknown-id'],
      ['taxa.json', 'lookalikes[0].needs', 'needs'],
    ]);
  });

  test('and none is made up about parts that have been told of', () => {
    const files = smallKey().set('sources.json', '{').set('key.json', '{');
    expect(problemsOf(files).map(({ file }) => file)).toEqual(['key.json', 'sources.json']);
  });

  test('of which two hundred are told one by one, and the rest are counted', () => {
    const content = JSON.parse(smallKey().get('taxa.json') ?? '');
    for (let i = 0; i < 250; i++) content.taxa[0][`x${i}`] = i;
    const error = (() => {
      try {
        return readKey(smallKey().set('taxa.json', JSON.stringify(content)));
      } catch (thrown) {
        return thrown;
      }
    })();
    expect(error).toBeInstanceOf(KeyContentError);
    const { problems, more, message, name } = error as KeyContentError;
    expect([problems.length, more, name]).toEqual([200, 50, 'KeyContentError']);
    expect(message.split('\n')).toHaveLength(12);
    expect(message).toContain('This key cannot be used: 250 problems.');
    expect(message).toContain('taxa.json line 1, taxa[0].x0: expected one of the fields id, name');
    expect(message).toContain('and 240 more');
  });
});
