// The small key with pictures: its first couplet's in the bundle, all in an album beside it. The shapes mean nothing.
import { smallBundle } from './small-bundle.ts';

const square = (pen: string) => [
  ['face', 'M8 8H88V88H8Z'],
  [pen, 'M20 20L76 76'],
];
const characters = smallBundle.characters.characters.map((one) => ({ ...one, draws: one.id }));
const picturesOf = (ids: readonly string[]) =>
  characters
    .filter(({ id }) => ids.includes(id))
    .flatMap((one) => (one.states ?? one.classes ?? []).map(({ id }) => `${one.id}/${id}`));

export const picturedBundle = {
  ...smallBundle,
  characters: { ...smallBundle.characters, characters },
  opening: Object.fromEntries(picturesOf(['leaf-base-mark']).map((state) => [state, square('trace')])),
  album: 'small.album.json',
};

export const smallAlbum = {
  format: 1,
  key: smallBundle.key.id,
  version: smallBundle.key.version,
  states: Object.fromEntries(
    picturesOf(characters.map(({ id }) => id)).map((state) => [
      state,
      { drawing: square('mark'), alt: { en: `Seen: ${state}.`, es: `Se ve: ${state}.` } },
    ]),
  ),
  taxa: {},
  glossary: [],
};

/** The same album with a photograph of one state. */
export function withPhoto(state: string, file: string): object {
  const photo = {
    file,
    width: 1200,
    height: 900,
    sizes: [{ file: file.replace('.', '-400.'), width: 400 }],
    credit: 'A. Person',
    licence: 'CC0-1.0',
  };
  const picture = { ...smallAlbum.states[state], photo };
  return { ...smallAlbum, states: { ...smallAlbum.states, [state]: picture } };
}
