// One plant on the pad: how it is built, and its parts in the sizes and colours that are known.
import { Random } from '../../engine/trial/random.ts';
import type { Month } from '../../key/index.ts';
import { floatingRosette, pads } from './afloat.ts';
import { isShape } from './blade.ts';
import type { Body } from './body.ts';
import { creeper } from './creepers.ts';
import { LASTING } from './heads.ts';
import type { Individual } from './individual.ts';
import type { Pad } from './pad.ts';
import type { Site } from './place.ts';
import { rosette } from './rosettes.ts';
import { leafyStems } from './stems.ts';
import { rushes, tuft } from './tufts.ts';

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
const _SOME_HEIGHT = 1;

export type Skeleton = (body: Body) => void;

export function skeletonOf(who: Individual): {
  readonly draw: Skeleton;
  readonly afloat: boolean;
  readonly hangs?: true;
} {
  const [growth, set, stem] = [who.form('growth-form'), who.form('leaf-arrangement'), who.form('stem-form')];
  const basal = set === 'basal';
  if (growth === 'floating')
    return set === 'rosette'
      ? { draw: floatingRosette, afloat: true, hangs: true }
      : { draw: basal ? pads : creeper, afloat: true };
  if (growth === 'creeping') return { draw: creeper, afloat: true };
  if (growth === 'rush-like') return { draw: rushes, afloat: false };
  if (growth === 'grass' && basal) return { draw: tuft, afloat: false };
  if (basal || set === 'rosette' || stem === 'no-stem' || stem === 'trunk') return { draw: rosette, afloat: false };
  return { draw: leafyStems, afloat: false };
}

/** Whether dry heads of this year's flowers stand on it: flowers only while it flowers, heads that last until none are looked for. */
export const seedsNow = (who: Individual, month: Month | undefined): boolean =>
  LASTING.has(who.form('flower-cluster') ?? '') && who.isAfter('flowering-month', 'flower-cluster', month);

export function sketch(
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
  const dry = seedsNow(who, month);
  const size = who.metres('cluster-length');
  // Where it is not known when it flowers, a broken outline says that there is something to be known.
  if (size === undefined || now === undefined) pad.unsure.add('flower');
  const some = Math.max(12, rise * (form?.endsWith('umbel') ? 0.3 : 0.2));
  const single = form === 'single-leaf' ? long * 0.5 : some;
  const head =
    form !== undefined && (now !== false || dry) && month !== undefined
      ? {
          form,
          length: size === undefined ? single : size * scale,
          posture: who.form('cluster-posture'),
          side: 1,
          apart: who.form('spike-gap') === 'gap',
          dry,
        }
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
    flowerHue: dry ? 'tan' : hueOf(who.form('flower-colour'), FLOWER_HUES),
    thickness,
    head,
    form: (role) => who.form(role),
  });
  if (wide > 1.3 && width !== undefined && shape !== 'divided') pad.show('leaf-width');
}
