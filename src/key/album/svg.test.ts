import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../drawing.ts';
import { Problems } from '../problem.ts';
import { isOurs, readSvg, writeSvg } from './svg.ts';

const drawing: Drawing = [
  ['face', 'M4 4L92 4L48 92Z'],
  ['wash-blue-green', 'M10 10a3.5 3 -20 0 1 4 5'],
  ['trace', 'm1.5-2 3,4c1 2 3 4 5 6S1 2 3 4q1 2 3 4t5 6H7v8z'],
];
const titles = new Map([
  ['en', 'A leaf with a "wavy" edge, <wide> & short.'],
  ['es', 'Una hoja ancha.'],
]);
const file = writeSvg(drawing, titles);

/** What is read, or line, code, expected and found of the first problem. */
function read(text: string) {
  const problems = new Problems();
  const drawn = readSvg(text, 'x.svg', problems);
  const [problem] = problems.list;
  expect(drawn === undefined).toBe(problem !== undefined);
  return drawn ?? `${problem?.file} ${problem?.line} ${problem?.code}: ${problem?.expected}; ${problem?.found}`;
}

test('a drawing that is written is read back as it was, with its words', () => {
  expect(read(file)).toEqual({ drawing, titles });
  expect(isOurs(file)).toBe(true);
});

test('every pen has looks of its own in the file, so that it can be seen by itself', () => {
  for (const line of file.split('\n').filter((one) => one.startsWith('<path')))
    expect(line).toMatch(/^<path class="[a-z-]+" (?:(?:fill|stroke)(?:-\w+)?="[#.\w]+" )+d="[^"]+"\/>$/);
});

test('a file made by hand is read and known as such', () => {
  const byHand = `<?xml version="1.0" encoding="UTF-8"?>
<!-- drawn by hand -->
<svg viewBox='0 0 96 96' xmlns='http://www.w3.org/2000/svg' width="96" height="96">
  <title>A  leaf
   &amp; its stalk</title>
  <path stroke="red" d="M 1 2
    L 3 4" class="line"></path>
</svg>
`;
  expect(isOurs(byHand)).toBe(false);
  expect(read(byHand)).toEqual({
    drawing: [['line', 'M 1 2 L 3 4']],
    titles: new Map([['', 'A leaf & its stalk']]),
  });
});

describe('anything else is refused where it stands:', () => {
  const changed = (from: string | RegExp, to: string) => file.replace(from, to);
  test.each([
    ['a script', changed('</svg>', '<script>alert(1)</script></svg>'), '7 form: <title> or <path> and nothing else'],
    ['a handler', changed('<path ', '<path onload="alert(1)" '), '4 unknown-field: no onload on <path>'],
    ['a style', changed('<path ', '<path style="x" '), '4 unknown-field: no style on <path>'],
    ['a style sheet', changed('<title', '<style>*{}</style><title'), '2 form: <title> or <path>'],
    ['a picture from elsewhere', changed('<path', '<image href="https://example.org/a.png"/><path'), '4 form: '],
    [
      'an address in looks',
      changed('fill="#fdfaf2"', 'fill="url(https://example.org/#a)"'),
      '4 form: plain text as fill',
    ],
    ['a link', changed('<path', '<a href="javascript:alert(1)"><path'), '4 form: '],
    ['an entity of its own', `<!DOCTYPE svg [<!ENTITY a "b">]>${file}`, '1 form: <svg> and nothing else'],
    ['an entity that is none', changed('&amp;', '&nbsp;'), '2 form: &amp;'],
    ['a group', changed('<path', '<g><path'), '4 form: '],
    ['a transform', changed('<path ', '<path transform="scale(2)" '), '4 unknown-field: no transform'],
    ['another box', changed('0 0 96 96', '0 0 100 100'), '1 value: viewBox="0 0 96 96"; "0 0 100 100"'],
    ['no space of names', changed(/xmlns="[^"]*" /, ''), '1 value: xmlns='],
    ['a pen that is none', changed('class="face"', 'class="crayon"'), '4 value: the name of a pen as class; "crayon"'],
    ['an unknown command', changed('Z"', 'X"'), '4 form: commands M, L'],
    ['a number too few', changed('M4 4L92 4L48 92Z', 'M4 4L92'), '4 form: 2 numbers for each L'],
    ['numbers after the end of a shape', changed('92Z', '92Z1'), '4 form: no number for each Z'],
    ['flags of an arc run together', changed('0 0 1 4 5', '0 014 5'), '5 form: 7 numbers for each a'],
    ['no path', changed(/<path[\s\S]*\/>\n/, ''), '5 length: 1 to 400 paths; 0'],
    ['no words', changed(/<title.*\n<title.*\n/, ''), '6 missing-field: a <title>'],
    ['a field twice', changed('class="face"', 'class="face" class="face"'), '4 duplicate-field'],
    ['something after the end', `${file}<svg/>`, '8 form: the end of the file'],
    ['half a file', file.slice(0, file.length / 2), ' form: '],
    ['nothing', '', '1 form: <svg> and nothing else; "the end of the file"'],
    ['an endless file', `${file}${' '.repeat(100_000)}`, '1 too-large'],
  ])('%s', (_, text, told) => {
    expect(read(text)).toMatch(/^x\.svg \d+ /);
    expect(read(text)).toContain(told);
  });

  test('whatever is cut out of a file or put into it, nothing is thrown and no other pen comes through', () => {
    const pens = new Set(['face', 'wash-blue-green', 'trace']);
    fc.assert(
      fc.property(fc.nat(file.length), fc.nat(40), fc.string(), (at, length, put) => {
        const drawn = readSvg(file.slice(0, at) + put + file.slice(at + length), 'x.svg', new Problems());
        for (const [pen, path] of drawn?.drawing ?? []) {
          expect(pens).toContain(pen);
          expect(path).toMatch(/^[Mm][\d\s.,+MmLlHhVvCcSsQqTtAaZz-]*$/);
        }
      }),
    );
  });
});
