// What is needed once the page names a file of areas: reading it, telling where a place lies, and the map. Fetched then.
export { AreasError, helpAt, isInside, otherSide, readAreas, readCoordinates } from '../../guidance/nearby/index.ts';
export { type Chart, chartOf } from './chart.ts';
export { renderMap, spotOf } from './map.ts';
