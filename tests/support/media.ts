// Media features of the page under test, through Chromium's own protocol; Chromium only.
import { cdp } from 'vitest/browser';

export interface Media {
  /** `active` paints the page in the person's own few colours. */
  readonly forcedColors?: 'active' | 'none';
  readonly reducedMotion?: 'reduce' | 'no-preference';
  readonly colorScheme?: 'light' | 'dark';
  /** Lay the page out as for paper. */
  readonly print?: boolean;
}

/** Sets exactly these features; what is not named goes back to the browser's own. */
async function emulate({ forcedColors, reducedMotion, colorScheme, print }: Media): Promise<void> {
  const features = [
    { name: 'forced-colors', value: forcedColors ?? '' },
    { name: 'prefers-reduced-motion', value: reducedMotion ?? '' },
    { name: 'prefers-color-scheme', value: colorScheme ?? '' },
  ];
  const session = cdp() as unknown as { send(method: string, args?: object): Promise<unknown> };
  await session.send('Emulation.setEmulatedMedia', { media: print ? 'print' : '', features });
}

/** Runs `body` under these media features and restores the browser's own afterwards, also when it throws. */
export async function withMedia<T>(media: Media, body: () => T | Promise<T>): Promise<T> {
  await emulate(media);
  try {
    return await body();
  } finally {
    await emulate({});
  }
}
