// The interface's own sentences, by language. The key's sentences are translated in the key folder.
import type { Month, Part, Standing, Topic } from '../key/types.ts';

/** Everything the elements say, in one language. Functions where words depend on a number or a name. */
export interface Words {
  /** BCP 47 tag of these words. */
  readonly language: string;
  readonly common: {
    readonly loading: string;
    readonly failed: string;
    readonly retry: string;
    readonly close: string;
    readonly change: string;
    readonly remove: string;
    readonly source: string;
    readonly memory: string;
    readonly months: Readonly<Record<Month, string>>;
    readonly status: Readonly<Record<Standing, string>>;
    readonly part: Readonly<Record<Part, string>>;
    /** "about 9 in 10": how sure, in words a person can picture. */
    readonly odds: (probability: number) => string;
    readonly list: (items: readonly string[]) => string;
    readonly or: (items: readonly string[]) => string;
  };
  readonly key: KeyWords;
  readonly question: QuestionWords;
  readonly trail: TrailWords;
  readonly standing: StandingWords;
  readonly verdict: VerdictWords;
  readonly guidance: GuidanceWords;
  readonly names: NamesWords;
}

// Each element adds what it says to its own part.
export interface KeyWords {
  readonly month: string;
  readonly observer: string;
  readonly restart: string;
}
export interface QuestionWords {
  readonly number: (n: number) => string;
}
export interface TrailWords {
  readonly heading: string;
}
export interface StandingWords {
  readonly heading: string;
}
export interface VerdictWords {
  readonly heading: string;
}
export interface GuidanceWords {
  readonly topic: Readonly<Record<Topic, string>>;
}
export interface NamesWords {
  readonly label: string;
}
