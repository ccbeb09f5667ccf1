// Looks through a JSON text before it is parsed: is it JSON, is it small and flat enough, does it say anything twice?
import type { Path } from './path.ts';
import { show } from './path.ts';
import type { Problems } from './problem.ts';

export interface Limits {
  /** Bytes of UTF-8 of one file. */
  readonly bytes: number;
  /** Objects and lists inside one another. */
  readonly depth: number;
  /** Values of any kind in one file. */
  readonly items: number;
}

export const LIMITS: Limits = Object.freeze({ bytes: 5_000_000, depth: 40, items: 1_000_000 });

/** Names that mean something to JavaScript's own objects. No field is ever called so. */
const RESERVED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

const ESCAPE = /\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;
const PLAIN = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const UNFINISHED = /[^\s,:[\]{}"]{0,80}/y;

/** An open object or list. */
interface Frame {
  readonly close: '}' | ']';
  readonly names: Set<string>;
  /** Name of the field, or index of the item, that is being read; none before the first name. */
  step: string | number | undefined;
}

/** Ends the scan; the fault itself is already noted. */
class Stop extends Error {}

interface Scan {
  readonly file: string;
  readonly problems: Problems;
  readonly limits: Limits;
  /** Called at each value with its place and where it begins. */
  readonly visit?: (path: Path, offset: number) => void;
}

/**
 * The value of a JSON text; every fault is noted in `problems`. A fault of the JSON itself or of its size ends the
 * search, and there is no value; others (a field given twice, a reserved name) do not. Nesting costs no stack.
 */
export function readJson(text: string, scan: Scan): unknown {
  const { file, problems, limits } = scan;
  const bytes = text.length > limits.bytes ? text.length : new TextEncoder().encode(text).length;
  if (bytes > limits.bytes) {
    problems.error(file, [], 'too-large', `at most ${limits.bytes} bytes`, `${bytes} or more`);
    return undefined;
  }
  // Some editors begin a file with this invisible sign.
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  try {
    new Scanner(body, scan).run();
  } catch (error) {
    if (error instanceof Stop) return undefined;
    throw error;
  }
  return JSON.parse(body);
}

/** The line, from 1, on which each of the wanted places begins; of one that is not there, its parent's. */
export function linesOf(text: string, wanted: readonly Path[], scan: Omit<Scan, 'visit'>): (number | undefined)[] {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const name = (path: Path) => JSON.stringify(path);
  const sought = new Set(wanted.flatMap((path) => [name(path), name(path.slice(0, -1))]));
  const offsets = new Map<string, number>();
  const visit = (path: Path, offset: number) => {
    const here = name(path);
    if (sought.has(here)) offsets.set(here, offset);
  };
  try {
    new Scanner(body, { ...scan, visit }).run();
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
  }
  const lines = new Lines(body);
  return wanted.map((path) => {
    const offset = offsets.get(name(path)) ?? offsets.get(name(path.slice(0, -1)));
    return offset === undefined ? undefined : lines.at(offset).line;
  });
}

/** Lines of a text, found once, at the first question: a file may have as many faults as fields. */
class Lines {
  readonly #text: string;
  #starts: number[] | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  /** Line and column of an offset, both from 1. */
  at(offset: number): { line: number; column: number } {
    this.#starts ??= [
      0,
      ...Array.from(this.#text.matchAll(/\r\n|\r|\n/g), ({ 0: sign, index }) => index + sign.length),
    ];
    // The last line that begins at or before the offset.
    let line = 0;
    for (let beyond = this.#starts.length; beyond - line > 1; ) {
      const middle = (line + beyond) >> 1;
      if ((this.#starts[middle] as number) <= offset) line = middle;
      else beyond = middle;
    }
    return { line: line + 1, column: offset - (this.#starts[line] as number) + 1 };
  }
}

class Scanner {
  #at = 0;
  #items = 0;
  readonly #frames: Frame[] = [];
  readonly #text: string;
  readonly #lines: Lines;
  readonly #scan: Scan;

  constructor(text: string, scan: Scan) {
    this.#text = text;
    this.#lines = new Lines(text);
    this.#scan = scan;
  }

  run(): void {
    do this.#value();
    while (this.#next());
  }

  /** Reads a value, or the beginning of one: of a list or object that is not empty only its opening. */
  #value(): void {
    const { limits, visit } = this.#scan;
    for (;;) {
      const sign = this.#sign();
      visit?.(this.#path(), this.#at);
      if (++this.#items > limits.items) this.#stop('too-many', `at most ${limits.items} values in a file`, 'more');
      if (sign === '"') {
        this.#string();
        return;
      }
      if (sign !== '{' && sign !== '[') {
        this.#plain();
        return;
      }
      if (this.#frames.length >= limits.depth) {
        this.#stop('too-deep', `at most ${limits.depth} objects and lists inside one another`, 'more');
      }
      this.#at++;
      const close = sign === '{' ? '}' : ']';
      const frame: Frame = { close, names: new Set(), step: sign === '[' ? 0 : undefined };
      if (this.#sign() === close) {
        this.#at++;
        return;
      }
      this.#frames.push(frame);
      if (close === '}') this.#name(frame);
    }
  }

  /** Reads what follows a value, up to where the next begins; false at the end of the text. */
  #next(): boolean {
    for (;;) {
      const sign = this.#sign();
      const frame = this.#frames.at(-1);
      if (frame === undefined) {
        if (sign !== '') this.#stop('json', 'the end of the file');
        return false;
      }
      if (sign === frame.close) {
        this.#at++;
        this.#frames.pop();
      } else if (sign === ',') {
        this.#at++;
        if (this.#sign() === frame.close)
          this.#stop('json', `something after the comma, or no comma before "${frame.close}"`);
        if (typeof frame.step === 'number') frame.step++;
        if (frame.close === '}') this.#name(frame);
        return true;
      } else {
        this.#stop('json', `"," or "${frame.close}"`);
      }
    }
  }

  #name(frame: Frame): void {
    if (this.#sign() !== '"') this.#stop('json', 'the name of a field in double quotes');
    const at = this.#at;
    const raw = this.#string();
    const name = raw.includes('\\') ? (JSON.parse(raw) as string) : raw.slice(1, -1);
    frame.step = name;
    if (RESERVED.has(name)) this.#note('reserved-field', 'a field name other than this one', show(name), at);
    if (frame.names.has(name)) this.#note('duplicate-field', 'each field only once in an object', show(name), at);
    frame.names.add(name);
    if (this.#sign() !== ':') this.#stop('json', `":" after the name of the field`);
    this.#at++;
  }

  /** Steps over a string; gives it as written, quotes included. */
  #string(): string {
    const start = this.#at;
    for (let i = start + 1; ; i++) {
      const code = this.#text.charCodeAt(i);
      if (code === 0x22) {
        this.#at = i + 1;
        break;
      }
      if (code === 0x5c) {
        ESCAPE.lastIndex = i;
        if (!ESCAPE.test(this.#text)) {
          this.#at = i;
          this.#stop('json', String.raw`\" \\ \/ \b \f \n \r \t or \u with four digits`);
        }
        i = ESCAPE.lastIndex - 1;
      } else if (!(code >= 0x20)) {
        this.#at = i;
        this.#stop('json', 'a closing quote on the same line');
      }
    }
    const raw = this.#text.slice(start, this.#at);
    // Half of a pair is no character: it would not survive being saved.
    if (/\p{Cs}/u.test(raw.includes('\\') ? (JSON.parse(raw) as string) : raw)) {
      this.#note('bad-text', 'text made of whole characters', 'half of a surrogate pair', start);
    }
    return raw;
  }

  #plain(): void {
    PLAIN.lastIndex = this.#at;
    const word = PLAIN.exec(this.#text)?.[0];
    if (word === undefined) this.#stop('json', 'a value (text in double quotes, a number, true, false, null, [ or {)');
    if (/\d/.test(word) && !Number.isFinite(Number(word))) {
      this.#note('bad-number', 'a number that can be reckoned with', word.slice(0, 40), this.#at);
    }
    this.#at += word.length;
  }

  /** Steps over white space; gives the sign that follows, or the empty text at the end. */
  #sign(): string {
    for (; ; this.#at++) {
      const code = this.#text.charCodeAt(this.#at);
      if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) return this.#text.charAt(this.#at);
    }
  }

  #path(): Path {
    return this.#frames.flatMap(({ step }) => (step === undefined ? [] : [step]));
  }

  #note(
    code: 'json' | 'too-many' | 'too-deep' | 'reserved-field' | 'duplicate-field' | 'bad-text' | 'bad-number',
    expected: string,
    found: string,
    at: number,
  ): void {
    const { file, problems } = this.#scan;
    problems.error(file, this.#path(), code, expected, found, this.#lines.at(at));
  }

  #stop(code: 'json' | 'too-many' | 'too-deep', expected: string, found = this.#here()): never {
    this.#note(code, expected, found, this.#at);
    throw new Stop();
  }

  /** What stands at the fault: a word, or a sign. */
  #here(): string {
    if (this.#at >= this.#text.length) return 'the end of the file';
    UNFINISHED.lastIndex = this.#at;
    return show(UNFINISHED.exec(this.#text)?.[0] || this.#text.charAt(this.#at));
  }
}
