// A plant drawn from its row of the matrix: to scale, beside someone, as it stands and as it looks in a month.

import type { Character, Drawing, Key, Month, Taxon } from '../../key/index.ts';
import { drawBelow, drawHanging, drawStand } from './around.ts';
import { type Asked, Individual } from './individual.ts';
import { boundsOf, type Group, Pad } from './pad.ts';
import { beside, besideOf, drawSite, EDGE, GROUND, HEIGHT, MIDDLE, siteOf, WIDTH } from './place.ts';
import { seedsNow, skeletonOf, sketch } from './plant.ts';

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
  /** Whether it is drawn with the dry heads of this year's flowers. */
  readonly inSeed: boolean;
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

/** Where a height is unknown the plant is drawn this tall, in broken lines. */
const SOME_HEIGHT = 1;

/** Draws a taxon. Deterministic: the same key, taxon and wishes give the same figure. */
export function portraitOf(key: Key, taxon: Taxon, asked: Asked = {}): Figure {
  const who = new Individual(key, taxon, asked);
  const height = who.metres('height');
  // Without either nobody knows how it is built, and nothing is made up.
  const built = who.form('growth-form') ?? who.form('leaf-arrangement');
  const pad = built === undefined || UNDRAWN.has(built) ? new Pad() : drawn(who, height ?? SOME_HEIGHT, asked);
  const flowering = flowersNow(who, asked.month);
  const inSeed = seedsNow(who, asked.month);
  const details = key.characters.flatMap((character): Detail[] => {
    const state = who.stateOf(character);
    const role = character.draws ?? '';
    return state === undefined || (pad.shown.has(role) && !CLOSE.has(role)) ? [] : [{ character, state }];
  });
  return {
    box: [WIDTH, HEIGHT],
    parts: pad.pieces.map((piece) => ({ ...piece, unsure: pad.unsure.has(piece.group) })),
    shown: key.characters.filter((one) => pad.shown.has(one.draws ?? '') && isKnown(taxon, one)).map((one) => one.id),
    said: (flowering || inSeed ? [...SAID, ...FLOWERS] : SAID).flatMap((role) => {
      const character = key.characters.find((one) => one.draws === role);
      const state = character && who.stateOf(character);
      return character && state !== undefined ? [{ character, state }] : [];
    }),
    details,
    flowering,
    inSeed,
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
  let most = Math.min((GROUND * share) / metres, sky / height, shared?.metre ?? Number.POSITIVE_INFINITY);
  let scale = most;
  let rise = height * scale;
  let pad = new Pad();
  for (let round = 0; round < 14; round++) {
    pad = new Pad();
    sketch(pad, who, draw, site, scale, rise, height * scale, month);
    const [left, top, right] = boundsOf(plantOf(pad).flatMap(({ marks }) => marks.map(([, path]) => path)));
    const end = besideOf(tall, scale).left - 3;
    const room = Math.min((MIDDLE - EDGE) / (MIDDLE - left || 1), (end - MIDDLE) / (right - MIDDLE || 1));
    const missing = height * scale - (site.base[1] - top);
    const before = scale;
    if (top < 6) most = scale * 0.96;
    // What shrank too far, because the hand beside it was still large, grows again while there are rounds enough left.
    if (room < 1 || (room > 1.04 && round < 5)) scale *= Math.max(0.3, room) * 0.985;
    scale = Math.min(most, scale);
    rise = Math.max(4, Math.min(rise + missing * 0.85, height * before * 2.2)) * (scale / before);
    if (room >= 1 && top >= 6 && scale === before && Math.abs(missing) < 0.02 * height * scale) break;
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
  if (afloat && site.water !== undefined && skeletonOf(who).hangs) drawHanging(whole, site.base);
  whole.pieces.push(...plant);
  for (const role of pad.shown) whole.show(role);
  for (const group of pad.unsure) whole.unsure.add(group);
  if (who.form('habitat') !== undefined) whole.show('habitat');
  if (who.metres('height') !== undefined) whole.show('height');
  return whole;
}

const plantOf = (pad: Pad) =>
  pad.pieces.filter(({ group }) => group === 'leaf' || group === 'stem' || group === 'flower');
