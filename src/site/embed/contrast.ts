// How well a colour can be read on another: WCAG 2.2, "relative luminance" and "contrast ratio".

/** Least of WCAG 1.4.3 (AA), and of 1.4.6 (AAA), which the key's own colours keep. */
export const LEAST = 4.5;
export const GOOD = 7;

/** From 0 (black) to 1 (white). `colour` is `#rrggbb`. */
export function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1 to 21, whichever comes first. */
export function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}
