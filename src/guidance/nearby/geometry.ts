// Coordinates of a file: within the earth, within the file's own box, closed, and the right way round.
import pointInPolygon from 'point-in-polygon-hao';
import type { Path } from '../../key/path.ts';
import type { Problems } from '../../key/problem.ts';
import { boundsOf, signedArea, toward, unrolled, wound } from './rings.ts';
import type { Polygon, Position, Ring } from './types.ts';

interface Geometry {
  readonly type: string;
  readonly coordinates: unknown;
}
type Box = readonly [west: number, south: number, east: number, north: number] | undefined;

const FILE = 'areas';
const ORDER = 'longitude first, then latitude';
/** Nobody owns a stream south of this; the longitudes of most of America stand there when the two are swapped (ours). */
const SOUTH = -60;
/** Beyond this many degrees an area is no longer one that a programme serves. */
const WIDEST = 180;

/** The polygons of an area. Some may be unfit to use when problems were noted. */
export function readPolygons({ type, coordinates }: Geometry, at: Path, box: Box, problems: Problems): Polygon[] {
  const place = [...at, 'coordinates'];
  if (type === 'Polygon') return [readPolygon(coordinates as Polygon, place, box, problems)];
  return (coordinates as Polygon[]).map((one, i) => readPolygon(one, [...place, i], box, problems));
}

/** The lines of a landmark; a point is a line of one position. */
export function readLines({ type, coordinates }: Geometry, at: Path, box: Box, problems: Problems): Position[][] {
  const place = [...at, 'coordinates'];
  if (type === 'Point') {
    checkPosition(coordinates as Position, place, box, problems);
    return [[flat(coordinates as Position)]];
  }
  const many = type === 'MultiLineString';
  return (many ? (coordinates as Position[][]) : [coordinates as Position[]]).map((line, i) => {
    line.forEach((position, j) => {
      checkPosition(position, many ? [...place, i, j] : [...place, j], box, problems);
    });
    return unrolled(line.map(flat));
  });
}

/** A height may follow; nothing here is high. */
const flat = ([lon, lat]: Position): Position => [lon, lat];

function readPolygon(rings: Polygon, at: Path, box: Box, problems: Problems): Polygon {
  const fine = rings.map((ring, i) => checkRing(ring, [...at, i], box, problems)).every(Boolean);
  if (!fine) return [];
  const read = rings.map((ring, i) => wound(unrolled(ring.map(flat)), i > 0));
  const [outer, ...holes] = read as [Ring, ...Ring[]];
  const middle = middleOf(outer);
  const moved = holes.map((hole) => {
    const by = toward(middleOf(hole), middle) - middleOf(hole);
    return hole.map(([lon, lat]): Position => [lon + by, lat]);
  });
  moved.forEach((hole, i) => {
    if (hole.some((position) => pointInPolygon([...position], [mutable(outer)]) === false))
      problems.error(
        FILE,
        [...at, i + 1],
        'bounds',
        'a hole within the outer ring, which comes first',
        'one beyond it',
      );
  });
  return [outer, ...moved];
}

const mutable = (ring: Ring): number[][] => ring as unknown as number[][];

function middleOf(ring: Ring): number {
  const { west, east } = boundsOf(ring);
  return (west + east) / 2;
}

function checkRing(ring: Ring, at: Path, box: Box, problems: Problems): boolean {
  const before = problems.findings.length + problems.more;
  ring.forEach((position, i) => {
    checkPosition(position, [...at, i], box, problems);
  });
  if (problems.findings.length + problems.more > before) return false;
  const [first, last] = [ring[0], ring.at(-1)] as [Position, Position];
  const course = unrolled(ring.map(flat));
  if (first[0] !== last[0] || first[1] !== last[1]) {
    problems.error(
      FILE,
      [...at, ring.length - 1],
      'form',
      `the first position again, ${first.join(', ')}`,
      last.join(', '),
    );
    return false;
  }
  const { west, east } = boundsOf(course);
  if (east - west > WIDEST || course[0]?.[0] !== course.at(-1)?.[0]) {
    problems.error(FILE, at, 'bounds', 'a ring narrower than half the earth', `${Math.round(east - west)} degrees`);
    return false;
  }
  if (signedArea(course) === 0) {
    problems.error(FILE, at, 'form', 'a ring that encloses something', 'one without any area');
    return false;
  }
  return true;
}

function checkPosition(position: Position, at: Path, box: Box, problems: Problems): void {
  const [lon, lat] = position;
  const wrong = (expected: string) => problems.error(FILE, at, 'bounds', expected, `${lon}, ${lat}`);
  if (Math.abs(lat) > 90 || lat < SOUTH) {
    wrong(Math.abs(lon) <= 90 ? `${ORDER}: these two look swapped` : `${ORDER}, within 180 and 90 degrees`);
  } else if (Math.abs(lon) > 180) wrong(`${ORDER}, within 180 and 90 degrees`);
  else if (box && !within(position, box)) wrong(`${ORDER}, within the file's bbox ${box.join(', ')}`);
}

/** Of a box whose west lies east of its east, the antimeridian is inside (RFC 7946, 5.2). */
function within([lon, lat]: Position, [west, south, east, north]: NonNullable<Box>): boolean {
  const across = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east;
  return across && lat >= south && lat <= north;
}
