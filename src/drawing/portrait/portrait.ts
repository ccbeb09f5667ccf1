// A plant drawn from its row of the matrix: to scale, beside someone, as it stands and as it looks in a month.

import { Random } from '../../engine/trial/random.ts';
import type { Character, Drawing, Key, Month, Taxon } from '../../key/index.ts';
import { type Point, smooth } from '../geometry.ts';
import { isShape, ring, spine } from './blade.ts';
import { type Asked, Individual } from './individual.ts';
import { boundsOf, type Group, Pad, type Piece, plain } from './pad.ts';
import { beside, besideOf, drawSite, EDGE, GROUND, HEIGHT, MIDDLE, type Site, siteOf, WIDTH } from './place.ts';
import { type Body, creeper, floatingRosette, leafyStems, pads, rosette, rushes, tuft } from './skeletons.ts';

export type { Asked } from './individual.ts';

/** A part of the figure; it is drawn moved and sized as `at` says, an SVG transform of `translate` and `scale` only. */
export interface FigurePart {
  readonly group: Group;
  readonly at?: string;
  readonly marks: Drawing;
  /** Its form or its size is not known: its outlines are to be broken. */
  readonly unsure: boolean;
}

/** A trait in close-up or in words: what it is of, and which state (or class of size) this individual shows. */
export interface Detail {
  readonly character: Character;
  readonly state: string;
}

export interface Figure {
  readonly box: readonly [width: number, height: number];
  /** In the order in which they are drawn; none where the key says too little to draw it. */
  readonly parts: readonly FigurePart[];
  /** Ids of the characters that the figure itself shows. */
  readonly shown: readonly string[];
  /** What a sentence about the figure says, first things first. */
  readonly said: readonly Detail[];
  /** What can be told of the plant and is not to be seen on the figure at its scale. */
  readonly details: readonly Detail[];
  /** Whether it is drawn with flowers; undefined where nobody knows if it flowers then, or how. */
  readonly flowering: boolean | undefined;
  /** Height of this individual, in metres. */
  readonly height: number | undefined;
  /** Units of the box for a metre. */
  readonly metre: number;
  /** Where its height begins, from the top of the box. */
  readonly ground: number;
  /** What stands beside it. */
  readonly beside: 'person' | 'hand';
  /** Characters of which nothing is known and which would mean something here. */
  readonly unknown: readonly Character[];
  /** Some of it is drawn in broken lines. */
  readonly broken: boolean;
}

const LEAF_HUES: Readonly<Record<string, string>> = { patterned: 'green' };
const FLOWER_HUES: Readonly<Record<string, string>> = {
  'orange-red': 'orange',
  'blue-purple': 'purple',
  'purplish-plume': 'pink',
};
const HUED = new Set([
  'green',
  'blue-green',
  'yellow-green',
  'dark-green',
  'white',
  'yellow',
  'brown',
  'silver',
  'tan',
  'red',
]);
const hueOf = (form: string | undefined, other: Readonly<Record<string, string>> = {}): string | undefined =>
  form === undefined ? undefined : Object.hasOwn(other, form) ? other[form] : HUED.has(form) ? form : undefined;

/** Roles that the figure hints at but that only a close-up shows so that a person can tell them apart. */
const CLOSE = new Set([
  'growth-form',
  'cluster-posture',
  'leaf-shape',
  'flower-cluster',
  'leaf-colour',
  'flower-colour',
  'stem-colour',
  'stem-thickness',
  'leaf-stalk',
  'flowering-month',
]);

/** Roles that a sentence about the figure speaks of, and those it adds while the plant flowers. */
const SAID = ['growth-form', 'habitat', 'stand', 'leaf-shape', 'leaf-arrangement', 'leaf-tip'];
const FLOWERS = ['flower-cluster', 'cluster-posture'];

/** Growth forms of which nobody has drawn a whole plant. */
const UNDRAWN = new Set(['woody', 'threads']);

