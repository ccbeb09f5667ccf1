export type { Pictures } from './check.ts';
export { GLOSSARY, readGlossary } from './glossary.ts';
export type { Listed, Manifest, Shows, Wanted } from './loose.ts';
export { type AlbumParts, albumOf, openingOf } from './make.ts';
export { isDrawing, readManifest } from './manifest.ts';
export { AlbumError, readAlbum } from './read.ts';
export { type DrawnFile, isOurs, readSvg, writeSvg } from './svg.ts';
export type { Album, Photo, Picture, TaxonPhoto, Term, TermText } from './types.ts';
export { wantedOf } from './wanted.ts';
