import { expect, test } from 'vitest';
import { needsOf } from './needs.ts';
import { type Choice, snippet, WAYS } from './snippets.ts';

const CHOICE: Choice = {
  base: '/leadwort/0.1.0/',
  attributes: new Map([
    ['src', '/keys/a.json?x=1&y="2"'],
    ['keep', ''],
  ]),
  colours: new Map([['--leadwort-reed', 'light-dark(#003366, #a6dcbb)']]),
  until: { text: 'Ask <us> & wait.', phone: '555-0142' },
  title: 'Which plant is it?',
};
const PAGE = new URL('https://www.example.org/plants/');

test.each(WAYS)('%s: nothing that was typed gets out of its quotes or its text', (way) => {
  const { code } = snippet(way, CHOICE);
  expect(code).not.toContain('<us>');
  expect(code).not.toContain('y="2"');
  expect(code).toMatch(way === 'iframe' ? /src=%2Fkeys%2Fa\.json/ : /src="\/keys\/a\.json\?x=1&amp;y=&quot;2&quot;"/);
});

test.each(WAYS)('%s: every script and frame that it writes is one that the policy is asked about', (way) => {
  const written = [...snippet(way, CHOICE).code.matchAll(/<(?:script|iframe)\b[^>]*?\bsrc="([^"?]*)/g)].map(
    ([, src = '']) => new URL(src, PAGE).href,
  );
  const asked = needsOf(way, CHOICE, PAGE).filter(({ kind }) => kind === 'script' || kind === 'frame');
  expect(asked.map(({ url }) => url.href).sort()).toEqual(written.sort());
});

test('colours go into a style sheet, for the div as for the element', () => {
  expect(snippet('div', CHOICE).css).toBe('[data-leadwort] {\n  --leadwort-reed: light-dark(#003366, #a6dcbb);\n}\n');
  expect(snippet('element', { ...CHOICE, colours: new Map() }).css).toBe('');
});
