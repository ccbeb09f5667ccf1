// Lengths: beside a coin, a finger, a hand, a forearm, an arm, a person.
import type { Mark } from '../../key/index.ts';
import { ARM_TIP, coinOf, forearmOf, handOf, MEASURES, personOf } from '../figures.ts';
import { type Point, smooth, straight } from '../geometry.ts';
import type { Sketch } from '../sketch.ts';
import { beside } from './sizes-words.ts';

type Yard = 'coin' | 'finger' | 'hand' | 'forearm' | 'arm' | 'person';
/** What is held beside a thing, in centimetres. */
interface Stick {
  /** The length compared, and how far above the ground it begins: a finger on its hand, an arm on its person. */
  readonly length: number;
  readonly lift: number;
  /** The length of what is drawn. */
  readonly whole: number;
  readonly path: (units: number, at: Point) => string;
}
const stick = (length: number, path: Stick['path'], whole = length, lift = 0): Stick => ({ length, lift, whole, path });
const STICKS: Record<Yard, Stick> = {
  coin: stick(MEASURES.coin, (units, [x, y]) => coinOf(units, [x, y - units / 2])),
  finger: stick(MEASURES.fingerLength, handOf, MEASURES.hand, MEASURES.hand - MEASURES.fingerLength),
  hand: stick(MEASURES.hand, handOf),
  forearm: stick(MEASURES.forearm, forearmOf),
  arm: stick(MEASURES.arm, personOf, MEASURES.person, MEASURES.person * ARM_TIP),
  person: stick(MEASURES.person, personOf),
};
function yardFor(limit: number): Yard {
  if (limit <= 2.6) return 'coin';
  if (limit <= 8) return 'finger';
  if (limit <= 22) return 'hand';
  if (limit <= 50) return 'forearm';
  return limit <= 90 ? 'arm' : 'person';
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

/** A class of length: a leaf, or the plume that stands for a flower head. */
export const lengthOf =
  (what: 'leaf' | 'head') =>
  (cm: number, limit: number): Sketch => {
    const [thing, floor] = what === 'leaf' ? [leaf, 92] : [plume, 86];
    const yard = yardFor(limit);
    const { length, lift, whole, path } = STICKS[yard];
    // A coin no larger than half the picture, so that the thing has room beside it.
    const room = yard === 'coin' ? 48 : floor - 5;
    const scale = Math.min((floor - 5) / (cm + lift), room / whole);
    const marks = thing([lift ? 62 : yard === 'hand' ? 77 : 68, floor - lift * scale], cm * scale);
    return {
      drawing: [['scale', path(whole * scale, [30, floor])], ...marks],
      alt: beside(what, 'long', cm, yard, cm / length),
    };
  };
