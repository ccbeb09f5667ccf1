// The strict, frozen shape of a key after reading. The loose shape of its files is src/key/schema/*.json.
import type { Drawing } from './drawing.ts';
import type { Range } from './range/index.ts';
import type { Unit } from './units.ts';

/** A month of the year, 1 to 12. */
export type Month = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12;

/** What it takes to look: `dig` is never asked for, only accepted. */
export const EFFORTS = ['glance', 'handle', 'measure', 'magnify', 'dig'] as const;
export type Effort = (typeof EFFORTS)[number];

/** The part of the plant, or the place, that a character looks at, in the order a person walks round a plant. */
export const PARTS = ['whole', 'place', 'leaf', 'collar', 'stem', 'flower', 'fruit', 'sap', 'underground'] as const;
export type Part = (typeof PARTS)[number];

/** `choice`: unordered states; `scale`: ordered states; `measure`: a number, shown as classes of size or typed. */
export type Kind = 'choice' | 'scale' | 'measure';

/** One state of a choice or scale, or one size class of a measure. */
export interface State {
  readonly id: string;
  /** Plain words, as a landowner would say it. */
  readonly label: string;
  /** The trade's word, if it differs. */
  readonly trade?: string;
  readonly help?: string;
  /** Size classes only: the class holds values from `from` (0 for the first) up to `to` (absent for the last). */
  readonly from?: number;
  readonly to?: number;
  /** Name of the form that a drawing of it shows, where that is not its id. */
  readonly form?: string;
}

/** States of one character that beginners take for one another: `share` of the misreadings of either go to the other. */
export interface Mixup {
  readonly states: readonly [string, string];
  readonly share: number;
}

export interface Character {
  readonly id: string;
  readonly kind: Kind;
  readonly part: Part;
  readonly effort: Effort;
  /** Months in which it can be seen; all twelve unless the file says less. */
  readonly months: readonly Month[];
  /** Short name for lists and the trail. */
  readonly label: string;
  /** The question in plain words. */
  readonly question: string;
  /** The trade's wording of the same. */
  readonly trade: string;
  readonly help?: string;
  /** What is unsafe about looking, said before the question is answered. */
  readonly caution?: string;
  /** False: a published fact that nobody is asked for (it may still be answered). */
  readonly asked: boolean;
  /** Asked only of plants that may show one of these states of another character. */
  readonly applies?: { readonly character: string; readonly states: readonly string[] };
  readonly states: readonly State[];
  /** Measures only: the unit of class bounds and of the engine. */
  readonly unit?: Unit;
  /** Share of novices' readings that are wrong, 0 to 1 (exclusive). */
  readonly misread: number;
  readonly mixups: readonly Mixup[];
  /** The role in which drawings know this character, such as `leaf-shape`; without it nothing is drawn of it. */
  readonly draws?: string;
}

/** How often a taxon shows a state. */
export const FREQUENCIES = ['usually', 'sometimes', 'rarely'] as const;
export type Frequency = (typeof FREQUENCIES)[number];

/** Why a trait holds: ids of sources; `memory` marks what was not read in any. */
interface Sourced {
  readonly source: readonly string[];
  readonly note?: string;
}
export interface StatesTrait extends Sourced {
  readonly kind: 'states';
  readonly states: readonly { readonly state: string; readonly how: Frequency }[];
}
export interface RangeTrait extends Sourced {
  readonly kind: 'range';
  /** In the unit in which it is written; `spreadOf(range, character.unit)` gives it in the character's. */
  readonly range: Range;
}
/** The character means nothing for this taxon (a ligule on a lily): a fact, and not the same as unknown. */
export interface AbsentTrait extends Sourced {
  readonly kind: 'not-applicable';
}
/** What is known of one character of one taxon. Unknown is the absence of a trait. */
export type Trait = StatesTrait | RangeTrait | AbsentTrait;

/** Where a plant belongs in the key's region. `invasive` are the plants of concern. */
export type Standing = 'native' | 'introduced' | 'invasive';

export interface Taxon {
  readonly id: string;
  /** Accepted scientific name. */
  readonly name: string;
  readonly family: string;
  /** Symbol of the PLANTS list, an opaque identifier. */
  readonly symbol?: string;
  readonly status: Standing;
  /** Where and since when, or what is debated. */
  readonly statusNote?: string;
  readonly statusSource: readonly string[];
  /** How common it is in the region. */
  readonly abundance: 'common' | 'occasional' | 'rare';
  /** Names in use by language; the first is the one shown. */
  readonly common: ReadonlyMap<string, readonly string[]>;
  readonly synonyms: readonly string[];
  readonly misspellings: readonly string[];
  readonly traits: ReadonlyMap<string, Trait>;
}

