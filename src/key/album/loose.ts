// The loose shape of manifest, glossary and album, as their schemas have it; see src/key/schema/*.json.
import type { LooseCourse } from '../courses/read.ts';
import type { Drawing } from '../drawing.ts';
import type { LooseMonths } from '../loose.ts';
import type { Part } from '../types.ts';
import type { Photo, Term, TermText } from './types.ts';

type ByLanguage<T> = Readonly<Record<string, T>>;

/** What a picture shows: a state of a character, or a part of a plant. */
export type Shows =
  | { readonly character: string; readonly state: string }
  | { readonly taxon: string; readonly organ: Part };

/** One picture of a manifest. `width` to `sizes` are of photographs. */
export interface Listed {
  readonly file: string;
  readonly shows: Shows;
  readonly alt: ByLanguage<string>;
  readonly licence?: string;
  readonly credit?: string;
  readonly width?: number;
  readonly height?: number;
  readonly sizes?: Photo['sizes'];
}

/** One photograph that is still wanted. */
export interface Wanted {
  readonly taxon: string;
  readonly organ: Part;
  readonly angle: string;
  readonly scale: string;
  readonly season: LooseMonths;
  readonly why?: string;
  readonly keep?: boolean;
}

export interface Manifest {
  readonly $schema?: string;
  readonly $comment?: string;
  readonly licence: string;
  readonly credit: string;
  readonly pictures: readonly Listed[];
  readonly wanted?: readonly Wanted[];
}

export type LooseTerm = Omit<Term, 'text'> & { readonly text?: ByLanguage<TermText> };

export interface LooseGlossary {
  readonly terms: readonly LooseTerm[];
}

export interface LooseAlbum {
  readonly format: 1;
  readonly hash?: string;
  readonly key: string;
  readonly version: string;
  readonly states: Readonly<
    Record<string, { readonly drawing?: Drawing; readonly photo?: Photo; readonly alt: ByLanguage<string> }>
  >;
  readonly taxa: Readonly<
    Record<string, readonly (Photo & { readonly organ: Part; readonly alt: ByLanguage<string> })[]>
  >;
  readonly glossary: readonly LooseTerm[];
  /** Absent when the folder has none. */
  readonly courses?: readonly LooseCourse[];
}
