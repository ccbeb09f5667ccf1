// From the text of an album to what a page shows. Fetched late, and never in the way of the key.
import { strictCourse } from '../courses/read.ts';
import { deepFreeze, frozenMap } from '../freeze.ts';
import { albumShape } from '../generated/album-shapes.js';
import { LIMITS, readJson } from '../json.ts';
import { describeProblem, type Problem, Problems } from '../problem.ts';
import { compare } from '../shape.ts';
import type { Key } from '../types.ts';
import { strictTerm } from './glossary.ts';
import type { LooseAlbum } from './loose.ts';
import { isPen } from './marks.ts';
import type { Album } from './types.ts';

/** Problems of an album are told under this name. */
const ALBUM = 'album';

/** An album that cannot be used, or not with this key. The key is none the worse. */
export class AlbumError extends Error {
  override readonly name = 'AlbumError';
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    const told = problems.slice(0, 10).map((problem) => `  ${describeProblem(problem)}`);
    super(['These pictures cannot be used.', ...told].join('\n'));
    this.problems = Object.freeze([...problems]);
  }
}

/**
 * The album that a text describes, deep-frozen. With a key, the album must be of that key and version, since an older one
 * may show other states.
 * @throws AlbumError with every problem found
 */
export function readAlbum(text: string, key?: Pick<Key, 'id' | 'version'>): Album {
  const problems = new Problems();
  const content = readJson(text, { file: ALBUM, problems, limits: LIMITS });
  if (problems.none)
    compare(content, albumShape, (at, code, expected, found) => problems.error(ALBUM, at, code, expected, found));
  const album = content as LooseAlbum;
  if (problems.none) checkAlbum(album, key, problems);
  if (!problems.none) throw new AlbumError(problems.list);
  return deepFreeze({
    key: album.key,
    version: album.version,
    states: frozenMap(
      Object.entries(album.states).map(([state, picture]) => [state, { ...picture, alt: byLanguage(picture.alt) }]),
    ),
    taxa: frozenMap(
      Object.entries(album.taxa).map(([taxon, photos]) => [
        taxon,
        photos.map((photo) => ({ ...photo, alt: byLanguage(photo.alt) })),
      ]),
    ),
    glossary: album.glossary.map(strictTerm),
    courses: (album.courses ?? []).map(strictCourse),
  });
}

const byLanguage = (alt: Readonly<Record<string, string>>) => frozenMap(Object.entries(alt));

function checkAlbum(album: LooseAlbum, key: Pick<Key, 'id' | 'version'> | undefined, problems: Problems): void {
  if (key && album.key !== key.id) problems.wrong(ALBUM, ['key'], 'value', `"${key.id}", the key's id`, album.key);
  if (key && album.version !== key.version)
    problems.wrong(ALBUM, ['version'], 'value', `"${key.version}", the key's version`, album.version);
  for (const [state, { drawing = [] }] of Object.entries(album.states))
    drawing.forEach(([pen, path], i) => {
      const at = ['states', state, 'drawing', i];
      if (!isPen(pen)) problems.wrong(ALBUM, [...at, 0], 'value', 'the name of a pen', pen);
      if (!/^[Mm]\s*[-+.\d]/.test(path)) problems.wrong(ALBUM, [...at, 1], 'form', 'path data', path);
    });
}
