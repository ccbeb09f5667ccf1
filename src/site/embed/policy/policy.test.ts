// Rows marked "CSP3" are examples or steps of the text of CSP Level 3 (w3c/webappsec-csp, index.bs, "URL Matching",
// "Script directives pre-request check", "sandbox"; read November 2026).
import { describe, expect, test } from 'vitest';
import { judge, type Need } from './judge.ts';
import { listAllows } from './match.ts';
import { parsePolicy } from './parse.ts';

const PAGE = new URL('https://www.example.org/plants/');
const at = (path: string) => new URL(path, PAGE);
const need = (kind: Need['kind'], path: string): Need => ({ kind, url: at(path) });
const judged = (policy: string, ...needs: Need[]) => judge(parsePolicy(policy), needs, PAGE);

describe('a list of sources', () => {
  test.each([
    // CSP3: "we always allow a secure upgrade from an explicitly insecure expression", and never the other way.
    ['http:', 'https://example.com/', true],
    ['http://example.com', 'https://example.com/', true],
    ['https:', 'http://example.com/', false],
    ['https://example.com/', 'http://example.com/', false],
    ['ws:', 'wss://example.com/', true],
    // CSP3, host-part matching: "*.example.com" matches www.example.com, and not the other way.
    ['*.example.com', 'https://www.example.com/', true],
    ['*.example.com', 'https://example.com/', false],
    ['www.example.com', 'https://example.com/', false],
    ['EXAMPLE.com', 'https://example.com/', true],
    // CSP3: of addresses in numbers only 127.0.0.1 matches.
    ['https://192.0.2.1', 'https://192.0.2.1/', false],
    ['https://127.0.0.1', 'https://127.0.0.1/', true],
    // CSP3, port-part matching.
    ['example.com:443', 'https://example.com/', true],
    ['example.com', 'https://example.com:8443/', false],
    ['example.com:*', 'https://example.com:8443/', true],
    // CSP3, path-part matching: "/subdirectory/" matches "/subdirectory/file".
    ['https://example.com/subdirectory/', 'https://example.com/subdirectory/file', true],
    ['https://example.com/subdirectory', 'https://example.com/subdirectory/file', false],
    ['https://example.com/sub%20way', 'https://example.com/sub way', true],
    ['https://example.com/sub/', 'https://example.com/subway', false],
    // CSP3: "*" takes HTTP(S), or the page's own scheme, and no other.
    ['*', 'https://example.com/', true],
    ['*', 'data:image/png;base64,', false],
    ['data:', 'data:image/png;base64,', true],
    // CSP3: 'self', with the upgrade; 'none' means nothing beside others.
    ["'self'", 'https://www.example.org/a.js', true],
    ["'SELF'", 'https://www.example.org/a.js', true],
    ["'self'", 'https://example.org/a.js', false],
    ["'none'", 'https://www.example.org/a.js', false],
    ["'none' https://example.com", 'https://example.com/', true],
    ['', 'https://example.com/', false],
  ])('%s and %s: %s', (sources, url, allowed) => {
    expect(listAllows(sources.split(' ').filter(Boolean), new URL(url), PAGE)).toBe(allowed);
  });

  test('of a page without encryption holds for the same page with it, and not the other way', () => {
    const [plain, safe] = [new URL('http://example.org/'), new URL('https://example.org/')];
    expect(listAllows(["'self'"], safe, plain)).toBe(true);
    expect(listAllows(["'self'"], plain, safe)).toBe(false);
    expect(listAllows(["'self'"], new URL('https://example.org:8443/'), plain)).toBe(false);
  });
});

describe('a pasted policy', () => {
  test('may be a header, a tag or bare, and means the same', () => {
    const bare = "default-src 'none'; script-src 'self'";
    const [policy] = parsePolicy(bare).policies;
    for (const text of [
      `Content-Security-Policy: ${bare}`,
      `<meta http-equiv="Content-Security-Policy" content="${bare}">`,
      ` ${bare.toUpperCase().replaceAll("'NONE'", "'none'").replaceAll("'SELF'", "'self'")} ;`,
    ])
      expect(parsePolicy(text).policies).toEqual([policy]);
    expect(parsePolicy('  ').policies).toEqual([]);
  });

  test('counts the first of two directives of one name', () => {
    expect(judged("img-src 'none'; IMG-SRC 'self'", need('img', '/a.svg'))).toHaveLength(1);
  });

  test('stops what any of several stops', () => {
    const script = need('script', '/a.js');
    expect(judged("script-src 'self', script-src https://example.com", script)).toHaveLength(1);
    expect(
      judged("Content-Security-Policy: script-src 'self'\nContent-Security-Policy: img-src 'none'", script),
    ).toEqual([]);
  });

  test('that only reports stops nothing', () => {
    expect(judged("Content-Security-Policy-Report-Only: default-src 'none'", need('script', '/a.js'))).toEqual([]);
  });
});