/** Two or more taxa that are taken for one another, and how to tell them apart. */
export interface Lookalike {
  readonly taxa: readonly [string, string];
  readonly separate: readonly {
    readonly character: string;
    /** What to look for, in a landowner's words. */
    readonly words: string;
    readonly how: 'always' | 'usually';
  }[];
  /** How many of these characters must speak before either may be settled. */
  readonly needs: number;
  readonly source: readonly string[];
}

/** Most taxa that are shown side by side (ours). */
export const MOST_COMPARED = 3;

/** The order in which guidance is read. */
export const TOPICS = [
  'harm',
  'leave',
  'benefit',
  'spread',
  'dont',
  'do',
  'when',
  'who',
  'safety',
  'disposal',
  'followup',
  'legal',
  'photos',
] as const;
export type Topic = (typeof TOPICS)[number];

/** What the months of a statement are for: those in which specialists act, or in which nothing is done. */
export type Season = 'act' | 'avoid';

export interface Statement {
  readonly topic: Topic;
  readonly text: string;
  readonly source: readonly string[];
  /** For `when`: the months meant. */
  readonly months?: readonly Month[];
  readonly season?: Season;
}
export interface Guidance {
  readonly taxon: string;
  readonly reviewed: string;
  readonly statements: readonly Statement[];
}

/** States of a character that the plants of a lead show. */
export interface Said {
  readonly character: string;
  readonly states: readonly string[];
}
/**
 * One statement of a couplet, and where it leads: the number of a couplet, or the ids of the taxa reached (several where
 * nothing separates them). It has a text, or a character with states, or both.
 */
export interface Lead extends Partial<Said> {
  readonly text?: string;
  /** Further characters that split the plants the same way, most helpful first. */
  readonly also: readonly (Said & { readonly how: 'always' | 'usually' })[];
  readonly to: number | readonly string[];
}
/** A numbered set of leads of the branching key. */
export interface Couplet {
  readonly number: number;
  readonly leads: readonly Lead[];
}

export interface Source {
  readonly id: string;
  readonly title: string;
  readonly institution: string;
  readonly year?: string;
  /** http or https only. */
  readonly url?: string;
  readonly kind: string;
}

/** When a verdict may be called what; all are probabilities but `telling`. */
export interface Thresholds {
  /** Weight that the leading taxon needs to be settled. */
  readonly settled: number;
  readonly leaning: number;
  readonly outside: number;
  /** An invasive is settled only while all natives together keep less than this ... */
  readonly nativesSettled: number;
  /** ... and is leaned to only while they keep less than this. */
  readonly nativesLeaning: number;
  /** A look-alike counts as tested when one answer is at least this many times likelier for the leading taxon. */
  readonly telling: number;
}

export interface Key {
  readonly id: string;
  readonly version: string;
  readonly title: string;
  readonly region: string;
  readonly reviewed: string;
  /** The first is the language the files are written in. */
  readonly languages: readonly string[];
  readonly units: 'us' | 'metric';
  readonly licence: string;
  /** Said with every result. */
  readonly cautions: readonly string[];
  readonly thresholds: Thresholds;
  /** Prior probability that the plant is not in the key. */
  readonly outsidePrior: number;
  /** Kinds of observer and how many times a novice's rate of misreading each has. */
  readonly observers: ReadonlyMap<string, number>;
  readonly characters: readonly Character[];
  readonly taxa: readonly Taxon[];
  readonly lookalikes: readonly Lookalike[];
  /** A branching key written by hand, the first couplet first; empty when the folder has none. */
  readonly couplets: readonly Couplet[];
  readonly guidance: ReadonlyMap<string, Guidance>;
  readonly sources: ReadonlyMap<string, Source>;
  /** Language -> sentence as written -> its translation. */
  readonly text: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Drawings of the states of the first question, by `character/state`; a bundle's only. */
  readonly opening?: ReadonlyMap<string, Drawing>;
  /** Name of the file, beside the bundle, that holds all other pictures; a bundle's only. */
  readonly album?: string;
  /** Content hash of a bundle; absent when read from a folder. */
  readonly hash?: string;
}
