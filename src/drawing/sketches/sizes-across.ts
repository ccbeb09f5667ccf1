// Widths and heights of small things: a leaf, a stem, the skin at a collar.
import type { Drawing, Mark } from '../../key/index.ts';
import { fingersOf, forearmOf, handOf, MEASURES, nailOf, pencilOf, strawOf } from '../figures.ts';
import { ellipse, type Point, smooth, straight } from '../geometry.ts';
import type { Sketch } from '../sketch.ts';
import { beside } from './sizes-words.ts';

interface Breadth {
  readonly yard: 'pencil' | 'thumb' | 'fingers' | 'palm' | 'hand';
  readonly cm: number;
  /** Units of the drawing for a centimetre, when there is room. */
  readonly scale: number;
}
const BREADTHS: readonly (Breadth & { readonly upTo: number })[] = [
  { upTo: 1, yard: 'pencil', cm: MEASURES.pencil, scale: 24 },
  { upTo: 2.6, yard: 'thumb', cm: MEASURES.thumb, scale: 16 },
  { upTo: 6.5, yard: 'fingers', cm: MEASURES.finger * 3, scale: 8 },
  { upTo: 12, yard: 'palm', cm: MEASURES.palm, scale: 4.2 },
  { upTo: Number.POSITIVE_INFINITY, yard: 'hand', cm: MEASURES.hand, scale: 4.4 },
];
/** A pencil or a finger with what makes it known: the lead, the nail. */
function pencil(width: number, length: number, [x, y]: Point): Mark[] {
  const [tip, shoulder] = [y - length, y - length + width * 2.2];
  const lead: Point[] = [
    [x, tip],
    [x - width * 0.14, tip + width * 0.62],
    [x + width * 0.14, tip + width * 0.62],
  ];
  return [
    ['scale', pencilOf(width, length, [x, y])],
    ['solid', straight(lead, true)],
    [
      'fine',
      straight([
        [x - width / 6, shoulder],
        [x - width / 6, y],
      ]) +
        straight([
          [x + width / 6, shoulder],
          [x + width / 6, y],
        ]),
    ],
  ];
}
const finger = (width: number, length: number, at: Point): Mark[] => [
  ['scale', fingersOf(1, width, length, at)],
  ['fine', nailOf(width, length, at)],
];

function breadthMarks({ yard, cm }: Breadth, scale: number, x: number): Mark[] {
  const width = cm * scale;
  if (yard === 'pencil') return pencil(width, 84, [x, 92]);
  if (yard === 'thumb') return finger(width, 70, [x, 92]);
  if (yard === 'fingers') return [['scale', fingersOf(3, width, MEASURES.fingerLength * scale, [x, 92])]];
  if (yard === 'palm') return [['scale', handOf(MEASURES.hand * scale, [x, 92])]];
  const path = handOf(width, [x, 58], 90);
  return [
    ['scale', path],
    ['fine', path],
  ];
}
/** Width of a leaf: beside a pencil, a thumb, three fingers, a hand. */
export function width(cm: number, limit: number): Sketch {
  const found = BREADTHS.find(({ upTo }) => limit <= upTo) as Breadth;
  const across = found.yard === 'hand';
  const room = found.yard === 'palm' ? found.cm * 1.45 : found.cm;
  const scale = Math.min(found.scale, across ? 86 / cm : 80 / (cm + room));
  const [size, yard] = [cm * scale, room * scale];
  const half = size / 2;
  // Side by side in the middle of the picture, or the hand laid over a leaf too large for that.
  const gap = Math.min(10, 88 - size - yard);
  const start = (96 - size - yard - gap) / 2;
  const x = across ? 48 : start + yard + gap + half;
  const tip = across ? Math.max(6, 90 - size * 1.1) : 6;
  const at = (side: number, share: number): Point => [x + side * half, 91 - (91 - tip) * share];
  const base: Point[] = across ? [at(0, 0.1), at(-0.3, 0.01)] : [at(0, 0)];
  const foot: Point[] = across ? [at(0.3, 0.01)] : [];
  // The widest place is a point of the outline with its neighbours in line, so that the width is exact.
  const outline = [
    ...base,
    at(-0.8, 0.12),
    at(-1, 0.4),
    at(-0.8, 0.68),
    at(0, 1),
    at(0.8, 0.68),
    at(1, 0.4),
    at(0.8, 0.12),
    ...foot,
  ];
  const ribs = [0.2, 0.38, 0.56].flatMap((share, i) =>
    [-1, 1].map((side) => straight([at(0, share), at(side * ([0.82, 0.78, 0.6][i] as number), share + 0.14)])),
  );
  const left = found.yard === 'palm' ? start + (yard * 26) / 64 : start + yard / 2;
  const things: Mark[] = [
    ['mark', smooth(outline, true)],
    ['fine', straight([at(0, across ? 0.1 : 0.02), at(0, 0.94)]) + (size > 20 ? ribs.join('') : '')],
  ];
  const marks = breadthMarks(found, scale, across ? 48 - (found.cm * scale) / 2 : left);
  const by = across ? 'handLength' : found.yard;
  return {
    drawing: across ? [...things, ...marks] : [...marks, ...things],
    alt: beside('leaf', 'wide', cm, by, cm / found.cm),
  };
}

