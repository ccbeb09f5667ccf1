import { describe, expect, test } from 'vitest';
import { slimCss, slimHtml } from './support/slim-text.ts';

describe('a style sheet that was made slim', () => {
  test('keeps its rules, and loses comments and needless spaces', () => {
    expect(
      slimCss(`
  :host { --x: var(--y, light-dark(#fff, #000)); margin: 0 auto; }
  /* Why
     this is so: { } */
  .a > * + *, .b :is(.c, .d):hover { inline-size: calc(100% - 2em); content: ''; }
  @media (max-height: 30em) and (min-width: 1em) { .bar { position: static; } }
`),
    ).toBe(
      " :host{--x:var(--y,light-dark(#fff,#000));margin:0 auto}.a > * + *,.b :is(.c,.d):hover{inline-size:calc(100% - 2em);content:''}@media (max-height:30em) and (min-width:1em){.bar{position:static}}",
    );
  });

  test('keeps a descendant apart from what has no descendant', () => {
    expect(slimCss('.a :hover { color: red; } .a:hover { color: blue; }')).toBe(
      '.a :hover{color:red}.a:hover{color:blue}',
    );
  });
});

describe('a template that was made slim', () => {
  test('keeps one space where there was a break, and the spaces within a line', () => {
    expect(slimHtml('<p>\n      one  two\n    </p>\n\n    <b>three</b>')).toBe('<p> one  two </p> <b>three</b>');
    expect(slimHtml('<b>one</b><i>two</i>')).toBe('<b>one</b><i>two</i>');
  });
});
