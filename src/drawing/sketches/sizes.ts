// Classes of size, drawn from their bounds beside something whose size everyone knows, at one scale.
import { type Drawing, type Mark, toCanonical } from '../../key/index.ts';
import {
  ARM_TIP,
  coinOf,
  fingersOf,
  forearmOf,
  handOf,
  MEASURES,
  nailOf,
  pencilOf,
  personOf,
  strawOf,
} from '../figures.ts';
import { ellipse, from, type Point, smooth, straight } from '../geometry.ts';
import type { Form, Sketch, SketchBook } from '../sketch.ts';
import { beside, tall } from './sizes-words.ts';
import { cane } from './strokes.ts';

/**
 * The size a class is drawn with, in centimetres: four fifths of the way through it, so that it stays within its
 * words; the last class, which has no end, half as large again as its beginning. Undefined without any bound,
 * and for what is counted.
 */
export function drawnSize({ from = 0, to, unit = 'cm' }: Form): number | undefined {
  if (unit === 'count') return undefined;
  const size = to === undefined ? from * 1.5 : from + 0.8 * (to - from);
  return size > 0 ? toCanonical(size, unit, 'cm') : undefined;
}
/** The bound that the words of a class name, in centimetres. */
const limitOf = ({ from = 0, to, unit = 'cm' }: Form): number => toCanonical(to ?? from, unit, 'cm');

const book = (role: string, draw: (cm: number, limit: number) => Sketch): SketchBook => ({
  role,
  forms: [],
  sketch: (form) => {
    const size = drawnSize(form);
    return size === undefined ? undefined : draw(size, limitOf(form));
  },
});

// Height: a plant beside a person.

const FLOOR = 91;
/** A level across the picture, in short pieces. */
const level = (y: number): string =>
  Array.from({ length: 9 }, (_, i) =>
    straight([
      [8 + i * 9.5, y],
      [12 + i * 9.5, y],
    ]),
  ).join('');

function height(cm: number, limit: number): Sketch {
  const scale = Math.min(84 / 180, 86 / cm, 86 / limit);
  const size = cm * scale;
  const root: Point = [64, FLOOR];
  const leaves = Math.round(Math.min(7, 2 + size / 14));
  const low = size < 14;
  const shoots = [-64, -32, 32, 64].map((degrees) => straight([root, from(root, degrees, size * 0.98)])).join('');
  const drawing: Drawing = [
    ['scale', personOf(MEASURES.person * scale, [22, FLOOR])],
    ['ground', 'M4 91H92'],
    ['fine', level(FLOOR - limit * scale)],
    ['trace', straight([root, [64, FLOOR - size]]) + (low ? shoots : '')],
    ...(low ? [] : [['mark', cane(root, size, 0, leaves, Math.min(size * 0.24, 17)).blades] as Mark]),
  ];
  return { drawing, alt: tall(cm, cm / MEASURES.person) };
}

// Length: beside a coin, a hand, an arm, a person.

type Yard = 'coin' | 'finger' | 'hand' | 'forearm' | 'arm' | 'person';
const YARD_LENGTH: Record<Yard, number> = { ...MEASURES, finger: MEASURES.fingerLength };
function yardFor(limit: number): Yard {
  if (limit <= 2.6) return 'coin';
  if (limit <= 8) return 'finger';
  if (limit <= 22) return 'hand';
  if (limit <= 50) return 'forearm';
  return limit <= 90 ? 'arm' : 'person';
}
/** What is beside it, standing on `y`; and where the base of the thing measured lies. */
function yardOf(yard: Yard, scale: number, y: number): { path: string; base: number } {
  const x = 30;
  if (yard === 'coin') return { path: coinOf(MEASURES.coin * scale, [x, y - (MEASURES.coin * scale) / 2]), base: y };
  if (yard === 'forearm') return { path: forearmOf(MEASURES.forearm * scale, [x, y]), base: y };
  if (yard === 'person' || yard === 'arm') {
    const height = MEASURES.person * scale;
    // A leaf as long as an arm is held along the arm of a person.
    return { path: personOf(height, [x, y]), base: yard === 'person' ? y : y - height * ARM_TIP };
  }
  const path = handOf(MEASURES.hand * scale, [x, y]);
  // A leaf as long as a finger is held where the fingers begin.
  return { path, base: yard === 'hand' ? y : y - (MEASURES.hand - MEASURES.fingerLength) * scale };
}

