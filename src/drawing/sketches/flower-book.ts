// A sketch book from drawings and their alternative texts, both by the form's name.
import type { Drawing } from '../../key/index.ts';
import type { Sketch, SketchBook } from '../sketch.ts';

export function bookOf(
  role: string,
  drawings: Readonly<Record<string, () => Drawing>>,
  alts: Readonly<Record<string, Sketch['alt']>>,
): SketchBook {
  const drawn = new Map(Object.entries(drawings));
  const told = new Map(Object.entries(alts));
  return {
    role,
    forms: [...drawn.keys()],
    sketch: ({ form }) => {
      const [drawing, alt] = [drawn.get(form), told.get(form)];
      return drawing && alt && { drawing: drawing(), alt };
    },
  };
}
