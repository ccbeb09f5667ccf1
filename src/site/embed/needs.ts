// Which addresses a snippet makes the page ask for.
import type { Need } from './policy/judge.ts';
import type { Choice, Way } from './snippets.ts';

const SCRIPT: Readonly<Partial<Record<Way, string>>> = {
  element: 'standalone/leadwort.js',
  whole: 'whole/leadwort.js',
  classic: 'whole/leadwort-classic.js',
  div: 'whole/leadwort-classic.js',
};
/** Attributes that hold an address which is fetched. */
const FETCHED = ['src', 'areas', 'endpoint', 'strings'];

/** Throws a TypeError for an address that is none. */
export function needsOf(way: Way, { base, attributes }: Choice, page: URL): Need[] {
  const at = (path: string) => new URL(path, page);
  const release = at(base);
  if (way === 'iframe')
    return [
      { kind: 'frame', url: new URL('frame/leadwort-frame.html', release) },
      { kind: 'script', url: new URL('frame/leadwort-frame-host.js', release), spare: true },
    ];
  const script = SCRIPT[way];
  const images = attributes.get('images');
  return [
    // A page's own bundle carries the key otherwise, and comes as the rest of it does.
    ...(script === undefined
      ? []
      : [
          { kind: 'script', url: new URL(script, release) } as const,
          { kind: 'style', url: new URL('whole/leadwort.css', release), spare: true } as const,
        ]),
    ...FETCHED.flatMap((name) => {
      const value = attributes.get(name);
      return value ? [{ kind: 'connect', url: at(value) } as const] : [];
    }),
    ...(images ? [{ kind: 'img', url: at(images), spare: true } as const] : []),
    { kind: 'img', url: new URL('data:image/png;base64,'), spare: true },
  ];
}