/** Width of leaves of which only the form is known, as shares of their length (ours); their outlines are broken. */
const WIDE: Readonly<Record<string, number>> = {
  linear: 0.05,
  strap: 0.1,
  lance: 0.25,
  heart: 0.8,
  arrowhead: 0.7,
  round: 1,
  shield: 1,
};

/** Where a height is unknown the plant is drawn this tall, in broken lines. */
const SOME_HEIGHT = 1;

type Skeleton = (body: Body) => void;

function skeletonOf(who: Individual): { readonly draw: Skeleton; readonly afloat: boolean } {
  const [growth, set, stem] = [who.form('growth-form'), who.form('leaf-arrangement'), who.form('stem-form')];
  const basal = set === 'basal';
  if (growth === 'floating')
    return { draw: set === 'rosette' ? floatingRosette : basal ? pads : creeper, afloat: true };
  if (growth === 'creeping') return { draw: creeper, afloat: true };
  if (growth === 'rush-like') return { draw: rushes, afloat: false };
  if (growth === 'grass' && basal) return { draw: tuft, afloat: false };
  if (basal || set === 'rosette' || stem === 'no-stem' || stem === 'trunk') return { draw: rosette, afloat: false };
  return { draw: leafyStems, afloat: false };
}

/** Draws a taxon. Deterministic: the same key, taxon and wishes give the same figure. */
export function portraitOf(key: Key, taxon: Taxon, asked: Asked = {}): Figure {
  const who = new Individual(key, taxon, asked);
  const height = who.metres('height');
  // Without either nobody knows how it is built, and nothing is made up.
  const built = who.form('growth-form') ?? who.form('leaf-arrangement');
  const pad = built === undefined || UNDRAWN.has(built) ? new Pad() : drawn(who, height ?? SOME_HEIGHT, asked);
  const flowering = flowersNow(who, asked.month);
  const details = key.characters.flatMap((character): Detail[] => {
    const state = who.stateOf(character);
    const role = character.draws ?? '';
    return state === undefined || (pad.shown.has(role) && !CLOSE.has(role)) ? [] : [{ character, state }];
  });
  return {
    box: [WIDTH, HEIGHT],
    parts: pad.pieces.map((piece) => ({ ...piece, unsure: pad.unsure.has(piece.group) })),
    shown: key.characters.filter((one) => pad.shown.has(one.draws ?? '') && isKnown(taxon, one)).map((one) => one.id),
    said: (flowering ? [...SAID, ...FLOWERS] : SAID).flatMap((role) => {
      const character = key.characters.find((one) => one.draws === role);
      const state = character && who.stateOf(character);
      return character && state !== undefined ? [{ character, state }] : [];
    }),
    details,
    flowering,
    height,
    metre: pad.metre,
    ground: siteOf(who.form('habitat'), skeletonOf(who).afloat).base[1],
    beside: beside(Math.max(height ?? SOME_HEIGHT, asked.scale?.tall ?? 0)).thing,
    broken: pad.pieces.some(({ group }) => pad.unsure.has(group)),
    unknown: key.characters.filter((character) => !taxon.traits.has(character.id) && means(taxon, character)),
  };
}

const isKnown = (taxon: Taxon, { id }: Character): boolean =>
  (taxon.traits.get(id)?.kind ?? 'not-applicable') !== 'not-applicable';

/** Whether a character could mean something for the taxon: it may show a state that the character asks for. */
function means(taxon: Taxon, { applies }: Character): boolean {
  if (applies === undefined) return true;
  const trait = taxon.traits.get(applies.character);
  return (
    trait === undefined || (trait.kind === 'states' && trait.states.some(({ state }) => applies.states.includes(state)))
  );
}

/** Undefined where either is not known. */
function flowersNow(who: Individual, month: Month | undefined): boolean | undefined {
  const now = who.inMonth('flowering-month', month);
  return now && who.form('flower-cluster') === undefined ? undefined : now;
}

