// What the page in an iframe and the page around it say to each other: how high the frame should be, and nothing else.

/** Version of the messages; a later one that this copy does not know is not for it. */
const FORMAT = 1;

/**
 * `here`: the frame is ready; it says so to whoever is around it. `measure`: the page around it wants to know the height, now
 * and after every change. `height`: in CSS pixels.
 */
export type FrameMessage = { readonly say: 'here' | 'measure' } | { readonly say: 'height'; readonly height: number };

/** No key is higher than this; a height beyond it is no height. */
const HIGHEST = 100_000;

export const writeMessage = (message: FrameMessage): object => ({ leadwort: FORMAT, ...message });

/** The message in what `postMessage` brought; undefined when it is none of ours: any page may send anything. */
export function readMessage(data: unknown): FrameMessage | undefined {
  if (typeof data !== 'object' || data === null) return undefined;
  const { leadwort, say, height } = data as Readonly<Record<string, unknown>>;
  if (leadwort !== FORMAT) return undefined;
  if (say === 'here' || say === 'measure') return { say };
  if (say === 'height' && typeof height === 'number' && height > 0 && height <= HIGHEST) return { say, height };
  return undefined;
}
