// Whether a pen and a path are such as drawings have.
import { HUES, PENS, type Pen } from '../drawing.ts';

const KNOWN: ReadonlySet<string> = new Set([...PENS, ...HUES.flatMap((hue) => [`wash-${hue}`, `swatch-${hue}`])]);

export const isPen = (name: string): name is Pen => KNOWN.has(name);

/** How many numbers follow each command of path data, or a multiple of it (SVG 1.1, section 8.3). */
const NUMBERS: ReadonlyMap<string, number> = new Map(
  Object.entries({ m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 }),
);

/** What is wrong with path data, in words; undefined for path data that can be drawn. */
export function faultOfPath(path: string): string | undefined {
  if (!/^\s*[Mm]/.test(path)) return 'path data that begins with M';
  for (const [, command = '', rest = ''] of path.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const needs = NUMBERS.get(command.toLowerCase());
    if (needs === undefined) return 'commands M, L, H, V, C, S, Q, T, A and Z only';
    let count = 0;
    const left = rest.replace(/[-+]?(?:\d+\.?\d*|\.\d+)/g, () => {
      count++;
      return '';
    });
    if (/[^\s,]/.test(left)) return 'plain numbers, without exponents';
    if (needs === 0 ? count > 0 : count === 0 || count % needs > 0)
      return `${needs === 0 ? 'no number' : `${needs} numbers`} for each ${command}, those of an arc all written apart`;
  }
  return undefined;
}
