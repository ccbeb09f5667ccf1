// The list of a key's pictures, from its text to entries that can be relied on.
import { manifestShape } from '../generated/album-shapes.js';
import { LIMITS, readJson } from '../json.ts';
import type { Path } from '../path.ts';
import type { Problems } from '../problem.ts';
import { compare } from '../shape.ts';
import type { Listed, Manifest } from './loose.ts';

/** Whether a file is one of our drawings, and not a photograph. */
export const isDrawing = ({ file }: Pick<Listed, 'file'>): boolean => file.endsWith('.svg');

/** The manifest; undefined when it is at fault, which is then noted under the name `file`. */
export function readManifest(text: string, file: string, problems: Problems): Manifest | undefined {
  const before = problems.findings.length + problems.more;
  const content = readJson(text, { file, problems, limits: LIMITS });
  const sound = () => problems.findings.length + problems.more === before;
  if (sound())
    compare(content, manifestShape, (at, code, expected, found) => problems.error(file, at, code, expected, found));
  if (!sound()) return undefined;
  const manifest = content as Manifest;
  checkEntries(manifest, file, problems);
  return sound() ? manifest : undefined;
}

function checkEntries({ pictures }: Manifest, file: string, problems: Problems): void {
  const seen = new Set<string>();
  pictures.forEach((picture, i) => {
    const at: Path = ['pictures', i];
    const shows: Readonly<Record<string, string>> = picture.shows;
    if (Object.hasOwn(shows, 'character') === Object.hasOwn(shows, 'taxon'))
      problems.wrong(file, [...at, 'shows'], 'form', 'a character and its state, or a taxon and an organ', shows);
    const once = JSON.stringify([picture.file, shows.character, shows.state, shows.taxon, shows.organ]);
    if (seen.has(once))
      problems.wrong(file, [...at, 'file'], 'duplicate-id', 'each picture of a thing only once', picture.file);
    seen.add(once);
    const missing = (name: string) =>
      problems.error(file, at, 'missing-field', `the field "${name}", as every photograph has`, 'nothing');
    if (isDrawing(picture)) {
      if (Object.hasOwn(shows, 'taxon'))
        problems.wrong(file, [...at, 'shows'], 'form', 'a character and its state: only photographs show taxa', shows);
      for (const name of ['width', 'height', 'sizes'] as const)
        if (picture[name] !== undefined)
          problems.error(file, [...at, name], 'unknown-field', 'no such field for a drawing', name);
    } else {
      for (const name of ['credit', 'licence', 'width', 'height'] as const)
        if (picture[name] === undefined) missing(name);
      if (Object.keys(picture.alt).length === 0)
        problems.error(file, [...at, 'alt'], 'length', 'a sentence in at least one language', 'none');
    }
  });
}
