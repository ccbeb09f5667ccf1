// The list of pictures after drawing: new entries in, words changed by hand kept, order by the key.
import type { Key, Listed, Manifest } from '../key/index.ts';
import type { Drawn } from './drawn.ts';

/** A drawing that was made, and the alternative text of the one that it replaces: the file remembers it. */
export interface Replacing extends Drawn {
  readonly before: ReadonlyMap<string, string>;
}

/**
 * Adds what was drawn, and gives entries of drawings the words of the new drawing where they still have those of the one
 * that it replaces. All other entries stay as they are.
 */
export function updated(manifest: Manifest, key: Key, drawn: readonly Replacing[]): Manifest {
  const entries = new Map(drawn.map((one) => [one.file, one]));
  const listed = new Set(manifest.pictures.map(({ file }) => file));
  const pictures = [
    ...manifest.pictures.map((picture) => {
      const one = entries.get(picture.file);
      return one ? { ...picture, alt: altOf(one, picture.alt) } : picture;
    }),
    ...drawn
      .filter(({ file }) => !listed.has(file))
      .map((one) => ({
        file: one.file,
        shows: { character: one.character, state: one.state },
        alt: Object.fromEntries(one.alt),
      })),
  ];
  return { ...manifest, pictures: inOrder(pictures, key) };
}

/** Language by language: the drawing's words where there are none yet, or still those of the drawing before. */
function altOf({ alt, before }: Replacing, there: Listed['alt']): Listed['alt'] {
  const known = new Map(Object.entries(there));
  for (const [language, sentence] of alt) {
    const now = known.get(language);
    if (now === undefined || now === before.get(language)) known.set(language, sentence);
  }
  return Object.fromEntries(known);
}

/** States in the order of the characters, then plants in that of the taxa, then what the key does not have. */
function inOrder(pictures: readonly Listed[], key: Key): Listed[] {
  const states = key.characters.flatMap(({ id, states }) => states.map((state) => `${id}/${state.id}`));
  const places = new Map([...states, ...key.taxa.map(({ id }) => id)].map((name, i) => [name, i]));
  const place = ({ shows }: Listed) =>
    places.get('state' in shows ? `${shows.character}/${shows.state}` : shows.taxon) ?? Number.POSITIVE_INFINITY;
  return [...pictures].sort((a, b) => (place(a) === place(b) ? 0 : place(a) - place(b)));
}

/** A picture or a wanted photograph to a line, so that a change reads as one. */
export function printManifest({ pictures, wanted = [], ...frame }: Manifest): string {
  const fields = Object.entries(frame).map(([name, value]) => ` ${JSON.stringify(name)}: ${JSON.stringify(value)}`);
  const rows = (name: string, all: readonly object[]) =>
    ` ${JSON.stringify(name)}: [${all.map((one) => `\n  ${JSON.stringify(one)}`).join(',')}${all.length > 0 ? '\n ' : ''}]`;
  return `{\n${[...fields, rows('pictures', pictures), rows('wanted', wanted)].join(',\n')}\n}\n`;
}
