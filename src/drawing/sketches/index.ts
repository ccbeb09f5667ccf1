// Every role that can be drawn, by its name.
import type { SketchBook } from '../sketch.ts';

const BOOKS: readonly SketchBook[] = [];

/** The book of each role. */
export const SKETCHES: ReadonlyMap<string, SketchBook> = new Map(BOOKS.map((book) => [book.role, book]));
