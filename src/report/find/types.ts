// A find: what one person saw at one place, and all that a specialist needs to confirm it from.
import type { Month, Sureness, Unit, VerdictKind } from '../../key/index.ts';
import type { AreaUnit, GroundUnit } from './units.ts';

/** The form that is written. */
export const FORMAT = 1;

export const PHENOLOGY = ['seedling', 'leaves', 'bud', 'flower', 'fruit', 'seed-shed', 'dormant', 'resprout'] as const;
export type Phenology = (typeof PHENOLOGY)[number];
export const BANKS = ['in-water', 'waterline', 'bank', 'terrace'] as const;
export type Bank = (typeof BANKS)[number];
/** As seen by somebody who faces downstream. */
export const SIDES = ['left', 'right'] as const;
export type Side = (typeof SIDES)[number];
export const UPSTREAM = ['seen', 'not-seen', 'not-looked'] as const;
export type Upstream = (typeof UPSTREAM)[number];
export const TREATED = ['no', 'yes', 'unknown'] as const;
export type Treated = (typeof TREATED)[number];
export const LANDS = ['own', 'neighbour', 'public', 'unknown'] as const;
export type Land = (typeof LANDS)[number];
export const PLACED = ['device', 'typed', 'map', 'photo'] as const;
export const MEASURED = ['paced', 'measured', 'guessed', 'drawn'] as const;
export const REVIEWED = ['confirmed', 'corrected', 'photo-wanted'] as const;
export const COVER_CLASSES = [1, 2, 3, 4, 5, 6] as const;
export type CoverClass = (typeof COVER_CLASSES)[number];

/** `high` is the upper end of a range, never below `value`. Both are above zero, but for a count, which may be zero. */
export interface Measure<U extends string = Unit> {
  readonly value: number;
  readonly unit: U;
  readonly high?: number;
}

/** Exactly one of `states`, `value` and `skipped`. */
export interface TrailAnswer {
  /** Id of a character of the key. */
  readonly character: string;
  /** The character as the person saw it named. */
  readonly label: string;
  readonly states?: readonly string[];
  readonly value?: Measure;
  readonly skipped?: true;
  /** Not of what was skipped. */
  readonly sureness?: Sureness;
  /** Time taken over the answer; absent where nobody measured it. */
  readonly seconds?: number;
  /** The answer as the person saw it. */
  readonly words: string;
}

/** A position on WGS 84 in decimal degrees. */
export interface Point {
  readonly lat: number;
  readonly lon: number;
  /** Radius in metres of a circle about it that holds the whole place; above zero. */
  readonly uncertainty: number;
}

export interface Place extends Point {
  readonly source: (typeof PLACED)[number];
  /** What is told instead to whoever must not know the exact place. */
  readonly coarse?: Point;
  /** How to get there, in the person's words. */
  readonly words?: string;
}

export interface Extent {
  /** Along the water. */
  readonly bankLength?: Measure<GroundUnit>;
  /** Away from the water. */
  readonly width?: Measure<GroundUnit>;
  /** Ground that must be searched again. */
  readonly grossArea?: Measure<AreaUnit>;
  /** Ground that the plant stands on; part of the gross area. */
  readonly infestedArea?: Measure<AreaUnit>;
  readonly how?: (typeof MEASURED)[number];
}

export interface FindPhoto {
  readonly id: string;
  /** Id of the photograph that the checklist asked for. */
  readonly wants?: string;
  /** Media type. */
  readonly type: string;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
  /** Of its bytes, in 64 hexadecimal digits. */
  readonly sha256: string;
  readonly hiddenDataKept: boolean;
  readonly caption?: string;
  /** The picture itself in base64; absent where it travels beside the find. */
  readonly data?: string;
}

/** What a specialist said of a find. */
export interface Review {
  readonly status: (typeof REVIEWED)[number];
  /** Id of a taxon of the key, `outside` for a plant that the key does not have; absent while a photograph is wanted. */
  readonly taxon?: string;
  /** Scientific name. */
  readonly name?: string;
  readonly by: string;
  /** As `Find.date`. */
  readonly date: string;
  readonly remarks?: string;
  /** Ids of photographs of the checklist, or words. */
  readonly wanted?: readonly string[];
}

export interface Find {
  readonly format: typeof FORMAT;
  /** UUID made on the device; the same through every edit and every sending. */
  readonly id: string;
  /** ISO 8601 with time and offset. */
  readonly made: string;
  readonly changed: string;
  /** BCP 47 tag of the words in it. */
  readonly language: string;
  readonly key: { readonly id: string; readonly version: string; readonly hash?: string; readonly title: string };
  readonly month: Month;
  /** Id of a kind of observer of the key. */
  readonly observer: string;
  /** In the order of the answers. */
  readonly trail: readonly TrailAnswer[];
  /** Likeliest first: those of at least 0.5 %, twelve at most. */
  readonly standing: readonly { readonly taxon: string; readonly name: string; readonly probability: number }[];
  /** Probability that the plant is none of the key's. */
  readonly outside: number;
  /** `probability` is that of the first of its taxa, or of `outside`; `concern` that of all plants of concern. */
  readonly verdict: {
    readonly kind: VerdictKind;
    readonly taxa: readonly string[];
    readonly probability: number;
    readonly concern: number;
  };
  /** false: looked and saw none, which needs an effort. */
  readonly detected: boolean;
  /** The plant that was looked for where none was seen: id of a taxon of the key, and its scientific name. */
  readonly sought?: { readonly taxon: string; readonly name: string };
  /** When it was seen: YYYY-MM-DD, or ISO 8601 with time and offset. */
  readonly date?: string;
  readonly place?: Place;
  readonly photos: readonly FindPhoto[];
  /** Why there is no photograph. */
  readonly noPhotos?: string;
  readonly extent?: Extent;
  readonly cover?: { readonly scheme: 'daubenmire'; readonly class: CoverClass };
  readonly height?: Measure;
  readonly phenology?: Phenology;
  readonly bank?: Bank;
  readonly side?: Side;
  /** Whether the plant was seen further upstream. */
  readonly upstream?: Upstream;
  /** Whether the stand was cut, dug or sprayed before. */
  readonly treated?: Treated;
  readonly treatedNote?: string;
  readonly land?: Land;
  /** How a visitor gets in, whom to ask. */
  readonly access?: string;
  readonly contact?: { readonly name?: string; readonly phone?: string; readonly email?: string };
  /**
   * What may be told with the find: how to reach the person, the exact place (else a coarse one is told), and the
   * photographs to others than those who get the report.
   */
  readonly consent: { readonly contact: boolean; readonly exactPlace: boolean; readonly photos: boolean };
  readonly remarks?: string;
  /** How long, how far and how somebody looked. */
  readonly effort?: string;
  readonly review?: Review;
}
