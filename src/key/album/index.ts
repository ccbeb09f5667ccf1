export type { Album, Photo, Picture, TaxonPhoto, Term, TermText } from './types.ts';
