// A small map drawn from the areas themselves: no tiles, nothing fetched.
import { type Areas, boundsOf, greatCircle, type Polygon, type Position, toward } from '../../guidance/nearby/index.ts';

/** Width of the drawing, and the most it may be high. */
export const WIDE = 600;
const HIGH = 720;
/** Room around the areas, as a share of their size. */
const MARGIN = 0.1;
/** Lengths that a scale may show, in miles. */
const MILES = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
const MILE = 1609.344;

export interface Chart {
  readonly height: number;
  readonly areas: readonly { readonly id: string; readonly path: string; readonly label: readonly [number, number] }[];
  readonly landmarks: readonly {
    readonly at: readonly [number, number];
    readonly path: string;
    readonly spot: boolean;
  }[];
  readonly scale: { readonly miles: number; readonly length: number };
  /** Metres that the width shows. */
  readonly across: number;
  readonly middle: Position;
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
  toChart(position: Position): [number, number];
  fromChart(x: number, y: number): Position;
}

/** The chart of these areas; those that are over should be left out. */
export function chartOf({ areas, landmarks }: Pick<Areas, 'areas' | 'landmarks'>): Chart {
  const about = areas[0]?.polygons[0]?.[0]?.[0]?.[0] ?? 0;
  // All longitudes on one side of the earth, so that what the antimeridian parts lies together.
  const moved = (line: readonly Position[]): Position[] => {
    const by = toward(line[0]?.[0] ?? 0, about) - (line[0]?.[0] ?? 0);
    return line.map(([lon, lat]) => [lon + by, lat]);
  };
  const drawn = areas.map(({ id, polygons }) => ({ id, polygons: polygons.map((rings) => rings.map(moved)) }));
  const tight = boundsOf(drawn.flatMap(({ polygons }) => polygons.flat(2)));
  const flat = Math.cos((((tight.south + tight.north) / 2) * Math.PI) / 180);
  const [dx, dy] = [
    (tight.east - tight.west) * flat * (1 + 2 * MARGIN),
    (tight.north - tight.south) * (1 + 2 * MARGIN),
  ];
  const perDegree = Math.min(WIDE / dx, HIGH / dy);
  const height = Math.max(WIDE / 3, Math.round(dy * perDegree));
  const middle: Position = [(tight.west + tight.east) / 2, (tight.south + tight.north) / 2];
  const toChart = ([lon, lat]: Position): [number, number] => [
    WIDE / 2 + (toward(lon, middle[0]) - middle[0]) * flat * perDegree,
    height / 2 - (lat - middle[1]) * perDegree,
  ];
  const fromChart = (x: number, y: number): Position => {
    const lon = middle[0] + (x - WIDE / 2) / (flat * perDegree);
    return [toward(lon, 0), Math.min(90, Math.max(-90, middle[1] + (height / 2 - y) / perDegree))];
  };
  const pathOf = (line: readonly Position[], close = '') =>
    `M${line
      .map((position) =>
        toChart(position)
          .map((n) => n.toFixed(1))
          .join(' '),
      )
      .join('L')}${close}`;
  const across = greatCircle(fromChart(0, height / 2), fromChart(WIDE, height / 2));
  const miles = MILES.findLast((one) => one * MILE <= across / 3) ?? (MILES[0] as number);
  return {
    height,
    areas: drawn.map(({ id, polygons }) => ({
      id,
      path: polygons.flatMap((rings) => rings.map((ring) => pathOf(ring, 'Z'))).join(''),
      label: toChart(withinOf(polygons[0] as Polygon)),
    })),
    landmarks: landmarks.map(({ lines }) => {
      const all = lines.map(moved);
      const longest = all.reduce((one, other) => (other.length > one.length ? other : one), all[0] ?? []);
      return {
        // A line is named near its beginning, for a creek its source, where little else runs.
        at: toChart(longest[Math.min(1, longest.length - 1)] as Position),
        path: all
          .filter((line) => line.length > 1)
          .map((line) => pathOf(line))
          .join(''),
        spot: all.every((line) => line.length === 1),
      };
    }),
    scale: { miles, length: (miles * MILE * WIDE) / across },
    across,
    middle,
    ...cornersOf(fromChart, height),
    toChart,
    fromChart,
  };
}

function cornersOf(fromChart: Chart['fromChart'], height: number) {
  const [west, north] = fromChart(0, 0);
  const [east, south] = fromChart(WIDE, height);
  return { west, north, east, south };
}

/** A position well within a polygon: the middle of its widest stretch at half its height, outside its holes. */
function withinOf(rings: Polygon): Position {
  const { south, north } = boundsOf(rings[0] ?? []);
  // Half the height may run through corners only; a little off it never does.
  const lat = south + (north - south) * 0.5123;
  const cuts = rings
    .flatMap((ring) =>
      ring.slice(1).flatMap(([bx, by], i) => {
        const [ax, ay] = ring[i] as Position;
        return ay > lat === by > lat ? [] : [ax + ((bx - ax) * (lat - ay)) / (by - ay)];
      }),
    )
    .sort((a, b) => a - b);
  let best: readonly [number, number] = [cuts[0] ?? 0, cuts[1] ?? 0];
  for (let i = 0; i + 1 < cuts.length; i += 2) {
    const [from, to] = [cuts[i], cuts[i + 1]] as [number, number];
    if (to - from > best[1] - best[0]) best = [from, to];
  }
  return [(best[0] + best[1]) / 2, lat];
}

/** Without what has come to its end: that is not drawn. When all has, all is, since a map of nothing helps nobody. */
export function goingOn({ areas, landmarks }: Areas, today: string): Pick<Areas, 'areas' | 'landmarks'> {
  const going = areas.filter(({ until }) => until === undefined || until >= today);
  return { areas: going.length > 0 ? going : areas, landmarks };
}
