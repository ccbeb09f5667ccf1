// The pages of a book whose drawings and alternative texts stand in files of their own, both by the form's name.
import type { Drawing } from '../../key/index.ts';
import type { Sketch, SketchBook } from '../sketch.ts';
import { bookOf, type Page } from './book.ts';

export function bookFrom(
  role: string,
  drawings: Readonly<Record<string, () => Drawing>>,
  alts: Readonly<Record<string, Sketch['alt']>>,
): SketchBook {
  const pages = Object.entries(drawings).map(([form, draw]): [string, () => Page] => {
    const alt = alts[form];
    if (!alt) throw new Error(`${role}: no alternative text for ${form}`);
    return [form, () => [draw(), alt.en, alt.es]];
  });
  return bookOf(role, Object.fromEntries(pages));
}