/** Tries sizes until the plant has its height and finds room: leaves and flowers keep their size, only stems give way. */
function drawn(who: Individual, height: number, { month, album, scale: shared }: Asked): Pad {
  const { draw, afloat } = skeletonOf(who);
  const habitat = who.form('habitat');
  const site = siteOf(habitat, afloat);
  const sky = site.base[1] - 12;
  const tall = Math.max(height, shared?.tall ?? 0);
  const { metres, share } = beside(tall);
  let scale = Math.min((GROUND * share) / metres, sky / height, shared?.metre ?? Number.POSITIVE_INFINITY);
  let rise = height * scale;
  let pad = new Pad();
  for (let round = 0; round < 10; round++) {
    pad = new Pad();
    sketch(pad, who, draw, site, scale, rise, height * scale, month);
    const [left, top, right] = boundsOf(plantOf(pad).flatMap(({ marks }) => marks.map(([, path]) => path)));
    const end = besideOf(tall, scale).left - 3;
    const room = Math.min((MIDDLE - EDGE) / (MIDDLE - left || 1), (end - MIDDLE) / (right - MIDDLE || 1));
    const missing = height * scale - (site.base[1] - top);
    const before = scale;
    if (room < 1) scale *= room * 0.985;
    if (top < 6) scale *= 0.96;
    rise = Math.max(4, Math.min(rise + missing * 0.85, height * before * 2.2)) * (scale / before);
    if (room >= 1 && top >= 6 && Math.abs(missing) < 0.02 * height * scale) break;
  }
  const whole = new Pad();
  drawSite(whole, habitat, site);
  const plant = plantOf(pad);
  const other = besideOf(tall, scale);
  drawStand(whole, who.form('stand'), plant, site, other.left);
  whole.put('size', 'scale', other.path);
  whole.metre = scale;
  const below = who.pictureOf('underground', album);
  // Runners go over the ground, or float where the plant does.
  if (below) drawBelow(whole, below, who.form('underground') === 'runners' ? site.base : site.bed);
  if (afloat && site.water !== undefined && skeletonOf(who).draw === floatingRosette) drawHanging(whole, site.base);
  whole.pieces.push(...plant);
  for (const role of pad.shown) whole.show(role);
  for (const group of pad.unsure) whole.unsure.add(group);
  if (who.form('habitat') !== undefined) whole.show('habitat');
  if (who.metres('height') !== undefined) whole.show('height');
  return whole;
}

const plantOf = (pad: Pad) =>
  pad.pieces.filter(({ group }) => group === 'leaf' || group === 'stem' || group === 'flower');

function sketch(
  pad: Pad,
  who: Individual,
  draw: Skeleton,
  site: Site,
  scale: number,
  rise: number,
  height: number,
  month: Month | undefined,
): void {
  const [length, width] = [who.metres('leaf-length'), who.metres('leaf-width')];
  const shape = who.form('leaf-shape');
  if (shape !== 'leafless' && !(isShape(shape) && length !== undefined && (width !== undefined || shape === 'divided')))
    pad.unsure.add('leaf');
  if (who.metres('height') === undefined || (who.isUnknown('stem-form') && who.isUnknown('growth-form')))
    pad.unsure.add('stem');
  const long = (length ?? 0.3 * (rise / scale)) * scale;
  const wide = width === undefined ? long * (WIDE[shape ?? ''] ?? 0.5) : width * scale;
  const form = who.form('flower-cluster');
  const now = who.inMonth('flowering-month', month);
  const size = who.metres('cluster-length');
  // Where it is not known when it flowers, a broken outline says that there is something to be known.
  if (size === undefined || now === undefined) pad.unsure.add('flower');
  const some = Math.max(12, rise * (form?.endsWith('umbel') ? 0.3 : 0.2));
  const single = form === 'single-leaf' ? long * 0.5 : some;
  const head =
    form !== undefined && now !== false && month !== undefined
      ? { form, length: size === undefined ? single : size * scale, posture: who.form('cluster-posture'), side: 1 }
      : undefined;
  if (form === 'single-leaf') pad.unsure.delete('flower');
  const thickness = (who.metres('stem-thickness') ?? 0) * scale;
  draw({
    pad,
    random: new Random(who.random.word(), 3),
    base: site.base,
    bed: site.bed,
    rise,
    height,
    leaf: {
      // Divided leaves stand like an open hand on a stalk of their own, and like a feather along a stem.
      shape: shape === 'divided' && who.form('leaf-arrangement') !== 'basal' ? 'pinnate' : (shape ?? 'oval'),
      length: long,
      width: wide,
    },
    leafHue: hueOf(who.form('leaf-colour'), LEAF_HUES),
    patterned: who.form('leaf-colour') === 'patterned',
    stemHue: hueOf(
      who.form('stem-colour') ?? (who.form('stem-form') === 'no-stem' ? who.form('leaf-colour') : undefined),
      LEAF_HUES,
    ),
    flowerHue: hueOf(who.form('flower-colour'), FLOWER_HUES),
    thickness,
    head,
    form: (role) => who.form(role),
  });
  if (wide > 1.3 && width !== undefined && shape !== 'divided') pad.show('leaf-width');
}

