// The strict shape of an album: what a page shows beside the words of a key, and fetches after them.
import type { Course } from '../courses/types.ts';
import type { Drawing } from '../drawing.ts';
import type { Part } from '../types.ts';

/** A photograph; names of files are relative to the folder of pictures, widths and heights in pixels. */
export interface Photo {
  readonly file: string;
  readonly width: number;
  readonly height: number;
  /** The same at other widths. */
  readonly sizes: readonly { readonly file: string; readonly width: number }[];
  readonly credit: string;
  readonly licence: string;
}

/** What shows one state of a character. */
export interface Picture {
  readonly drawing?: Drawing;
  /** Takes the place of the drawing. */
  readonly photo?: Photo;
  /** What is to be seen, in a sentence, by language. */
  readonly alt: ReadonlyMap<string, string>;
}

/** A photograph of a part of a plant, such as its collar. */
export interface TaxonPhoto extends Photo {
  readonly organ: string;
  readonly alt: ReadonlyMap<string, string>;
}

/** What a trade term means, in one language. */
export interface TermText {
  readonly term: string;
  /** Forms that are found in sentences, such as the plural. */
  readonly words: readonly string[];
  /** One short sentence that anybody reads. */
  readonly plain: string;
  /** As the trade defines it. */
  readonly definition: string;
  /** Where on the plant, or around it, to look. */
  readonly where: string;
}

/** A trade term, in the first language of the key. */
export interface Term extends TermText {
  readonly id: string;
  readonly part: Part;
  readonly picture?: { readonly character: string; readonly state: string };
  /** Ids of the key's sources; `memory` where none was read. */
  readonly source: readonly string[];
  /** The same in the other languages of the key. */
  readonly text: ReadonlyMap<string, TermText>;
}

export interface Album {
  /** Id and version of the key that it belongs to; it is of no use to another. */
  readonly key: string;
  readonly version: string;
  /** By `character/state`. */
  readonly states: ReadonlyMap<string, Picture>;
  /** By id of the taxon. */
  readonly taxa: ReadonlyMap<string, readonly TaxonPhoto[]>;
  readonly glossary: readonly Term[];
  /** What technicians practise; empty where the key has no courses. */
  readonly courses: readonly Course[];
}
