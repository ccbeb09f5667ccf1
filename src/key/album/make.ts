// The album of a key, put together from its manifest, its drawings and its glossary.
import type { LooseCourse } from '../courses/read.ts';
import type { Drawing } from '../drawing.ts';
import { identify } from '../identify.ts';
import { prepareKey } from '../prepared.ts';
import { ALL_MONTHS } from '../strict/dates.ts';
import type { Key } from '../types.ts';
import type { Listed, LooseAlbum, LooseTerm, Manifest } from './loose.ts';
import { isDrawing } from './manifest.ts';
import type { DrawnFile } from './svg.ts';
import type { Photo, Term } from './types.ts';

export interface AlbumParts {
  readonly manifest?: Manifest;
  /** By name of the file; what could not be read is not there. */
  readonly drawings: ReadonlyMap<string, DrawnFile>;
  readonly glossary: readonly Term[];
  readonly courses?: readonly LooseCourse[];
}

/** The first photograph of a state takes precedence, and its words with it; a drawing stays for where it does not load. */
export function albumOf(key: Key, { manifest, drawings, glossary, courses = [] }: AlbumParts): LooseAlbum {
  const pictures = manifest?.pictures ?? [];
  const states = key.characters.flatMap(({ id, states }) => states.map((state) => [id, state.id] as const));
  const ofState = (character: string, state: string) =>
    pictures.filter(({ shows }) => 'state' in shows && shows.character === character && shows.state === state);
  return {
    format: 1,
    key: key.id,
    version: key.version,
    states: Object.fromEntries(
      states.flatMap(([character, state]) => {
        const listed = ofState(character, state);
        const photo = listed.find((one) => !isDrawing(one));
        const drawn = listed.find((one) => drawings.has(one.file));
        const drawing = drawn && drawings.get(drawn.file)?.drawing;
        const alt = (photo ?? drawn)?.alt;
        if (alt === undefined) return [];
        return [
          [
            `${character}/${state}`,
            { ...(drawing ? { drawing } : {}), ...(photo ? { photo: photoOf(photo) } : {}), alt },
          ],
        ];
      }),
    ),
    taxa: Object.fromEntries(
      key.taxa.flatMap(({ id }) => {
        const photos = pictures.flatMap((one) =>
          'taxon' in one.shows && one.shows.taxon === id
            ? [{ ...photoOf(one), organ: one.shows.organ, alt: one.alt }]
            : [],
        );
        return photos.length > 0 ? [[id, photos]] : [];
      }),
    ),
    glossary: glossary.map(({ text, ...term }): LooseTerm => ({ ...term, text: Object.fromEntries(text) })),
    ...(courses.length > 0
      ? { courses: courses.map((course) => ({ ...course, taxa: course.taxa ?? key.taxa.map(({ id }) => id) })) }
      : {}),
  };
}

/** What every photograph of a manifest has. */
const photoOf = ({ file, width = 0, height = 0, sizes = [], credit = '', licence = '' }: Listed): Photo => ({
  ...{ file, width, height, sizes, credit, licence },
});

/**
 * Drawings that the first question needs: of the states that the first couplet's leads name, and of the characters that
 * would be asked first by themselves, in whichever month.
 */
export function openingOf(key: Key, { states }: Pick<LooseAlbum, 'states'>): Record<string, Drawing> {
  const prepared = prepareKey(key);
  const [observer = ''] = key.observers.keys();
  const first = new Set(
    ALL_MONTHS.map((month) => identify(prepared, { answers: [], month, observer }).next[0]?.character),
  );
  const wanted = [
    ...(key.couplets[0]?.leads ?? []).flatMap(({ character, states = [] }) =>
      states.map((state) => `${character}/${state}`),
    ),
    ...key.characters.flatMap(({ id, states }) => (first.has(id) ? states.map((state) => `${id}/${state.id}`) : [])),
  ];
  return Object.fromEntries(
    [...new Set(wanted)].flatMap((state) => {
      const drawing = Object.hasOwn(states, state) ? states[state]?.drawing : undefined;
      return drawing ? [[state, drawing]] : [];
    }),
  );
}
