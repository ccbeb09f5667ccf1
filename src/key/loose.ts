// The loose shape of a key's files, as their schemas have it; see src/key/schema/*.json for what each field means.
import type { Drawing } from './drawing.ts';
import type {
  Effort,
  Frequency,
  Kind,
  Lead,
  Lookalike,
  Part,
  Season,
  Source,
  Standing,
  Thresholds,
  Topic,
} from './types.ts';
import type { Unit } from './units.ts';

export type LooseMonths = string | readonly number[];

export interface LooseKey {
  readonly format: 1;
  readonly id: string;
  readonly version: string;
  readonly title: string;
  readonly region: string;
  readonly reviewed: string;
  readonly languages: readonly string[];
  readonly units: 'us' | 'metric';
  readonly licence: string;
  readonly cautions: readonly string[];
  readonly pictures?: string;
  readonly thresholds?: Partial<Thresholds>;
  readonly outsidePrior?: number;
  readonly observers?: Readonly<Record<string, number>>;
}

export interface LooseState {
  readonly id: string;
  readonly label: string;
  readonly trade?: string;
  readonly help?: string;
  readonly form?: string;
}

export interface LooseClass extends LooseState {
  readonly to?: number;
}

export interface LooseCharacter {
  readonly id: string;
  readonly kind: Kind;
  readonly part: Part;
  readonly effort: Effort;
  readonly months?: LooseMonths;
  readonly label: string;
  readonly question: string;
  readonly trade: string;
  readonly help?: string;
  readonly caution?: string;
  readonly asked?: boolean;
  readonly draws?: string;
  readonly applies?: { readonly character: string; readonly states: readonly string[] };
  readonly states?: readonly LooseState[];
  readonly unit?: Unit;
  readonly classes?: readonly LooseClass[];
  readonly misread: number;
  readonly mixups?: readonly { readonly states: readonly [string, string]; readonly share: number }[];
}

export type LooseTrait = Readonly<Partial<Record<Frequency, readonly string[]>>> & {
  readonly range?: string;
  readonly applies?: false;
  readonly source: readonly string[];
  readonly note?: string;
};

export interface LooseTaxon {
  readonly id: string;
  readonly name: string;
  readonly family: string;
  readonly symbol?: string;
  readonly status: Standing;
  readonly statusNote?: string;
  readonly statusSource: readonly string[];
  readonly abundance: 'common' | 'occasional' | 'rare';
  readonly common: Readonly<Record<string, readonly string[]>>;
  readonly synonyms?: readonly string[];
  readonly misspellings?: readonly string[];
  readonly traits: Readonly<Record<string, LooseTrait>>;
}

export interface LooseEntry {
  readonly taxon: string;
  readonly reviewed: string;
  readonly statements: readonly {
    readonly topic: Topic;
    readonly text: string;
    readonly source: readonly string[];
    readonly months?: LooseMonths;
    readonly season?: Season;
  }[];
}

export interface LooseCouplet {
  readonly number: number;
  readonly leads: readonly {
    readonly text?: string;
    readonly character?: string;
    readonly states?: readonly string[];
    readonly also?: Lead['also'];
    readonly to: number | string | readonly string[];
  }[];
}

/** All files of a key in one object: what a bundle holds, and what a folder is read into. */
export interface LooseBundle {
  readonly format: 1;
  readonly hash?: string;
  readonly opening?: Readonly<Record<string, Drawing>>;
  readonly album?: string;
  readonly key: LooseKey;
  readonly characters: { readonly characters: readonly LooseCharacter[] };
  readonly taxa: { readonly taxa: readonly LooseTaxon[]; readonly lookalikes?: readonly Lookalike[] };
  readonly couplets?: { readonly couplets: readonly LooseCouplet[] };
  readonly guidance: { readonly entries: readonly LooseEntry[] };
  readonly sources: { readonly sources: readonly Source[] };
  readonly text?: Readonly<
    Record<string, { readonly language: string; readonly text: Readonly<Record<string, string>> }>
  >;
}
