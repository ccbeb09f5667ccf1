// The colours that a partner may choose, and whether they can be read.
import { contrast, LEAST } from './contrast.ts';

export type Scheme = 'light' | 'dark';
export type Palette = ReadonlyMap<string, string>;

/** The key's own, as in src/elements/shared/styles.ts; a test holds them to it. */
export const OWN: Readonly<Record<Scheme, Palette>> = {
  light: new Map([
    ['paper', '#fdfaf2'],
    ['silt', '#efe7d5'],
    ['ink', '#1c2620'],
    ['mud', '#4b4637'],
    ['reed', '#17492f'],
    ['rust', '#7e2a10'],
  ]),
  dark: new Map([
    ['paper', '#141a17'],
    ['silt', '#262d28'],
    ['ink', '#f1ede1'],
    ['mud', '#cfc8b4'],
    ['reed', '#a6dcbb'],
    ['rust', '#ffb79c'],
  ]),
};

const GROUNDS: readonly string[] = ['paper', 'silt'];

/** The least contrast in which a colour is met: of text on both grounds, of a ground with all that stands on it. */
export function leastOf(name: string, palette: Palette): number {
  const others = [...palette.keys()].filter((other) => GROUNDS.includes(other) !== GROUNDS.includes(name));
  return Math.min(...others.map((other) => contrast(palette.get(name) ?? '', palette.get(other) ?? '')));
}

/** The palette with another colour in it; `least` alone, with what it would be, where that cannot be read. */
export function take(palette: Palette, name: string, colour: string): { palette?: Palette; least: number } {
  const next = new Map(palette).set(name, colour);
  const least = leastOf(name, next);
  return least < LEAST ? { least } : { palette: next, least };
}

/** Custom properties for what differs from the key's own, light and dark together. */
export function properties(palettes: Readonly<Record<Scheme, Palette>>): Map<string, string> {
  const changed = [...OWN.light.keys()].filter((name) =>
    (['light', 'dark'] as const).some((scheme) => palettes[scheme].get(name) !== OWN[scheme].get(name)),
  );
  return new Map(
    changed.map((name) => [
      `--leadwort-${name}`,
      `light-dark(${palettes.light.get(name)}, ${palettes.dark.get(name)})`,
    ]),
  );
}
