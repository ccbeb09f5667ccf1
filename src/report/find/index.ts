// A find: its form, how it is made from a session, read, written, and told with less.
export { COVER, middleOf } from './cover.ts';
export * from './dates.ts';
export { FIND_LIMITS, FindError, readFind, toFind, writeFind } from './file.ts';
export { answeredAnew, answersIn, findOf, type Made, type Telling } from './find-of.ts';
export { coarsen, GRIDS, type Grid, metresBetween, sendable, toldPlace } from './place.ts';
export type { FindProblem } from './reader.ts';
export { type Doubtful, doubtful, LACKS, type Lack, lacks } from './ready.ts';
export * from './types.ts';
export * from './units.ts';
export { PHOTOS, type PhotoKind, type WantedPhoto, wantedPhotos } from './wanted.ts';