describe('the smallest change', () => {
  test('goes to the directive that speaks, and to one of its own where only default-src does', () => {
    expect(judged("default-src 'self'", need('connect', 'https://keys.example.com/creek.json'))).toMatchObject([
      { directive: 'default-src', why: 'source', change: "connect-src 'self' https://keys.example.com" },
    ]);
    expect(judged("default-src 'self'; connect-src 'none'", need('connect', '/creek.json'))).toMatchObject([
      { directive: 'connect-src', change: "connect-src 'self'" },
    ]);
    expect(judged("child-src 'none'; default-src *", need('frame', '/frame.html'))).toMatchObject([
      { directive: 'child-src', change: "frame-src 'self'" },
    ]);
    expect(judged("script-src 'self'; script-src-elem 'none'", need('script', '/a.js'))).toMatchObject([
      { directive: 'script-src-elem', change: "script-src-elem 'self'" },
    ]);
  });

  test('names each host once, and data: for pictures written into the page', () => {
    const needs = [need('img', '/a.svg'), need('img', '/b.svg'), need('img', 'data:image/png;base64,')];
    expect(judged('img-src https://example.com', ...needs)).toMatchObject([
      { change: "img-src https://example.com 'self' data:", needs },
    ]);
  });

  test('lets everything through once it is made', () => {
    const needs = [
      need('script', '/leadwort/leadwort.js'),
      need('style', 'https://cdn.example.com/leadwort.css'),
      need('connect', 'https://keys.example.com:8443/creek.json'),
      need('img', 'data:image/png;base64,'),
      need('frame', 'https://frames.example.com/leadwort-frame.html'),
    ];
    for (const policy of [
      "default-src 'none'",
      "default-src 'self'",
      "default-src https://example.net; img-src 'none'",
    ]) {
      const changes = judged(policy, ...needs).map(({ change }) => change);
      const names = changes.map((change) => change.split(' ')[0]);
      const kept = policy.split('; ').filter((directive) => !names.includes(directive.split(' ')[0]));
      expect(changes.length).toBeGreaterThan(0);
      expect(judged([...kept, ...changes].join('; '), ...needs)).toEqual([]);
    }
  });
});

describe('scripts', () => {
  test('need the nonce of a page whose policy goes by it', () => {
    expect(judged("script-src 'nonce-abc'", need('script', '/a.js'))).toMatchObject([{ why: 'nonce' }]);
    expect(judged("script-src 'nonce-abc' 'self'", need('script', '/a.js'))).toEqual([]);
  });

  test("are let through by no address under 'strict-dynamic'", () => {
    // CSP3, script pre-request check: a parser-inserted script is blocked whatever hosts are listed.
    expect(judged("script-src 'nonce-abc' 'strict-dynamic' 'self' https:", need('script', '/a.js'))).toMatchObject([
      { why: 'nonce' },
    ]);
    expect(judged("script-src 'sha256-abc' 'strict-dynamic' 'self'", need('script', '/a.js'))).toMatchObject([
      { why: 'hash' },
    ]);
  });

  test('do not run in a sandbox without allow-scripts, which a tag cannot ask for', () => {
    const script = need('script', '/a.js');
    expect(judged('sandbox allow-forms', script)).toMatchObject([
      { why: 'sandbox', change: 'sandbox allow-forms allow-scripts allow-same-origin' },
    ]);
    // CSP3, sandbox: "ignored entirely when delivered ... within a meta element".
    expect(judged('<meta http-equiv="Content-Security-Policy" content="sandbox">', script)).toEqual([]);
  });

  test("need Lit's name in a list of trusted types", () => {
    const script = need('script', '/a.js');
    expect(judged("require-trusted-types-for 'script'", script)).toEqual([]);
    expect(judged('trusted-types lit-html other', script)).toEqual([]);
    expect(judged("trusted-types 'none'", script)).toMatchObject([{ change: 'trusted-types lit-html' }]);
    expect(judged('trusted-types other', need('frame', '/a.html'))).toEqual([]);
  });
});

test('the strict policy of the demonstration stops nothing of a snippet', () => {
  const needs = [need('script', '/a.js'), need('style', '/a.css'), need('connect', '/k.json'), need('img', 'data:,')];
  expect(
    judged(
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; require-trusted-types-for 'script'",
      ...needs,
    ),
  ).toEqual([]);
});