/** Of a thing measured: from its base upwards, a length in units. */
type Thing = (base: Point, length: number) => Mark[];
const leaf: Thing = ([x, y], length) => {
  const half = Math.min(length * 0.17, 15);
  const at = (side: number, share: number): Point => [x + side * half, y - length * share];
  const outline = [
    at(0, 0),
    at(-0.85, 0.14),
    at(-1, 0.34),
    at(-0.62, 0.68),
    at(0, 1),
    at(0.62, 0.68),
    at(1, 0.34),
    at(0.85, 0.14),
  ];
  const veins = [0.2, 0.36, 0.52, 0.66].flatMap((share, i) => {
    const out = [0.78, 0.8, 0.62, 0.4][i] as number;
    return [-1, 1].map((side) => straight([at(0, share - 0.08), at(side * out, share + 0.07)]));
  });
  return [
    ['mark', smooth(outline, true)],
    ['fine', straight([at(0, 0), at(0, 0.94)]) + (length > 16 ? veins.join('') : '')],
  ];
};
/** A plume: branches that rise from an axis and spread, over a tan wash. */
const plume: Thing = ([x, y], length) => {
  const half = Math.min(length * 0.22, 17);
  const at = (side: number, share: number): Point => [x + side * half, y - length * share];
  const count = Math.max(3, Math.round(length / 11));
  const branches = Array.from({ length: count }, (_, i) => {
    const share = (0.86 * i) / count;
    const out = Math.sin(Math.PI * (0.22 + 0.68 * share));
    const rise = Math.min(0.2, 0.97 - share);
    return [-1, 1].map((sign) => {
      const from = share + (sign > 0 ? 0.3 / count : 0);
      return smooth([
        at(0, from),
        at(sign * out * 0.45, from + rise * 0.72),
        at(sign * out, from + rise * (sign > 0 ? 0.66 : 0.8)),
      ]);
    });
  });
  return [
    ['wash-tan', smooth([at(0, 0), at(-1, 0.34), at(-0.6, 0.76), at(0, 1), at(0.6, 0.76), at(1, 0.34)], true)],
    [
      'line',
      straight([
        [x, Math.min(y + 9, 93)],
        [x, y],
      ]),
    ],
    ['trace', straight([at(0, 0), at(0, 1)]) + branches.flat().join('')],
  ];
};

const long =
  (thing: Thing, what: 'leaf' | 'head', floor: number) =>
  (cm: number, limit: number): Sketch => {
    const yard = yardFor(limit);
    const shown = yard === 'finger' ? MEASURES.hand : yard === 'arm' ? MEASURES.person : YARD_LENGTH[yard];
    const lifted = yard === 'arm' ? MEASURES.person * ARM_TIP : 0;
    const scale = (floor - 5) / Math.max(cm + lifted, shown);
    const { path, base } = yardOf(yard, scale, floor);
    const marks = thing([yard === 'finger' || yard === 'arm' ? 62 : yard === 'hand' ? 77 : 68, base], cm * scale);
    return { drawing: [['scale', path], ...marks], alt: beside(what, 'long', cm, yard, cm / YARD_LENGTH[yard]) };
  };

// Width of a leaf: beside a pencil, a thumb, three fingers, a hand.

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
function width(cm: number, limit: number): Sketch {
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

// Thickness of a stem: beside a straw, a pencil, a finger, an arm.

function thickness(cm: number, limit: number): Sketch {
  const yard = limit <= 0.6 ? 'straw' : limit <= 1.1 ? 'pencil' : limit <= 4 ? 'finger' : 'forearm';
  const wide = yard === 'forearm' ? 9.6 : MEASURES[yard];
  const scale = Math.min(16, 74 / (cm + wide));
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
    ['ground', 'M4 88H92'],
  ];
  return { drawing, alt: beside('stem', 'thick', cm, yard, cm / wide) };
}

// The skin at the collar of a grass: beside a rule with a line for each millimetre.

function ligule(cm: number): Sketch {
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
    ['face', 'M47 92V5H57V92z'],
    ['mark', `${smooth(edge)}Z`],
    ['face', 'M62 80Q80 76 87 34Q95 62 87 78Q80 91 62 91z'],
    ['face', 'M41 92L42 80H62L63 92z'],
    ['fine', 'M47 92V84M52 92V85M57 92V84M66 85Q82 82 88 52'],
  ];
  return { drawing, alt: beside('skin', 'high', cm, 'rule') };
}

export const SIZE_BOOKS: readonly SketchBook[] = [
  book('height', height),
  book('leaf-length', long(leaf, 'leaf', 92)),
  book('leaf-width', width),
  book('ligule-length', ligule),
  book('stem-thickness', thickness),
  book('cluster-length', long(plume, 'head', 86)),
];
