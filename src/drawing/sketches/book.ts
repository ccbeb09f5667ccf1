// A book of forms that do not depend on numbers.
import type { Drawing } from '../../key/index.ts';
import type { SketchBook } from '../sketch.ts';

/** The drawing of a form, and what is to be seen on it in English and Spanish. */
export type Page = readonly [drawing: Drawing, en: string, es: string];

export function bookOf(role: string, pages: Readonly<Record<string, () => Page>>): SketchBook {
  return {
    role,
    forms: Object.keys(pages),
    sketch: ({ form }) => {
      const page = Object.hasOwn(pages, form) ? pages[form] : undefined;
      if (!page) return undefined;
      const [drawing, en, es] = page();
      return { drawing, alt: { en, es } };
    },
  };
}
