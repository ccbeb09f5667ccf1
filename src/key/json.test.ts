import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LIMITS, type Limits, linesOf, readJson } from './json.ts';
import { type Problem, Problems } from './problem.ts';

function read(text: string, limits: Partial<Limits> = {}): { value: unknown; problems: readonly Problem[] } {
  const problems = new Problems();
  const value = readJson(text, { file: 'x.json', problems, limits: { ...LIMITS, ...limits } });
  return { value, problems: problems.list };
}

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('readJson', () => {
  // Expected: what a person is told. The grammar is that of RFC 8259, as JSON.parse has it.
  test.each([
    ['', 1, 1, '', 'a value', 'the end of the file'],
    ['{"a": 1,}', 1, 9, 'a', 'something after the comma, or no comma before "}"', '"}"'],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3, 'a', '"," or "}"', '"""'],
    ['{"a": [1, 2}', 1, 12, 'a[1]', '"," or "]"', '"}"'],
    ['[1, 2', 1, 6, '[1]', '"," or "]"', 'the end of the file'],
    ['{a: 1}', 1, 2, '', 'the name of a field in double quotes', '"a"'],
    ["{'a': 1}", 1, 2, '', 'the name of a field in double quotes', `"'a'"`],
    ['{"a" 1}', 1, 6, 'a', '":" after the name of the field', '"1"'],
    ['{"a": NaN}', 1, 7, 'a', 'a value', '"NaN"'],
    ['{"a": -Infinity}', 1, 7, 'a', 'a value', '"-Infinity"'],
    ['[01]', 1, 3, '[0]', '"," or "]"', '"1"'],
    ['[1] 2', 1, 5, '', 'the end of the file', '"2"'],
    ['["a\nb"]', 1, 4, '[0]', 'a closing quote on the same line', '"\uFFFD"'],
    ['["a\\x"]', 1, 4, '[0]', String.raw`\" \\ \/ \b \f \n \r \t or \u with four digits`, '"\\x"'],
    ['["a', 1, 4, '[0]', 'a closing quote on the same line', 'the end of the file'],
    ['[\r\n1\r\n2]', 3, 1, '[0]', '"," or "]"', '"2"'],
    ['// note\n{}', 1, 1, '', 'a value', '"//"'],
  ])('tells where %j stops being JSON', (text, line, column, path, expected, found) => {
    const { value, problems } = read(text);
    expect(value).toBeUndefined();
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: 'x.json', line, column, path, found, code: 'json', severity: 'error' });
    expect(problems[0]?.expected).toContain(expected);
  });

  test('accepts just what JSON.parse accepts, and gives the same value', () => {
    const nearly = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '"', '{', ']', '\\', '0', '-', 'e', '\u0000', ' '))
      .map(
        ([text, at, sign]) => text.slice(0, at % (text.length + 1)) + sign + text.slice((at % (text.length + 1)) + 1),
      );
    fc.assert(
      fc.property(fc.oneof(fc.json(), nearly, fc.string()), (text) => {
        const { value, problems } = read(text);
        // A byte order mark in front is let pass on purpose; of other faults there is no value when there is no JSON.
        if (text.startsWith('\uFEFF')) return;
        expect(problems.some(({ code }) => code === 'json')).toBe(!parses(text));
        if (problems.length === 0) expect(value).toEqual(JSON.parse(text));
      }),
      { numRuns: 2000 },
    );
  });

  test('lets a byte order mark pass, which some editors write', () => {
    expect(read('\uFEFF{"a": 1}')).toEqual({ value: { a: 1 }, problems: [] });
  });

  test('goes on after faults that leave the JSON readable, and tells each', () => {
    const { value, problems } = read('{\n"a": 1,\n"a": 2,\n"__proto__": {"constructor": 1},\n"b": ["\\ud800", 1e999]}');
    expect(value).toMatchObject({ a: 2 });
    expect(problems.map(({ code, line, path, found }) => [code, line, path, found])).toEqual([
      ['duplicate-field', 3, 'a', '"a"'],
      ['reserved-field', 4, '__proto__', '"__proto__"'],
      ['reserved-field', 4, '__proto__.constructor', '"constructor"'],
      ['bad-text', 5, 'b[0]', 'half of a surrogate pair'],
      ['bad-number', 5, 'b[1]', '1e999'],
    ]);
  });

  test.each([
    ['written out', '{"\uDC00": 1}'],
    ['as an escape', '{"a": "x\\uDFFFy"}'],
    ['in the wrong order', '"\\uDC00\\uD800"'],
  ])('finds half a surrogate pair %s', (_, text) => {
    expect(read(text).problems.map(({ code }) => code)).toEqual(['bad-text']);
  });

  test('lets a whole surrogate pair be, written out or escaped', () => {
    expect(read('["🌱", "\\ud83c\\udf31"]')).toEqual({ value: ['🌱', '🌱'], problems: [] });
  });

  test('sees a field given twice through its escapes', () => {
    expect(read('{"a": 1, "\\u0061": 2}').problems.map(({ code }) => code)).toEqual(['duplicate-field']);
    expect(read('{"\\u005f_proto__": 2}').problems.map(({ code }) => code)).toEqual(['reserved-field']);
  });

  test('takes the same name in different objects for what it is', () => {
    expect(read('{"a": {"a": [{"a": 1}, {"a": 2}]}}').problems).toEqual([]);
  });
});

