// A drawing as a file: the small part of SVG that drawings use, read strictly and written so that it looks right alone.
import { BOX, type Drawing, type Mark } from '../drawing.ts';
import { show } from '../path.ts';
import type { ErrorCode, Problems } from '../problem.ts';
import { looks, ROUND } from './looks.ts';
import { faultOfPath, isPen } from './marks.ts';

export interface DrawnFile {
  readonly drawing: Drawing;
  /** Its titles by language; '' for one that names no language. */
  readonly titles: ReadonlyMap<string, string>;
}

/** Who drew it, on the root of a file that may be written again. */
const OURS = 'data-drawn-by="leadwort"';
const SPACE = 'http://www.w3.org/2000/svg';
const VIEW = `0 0 ${BOX} ${BOX}`;
const MOST_CHARACTERS = 100_000;
const MOST_MARKS = 400;

/** Whether a file is one that may be written again, and not one that somebody made by hand. */
export const isOurs = (text: string): boolean => /<svg\s[^>]*/.exec(text)?.[0].includes(OURS) ?? false;

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
]);
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** The file of a drawing; `titles` by language. The same drawing gives the same text. */
export function writeSvg(drawing: Drawing, titles: ReadonlyMap<string, string>): string {
  return [
    `<svg xmlns="${SPACE}" viewBox="${VIEW}" ${OURS} ${ROUND}>`,
    ...[...titles].map(([language, title]) => `<title lang="${language}">${escaped(title)}</title>`),
    ...drawing.map(([pen, path]) => `<path class="${pen}" ${looks(pen)} d="${path}"/>`),
    '</svg>\n',
  ].join('\n');
}

/** Attributes that each element may have; those of looks are passed over. */
const SHAPES = 'fill fill-opacity fill-rule stroke stroke-width stroke-opacity stroke-linecap stroke-linejoin';
const ALLOWED: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ['svg', new Set(`xmlns viewBox width height role data-drawn-by ${SHAPES}`.split(' '))],
  ['title', new Set(['lang', 'xml:lang'])],
  ['path', new Set(`class d ${SHAPES}`.split(' '))],
]);

const TAG = /<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/y;
const ATTRIBUTE = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const PASSED_OVER = /\s+|<!--(?:(?!--)[\s\S])*-->/y;
const PROLOGUE = /^\uFEFF?<\?xml\s[^<>]*\?>/;

/** Ends the reading; the fault is already noted. */
class Stop extends Error {}

/** What a file draws; undefined when it is at fault, which is then noted with its line under the name `file`. */
export function readSvg(text: string, file: string, problems: Problems): DrawnFile | undefined {
  try {
    return new SvgReader(text, file, problems).read();
  } catch (error) {
    if (error instanceof Stop) return undefined;
    throw error;
  }
}

class SvgReader {
  #at = 0;
  readonly #text: string;
  readonly #file: string;
  readonly #problems: Problems;

  constructor(text: string, file: string, problems: Problems) {
    this.#text = text;
    this.#file = file;
    this.#problems = problems;
  }

  read(): DrawnFile {
    if (this.#text.length > MOST_CHARACTERS)
      this.#stop('too-large', `at most ${MOST_CHARACTERS} characters`, this.#text.length);
    this.#at = PROLOGUE.exec(this.#text)?.[0].length ?? 0;
    const root = this.#open('svg');
    if (root.attributes.get('viewBox') !== VIEW)
      this.#stop('value', `viewBox="${VIEW}"`, root.attributes.get('viewBox') ?? 'no viewBox');
    if (root.attributes.get('xmlns') !== SPACE)
      this.#stop('value', `xmlns="${SPACE}"`, root.attributes.get('xmlns') ?? 'no xmlns');
    const titles = new Map<string, string>();
    const drawing: Mark[] = [];
    while (!root.empty && !this.#closed('svg')) {
      const { name, attributes, empty } = this.#open('title', 'path');
      if (name === 'path') {
        drawing.push(this.#mark(attributes));
        if (!empty && !this.#closed('path')) this.#stop('form', '</path>', this.#rest());
      } else titles.set(attributes.get('lang') ?? attributes.get('xml:lang') ?? '', empty ? '' : this.#title());
    }
    this.#skip();
    if (this.#at < this.#text.length) this.#stop('form', 'the end of the file', this.#rest());
    if (titles.size === 0) this.#stop('missing-field', 'a <title> that says what is to be seen', 'none');
    if (drawing.length === 0 || drawing.length > MOST_MARKS)
      this.#stop('length', `1 to ${MOST_MARKS} paths`, drawing.length);
    return { drawing, titles };
  }

  #mark(attributes: ReadonlyMap<string, string>): Mark {
    const [pen = '', path = ''] = [attributes.get('class'), attributes.get('d')];
    if (!isPen(pen)) this.#stop('value', 'the name of a pen as class', pen || 'no class');
    const fault = faultOfPath(path);
    if (fault !== undefined) this.#stop('form', fault, path);
    return [pen as Mark[0], path.replace(/\s+/g, ' ').trim()];
  }

  #title(): string {
    const end = this.#text.indexOf('<', this.#at);
    const raw = this.#text.slice(this.#at, end === -1 ? this.#text.length : end);
    const title = raw.replace(/&([^;]*;)?/g, (whole, name = '') => {
      const sign = ENTITIES.get(name.slice(0, -1));
      if (sign === undefined) this.#stop('form', '&amp;, &lt;, &gt;, &quot; or &apos;', whole);
      return sign as string;
    });
    this.#at += raw.length;
    if (!this.#closed('title')) this.#stop('form', '</title>', this.#rest());
    return title.replace(/\s+/g, ' ').trim();
  }

  #skip(): void {
    for (PASSED_OVER.lastIndex = this.#at; PASSED_OVER.test(this.#text); this.#at = PASSED_OVER.lastIndex);
  }

  /** The tag that opens one of these elements. */
  #open(...names: readonly string[]): { name: string; attributes: ReadonlyMap<string, string>; empty: boolean } {
    this.#skip();
    TAG.lastIndex = this.#at;
    const [whole = '', slash, name = '', inside = '', end] = TAG.exec(this.#text) ?? [];
    const expected = names.map((one) => `<${one}>`).join(' or ');
    if (whole === '' || slash || !names.includes(name))
      this.#stop('form', `${expected} and nothing else`, this.#rest());
    const attributes = new Map<string, string>();
    for (const [, attribute = '', double, single] of inside.matchAll(ATTRIBUTE)) {
      const value = double ?? single ?? '';
      if (!ALLOWED.get(name)?.has(attribute)) this.#stop('unknown-field', `no ${attribute} on <${name}>`, value);
      if (attributes.has(attribute)) this.#stop('duplicate-field', `${attribute} only once`, value);
      if (/&|url\(/i.test(value)) this.#stop('form', `plain text as ${attribute}`, value);
      attributes.set(attribute, value);
    }
    this.#at += whole.length;
    return { name, attributes, empty: end === '/' };
  }

  /** Whether the element ends here; if so, reads past its end. */
  #closed(name: string): boolean {
    this.#skip();
    const [tag = ''] = new RegExp(`</${name}\\s*>`, 'y').exec(this.#text.slice(this.#at)) ?? [];
    this.#at += tag.length;
    return tag !== '';
  }

  #rest(): string {
    return this.#text.slice(this.#at, this.#at + 200) || 'the end of the file';
  }

  #stop(code: ErrorCode, expected: string, found: unknown): never {
    const line = this.#text.slice(0, this.#at).split('\n').length;
    this.#problems.error(this.#file, [], code, expected, show(found), { line });
    throw new Stop();
  }
}
