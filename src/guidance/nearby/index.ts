export { type Coordinates, type CoordinatesFault, type ReadCoordinates, readCoordinates } from './coordinates.ts';
export { greatCircle } from './distance.ts';
export { mailLink, phoneLink } from './links.ts';
export { AreasError, readAreas } from './read.ts';
export { boundsOf, toward } from './rings.ts';
export * from './types.ts';
export { edgeDistance, type Help, helpAt, isInside, type Offer, otherSide, type Spot } from './where.ts';