describe('limits', () => {
  test('ten thousand nested lists are refused without running out of stack', () => {
    const { value, problems } = read('['.repeat(10_000) + ']'.repeat(10_000));
    expect(value).toBeUndefined();
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code: 'too-deep', line: 1, column: 41 });
  });

  test.each([
    ['[[1]]', { depth: 2 }, []],
    ['[[[1]]]', { depth: 2 }, ['too-deep']],
    ['{"a":{"a":{}}}', { depth: 2 }, ['too-deep']],
    ['[1, 2]', { items: 3 }, []],
    ['[1, 2, 3]', { items: 3 }, ['too-many']],
    ['"éé"', { bytes: 6 }, []],
    ['"éé"', { bytes: 5 }, ['too-large']],
    ['"éé"', { bytes: 3 }, ['too-large']],
  ])('%s within %j gives %j', (text, limits, codes) => {
    const { value, problems } = read(text, limits);
    expect(problems.map(({ code }) => code)).toEqual(codes);
    expect(value === undefined).toBe(codes.length > 0);
  });

  test('ten megabytes are refused before anything is looked at', () => {
    const { value, problems } = read(`"${'x'.repeat(10_000_000)}"`);
    expect(value).toBeUndefined();
    expect(problems).toEqual([
      expect.objectContaining({ code: 'too-large', expected: 'at most 5000000 bytes', path: '' }),
    ]);
  });

  test('a fault in every field is told with its line as far as any is told, and else counted', () => {
    const problems = new Problems();
    readJson(`{${'\n"a": 1,'.repeat(200_000)}\r\n"b": 1}`, { file: 'x.json', problems, limits: LIMITS });
    expect(problems.list.map(({ code }) => code)).toEqual(new Array(200).fill('duplicate-field'));
    expect(problems.list[0]).toMatchObject({ line: 3, column: 1 });
    expect(problems.list[199]).toMatchObject({ line: 202, column: 1 });
    expect(problems.more).toBe(200_000 - 1 - 200);
  });

  test('a string of a million signs and a million brackets in a string are no trouble', () => {
    const long = '['.repeat(1_000_000);
    expect(read(JSON.stringify([long])).value).toEqual([long]);
  });
});

describe('linesOf', () => {
  const text = '{\n  "a": [\n    1,\n    {"b": 2}\n  ],\n  "c":\n 3\n}';
  const lines = (...paths: (string | number)[][]) =>
    linesOf(text, paths, { file: 'x.json', problems: new Problems(), limits: LIMITS });

  test('gives the line on which a value begins', () => {
    expect(lines(['a'], ['a', 0], ['a', 1], ['a', 1, 'b'], ['c'])).toEqual([2, 3, 4, 4, 7]);
  });

  test('gives the line of the parent for what is missing, and none for what is nowhere', () => {
    expect(lines(['a', 1, 'missing'], ['x', 'y', 'z'])).toEqual([4, undefined]);
  });
});