/** Of a drawing of what lies below the ground: the box, and where its ground is (as the drawings of states have it). */
const BELOW = { middle: 48, ground: 18, size: 0.6 };

/** What lies below the ground, from the drawing of its state; not to scale, and never to be dug for. */
function drawBelow(pad: Pad, drawing: Drawing, [x, y]: Point): void {
  const { middle, ground, size } = BELOW;
  const at = `translate(${x - middle * size} ${y - ground * size}) scale(${size})`;
  for (const [pen, path] of drawing) {
    if (pen === 'ground') continue;
    // Nothing here is what a state is about.
    pad.put('below', pen === 'mark' ? 'face' : pen === 'trace' ? 'line' : pen, path, at);
    if (pen === 'mark') pad.put('below', 'wash-tan', path, at);
  }
  pad.show('underground');
}

/** Roots that hang in the water. */
function drawHanging(pad: Pad, root: Point): void {
  for (let i = -3; i <= 3; i++) {
    const at = spine(root, 180 - i * 8, 30 - Math.abs(i) * 3, i * 3);
    pad.put('below', 'fine', smooth([at(0), at(0.5), at(1)]));
  }
}

/** Others of its kind behind it: how it grows together. They stand left of `to`. */
function drawStand(pad: Pad, stand: string | undefined, plant: readonly Piece[], { base }: Site, to: number): void {
  const outline = plant
    .filter(({ group }) => group !== 'flower')
    .flatMap(({ marks }) => marks.filter(([pen]) => pen === 'face').map(([, path]) => plain(path)))
    .join('');
  const bounds = boundsOf([outline]);
  const spots: Readonly<Record<string, readonly (readonly [x: number, size: number])[]>> = {
    'dense-stand': [
      [30, 0.82],
      [66, 0.9],
      [100, 0.86],
      [160, 0.9],
      [194, 0.84],
      [228, 0.78],
    ],
    mat: [
      [34, 0.7],
      [222, 0.66],
    ],
    scattered: [
      [38, 0.62],
      [222, 0.56],
    ],
    clump: [],
    single: [],
  };
  if (stand === undefined) return;
  pad.show('stand');
  for (const [x, wanted] of spots[stand] ?? []) {
    const size = Math.min(
      wanted,
      (x - 4) / Math.max(1, base[0] - bounds[0]),
      (to - x) / Math.max(1, bounds[2] - base[0]),
    );
    if (outline === '' || size < 0.2) continue;
    const [dx, dy] = [x - base[0] * size, base[1] * (1 - size)].map((value) => Math.round(value * 10) / 10);
    pad.put('stand', 'scale', outline, `translate(${dx} ${dy}) scale(${Math.round(size * 100) / 100})`);
  }
  if (stand === 'clump')
    pad.put(
      'stand',
      'tint',
      smooth(
        [
          [base[0] - 34, base[1] + 1],
          [base[0], base[1] - 5],
          [base[0] + 36, base[1] + 1],
          [base[0], base[1] + 4],
        ],
        true,
      ),
    );
  if (stand === 'single') pad.put('stand', 'tint', ring([base[0] + 4, base[1] + 1], 12, 2.5));
}
