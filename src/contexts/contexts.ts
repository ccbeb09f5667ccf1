// What is handed down from the element that holds a key to the parts inside it.
import { createContext } from '@lit/context';
import type { Album } from '../key/index.ts';
import type { SessionStore } from '../session/index.ts';
import type { Words } from '../words/index.ts';

/** How things are said and shown here. A new frozen object whenever one of them changes. */
export interface Settings {
  /** The interface's sentences. */
  readonly words: Words;
  /** The language asked for; the key's sentences follow it as far as they are translated. */
  readonly language: string;
  readonly units: 'us' | 'metric';
  /** Level of the part's own heading, 1 to 6. */
  readonly headingLevel: number;
  /** Absolute address of the folder of photographs, ending in a slash; empty: photographs are not asked for. */
  readonly images?: string;
  /** Pictures are here or on their way: their room is kept. */
  readonly pictured?: boolean;
}

/** Undefined until the key is there. */
export const sessionContext = createContext<SessionStore | undefined>(Symbol.for('leadwort-session'));
export const settingsContext = createContext<Settings | undefined>(Symbol.for('leadwort-settings'));
/** Drawings, photographs and trade terms; undefined until they are there, which may be never. */
export const albumContext = createContext<Album | undefined>(Symbol.for('leadwort-album'));