/** Thickness of a stem: beside a straw, a pencil, a finger, a forearm. */
export function thickness(cm: number, limit: number): Sketch {
  const yard = limit <= 0.6 ? 'straw' : limit <= 1.1 ? 'pencil' : limit <= 4 ? 'finger' : 'forearm';
  const wide = yard === 'forearm' ? 9.6 : MEASURES[yard];
  const scale = Math.min(16, 74 / (cm + wide), yard === 'forearm' ? 80 / MEASURES.forearm : 16);
  const [half, own] = [(cm * scale) / 2, wide * scale];
  const start = (96 - 10 - 2 * half - own) / 2;
  const [left, x] = [start + own / 2, start + own + 10 + half];
  const lip = Math.min(5, half * 0.3);
  const things: Record<typeof yard, () => Mark[]> = {
    straw: () => [['scale', strawOf(own, 80, [left, 88])]],
    pencil: () => pencil(own, 80, [left, 88]),
    finger: () => finger(own, 74, [left, 88]),
    forearm: () => [['scale', forearmOf(MEASURES.forearm * scale, [left, 88])]],
  };
  const node = (y: number): string =>
    smooth([
      [x - half, y],
      [x, y + half * 0.25],
      [x + half, y],
    ]);
  const shade =
    straight([
      [x + half * 0.5, 22],
      [x + half * 0.5, 32],
    ]) +
    straight([
      [x + half * 0.5, 48],
      [x + half * 0.5, 60],
    ]);
  const drawing: Drawing = [
    ...things[yard](),
    [
      'mark',
      straight(
        [
          [x - half, 12],
          [x - half, 88],
          [x + half, 88],
          [x + half, 12],
        ],
        true,
      ),
    ],
    ['face', ellipse([x, 12], half, lip)],
    ['fine', node(36) + node(38.5) + node(66) + node(68.5) + (half > 6 ? shade : '')],
    ['ground', 'M4 88L92 88'],
  ];
  return { drawing, alt: beside('stem', 'thick', cm, yard, cm / wide) };
}

/** Height of the skin at the collar of a grass: beside a ruler with a line for each millimetre. */
export function ligule(cm: number): Sketch {
  const scale = Math.min(180, 68 / cm);
  const [size, mm] = [cm * scale, scale / 10];
  const base = 80;
  const ticks = Array.from({ length: Math.floor(72 / mm) + 1 }, (_, i) =>
    straight([
      [26, base - i * mm],
      [i % 5 ? 18 : 13, base - i * mm],
    ]),
  ).join('');
  const [a, b] = [42, 62];
  const top = base - size;
  const edge: Point[] = [
    [a, base],
    [a + 0.6, top + size * 0.24],
    [a + 5, top + size * 0.05],
    [52, top],
    [b - 5, top + size * 0.05],
    [b - 0.6, top + size * 0.24],
    [b, base],
  ];
  const drawing: Drawing = [
    [
      'scale',
      straight(
        [
          [6, 92],
          [6, 6],
          [26, 6],
          [26, 92],
        ],
        true,
      ),
    ],
    ['fine', ticks],
    ['face', 'M47 92L47 5L57 5L57 92Z'],
    ['mark', `${smooth(edge)}Z`],
    ['face', 'M62 80Q80 76 87 34Q95 62 87 78Q80 91 62 91Z'],
    ['face', 'M41 92L42 80L62 80L63 92Z'],
    ['fine', 'M47 92L47 84M52 92L52 85M57 92L57 84M66 85Q82 82 88 52'],
  ];
  return { drawing, alt: beside('skin', 'high', cm, 'rule') };
}
