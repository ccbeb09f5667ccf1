// The interface's own sentences, by language. The key's sentences are translated in the key folder.
import type { Month, Part, Season, Standing, Topic } from '../key/types.ts';
import type { Unit } from '../key/units.ts';

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
  readonly couplet: CoupletWords;
  readonly stream: StreamWords;
  readonly trail: TrailWords;
  readonly standing: StandingWords;
  readonly verdict: VerdictWords;
  readonly guidance: GuidanceWords;
  readonly names: NamesWords;
  readonly comparison: ComparisonWords;
  readonly term: TermWords;
  readonly portrait: PortraitWords;
  /** Answers that are not kept on this device, or not as they were. */
  readonly keep: Readonly<Record<'full' | 'unavailable' | 'left' | 'elsewhere' | 'link', string>>;
  /** What leads to people and opens a report; the report has words of its own. */
  readonly report: {
    readonly open: string;
    readonly needs: string;
    readonly next: string;
    readonly helps: string;
  };
}

/** What the first question and its frame say; the rest of the words comes after it. */
export type FirstWords = Pick<Words, 'language' | 'common' | 'question'> & {
  readonly key: Pick<KeyWords, 'mistakes' | 'moreMistakes' | 'missing' | 'restart' | 'restartSure'>;
  readonly couplet: Omit<CoupletWords, 'wrong' | 'second' | 'lookAgain' | 'carryOn' | 'notSettled'>;
};

// Each element adds what it says to its own part.
export interface KeyWords {
  /** Said above the list of mistakes in a key that cannot be used. */
  readonly mistakes: string;
  readonly moreMistakes: (n: number) => string;
  /** A part of the page did not come. */
  readonly missing: string;
  readonly settings: string;
  readonly month: string;
  readonly units: string;
  readonly system: Readonly<Record<'us' | 'metric', string>>;
  readonly observer: string;
  /** For kinds of observer that many keys have; others are shown by their id. */
  readonly observers: ReadonlyMap<string, string>;
  /** To be read as whoever practised on this device reads; the name may be empty. */
  readonly own: (name: string) => string;
  readonly ownSays: (readings: number) => string;
  readonly language: string;
  /** Opens the stream. */
  readonly stream: string;
  readonly lookup: string;
  readonly print: string;
  /** Copies the page's address with the answers in it; then that it was copied, or where it can be copied by hand. */
  readonly copyLink: string;
  readonly copied: string;
  readonly notCopied: string;
  /** Why a form that asks for an answer is held. */
  readonly unanswered: string;
  readonly restart: string;
  readonly restartSure: string;
}
export interface TermWords {
  /** Stands before a definition as the trade gives it. */
  readonly definition: string;
}
export interface QuestionWords {
  readonly number: (n: number) => string;
  readonly again: (n: number) => string;
  readonly help: string;
  readonly trade: (words: string) => string;
  readonly careful: string;
  /** Said of what lies below the ground, whatever the key says. */
  readonly dig: string;
  /** The line below the answers, by how many are ticked. */
  readonly ticked: (n: number) => string;
  readonly showAll: (n: number) => string;
  readonly under: (size: string) => string;
  readonly between: (from: string, to: string) => string;
  readonly over: (size: string) => string;
  readonly type: string;
  readonly length: string;
  readonly count: string;
  readonly unit: string;
  readonly unitName: Readonly<Record<Exclude<Unit, 'count'>, string>>;
  readonly wrongLength: (unit: string) => string;
  readonly wrongCount: string;
  readonly cannotTell: string;
  readonly howSure: string;
  readonly sureness: Readonly<Record<'sure' | 'think' | 'guess', string>>;
  readonly keep: string;
  readonly back: string;
  readonly else: string;
  readonly mark: {
    readonly skipped: string;
    readonly hidden: (month: string) => string;
    readonly dig: string;
  };
  readonly settled: string;
  readonly onward: string;
  readonly exhausted: string;
}
export interface CoupletWords {
  /** Asked where the leads are about several characters, or about none. */
  readonly which: string;
  /** What the plants of a lead show too, joined. */
  readonly also: (clauses: string) => string;
  readonly usually: (clause: string) => string;
  readonly else: string;
  readonly ways: string;
  readonly way: Readonly<Record<'couplets' | 'free', string>>;
  /** The branch that was walked into no longer holds the weight; the plants that do, joined. */
  readonly wrong: (names: string) => string;
  readonly second: (character: string) => string;
  readonly lookAgain: string;
  readonly carryOn: string;
  /** The couplets end at these plants, joined. */
  readonly out: (names: string) => string;
  readonly notSettled: string;
}
export interface StreamWords {
  /** The picture in one sentence: where the water goes. */
  readonly picture: (names: string) => string;
  /** The same before any answer. */
  readonly source: (plants: number) => string;
  readonly outline: string;
  /** How much of the water, 0 to 1. */
  readonly share: (share: number) => string;
  readonly fork: (n: number) => string;
  readonly taken: string;
  readonly untold: string;
  readonly here: string;
  readonly lookAgain: string;
}
export interface TrailWords {
  readonly heading: string;
  readonly empty: string;
  readonly skipped: string;
  readonly more: (n: number) => string;
  readonly sureness: Readonly<Record<'sure' | 'think' | 'guess', string>>;
}
export interface StandingWords {
  readonly heading: string;
  /** Before any answer: how many plants there are. */
  readonly all: (plants: number) => string;
  /** While no plant stands out. */
  readonly fitting: (plants: number) => string;
  readonly leading: (plants: number, name: string, odds: string) => string;
  readonly outside: (plants: number) => string;
  readonly open: string;
  readonly close: string;
  readonly more: (plants: number) => string;
  readonly fewer: string;
  readonly notHere: string;
  readonly why: string;
  readonly for: string;
  readonly against: string;
  readonly nothing: string;
  /** How many of a plant's features were not looked at. */
  readonly unseen: (features: number) => string;
}
export interface VerdictWords {
  readonly heading: string;
  readonly settled: (name: string) => string;
  readonly leaning: (name: string) => string;
  readonly open: string;
  readonly outside: string;
  /** The plants that share an open verdict, joined. */
  readonly couldBe: (names: string) => string;
  readonly sure: (odds: string, answers: number) => string;
  readonly stillNative: (odds: string) => string;
  readonly stillConcern: (odds: string) => string;
  readonly stop: string;
  readonly openNext: string;
  readonly openEnd: string;
  readonly outsideDo: readonly string[];
  readonly outsideSure: (odds: string) => string;
  readonly inTheWay: string;
  readonly doubt: Readonly<Record<'weight' | 'look-alikes' | 'natives', string>>;
  readonly alike: (name: string) => string;
  readonly tested: string;
  readonly untested: string;
  readonly partly: (told: number, needs: number) => string;
  readonly moreAlike: (plants: number) => string;
  /** How many look-alikes the answers have already told apart. */
  readonly toldFrom: (plants: number) => string;
  readonly look: string;
  readonly answered: (answer: string) => string;
  readonly hidden: string;
  readonly dig: string;
  /** An answer that does not go with the others, and the odds that it was misread. */
  readonly recheck: (odds: string) => string;
  readonly lookAgain: (character: string) => string;
  readonly why: string;
}
export interface GuidanceWords {
  readonly topic: Readonly<Record<Topic, string>>;
  readonly heading: (name: string) => string;
  /** Said first under a leaning verdict. */
  readonly onlyIf: (name: string) => string;
  readonly none: (name: string) => string;
  readonly reviewed: (date: string) => string;
  readonly sources: (count: number) => string;
  readonly newTab: string;
  /** A run of months; both the same for a single one. */
  readonly span: (from: string, to: string) => string;
  readonly year: string;
  /** What the months drawn are for. */
  readonly season: Readonly<Record<Season, string>>;
  /** Text for the drawn band of months. */
  readonly band: (months: string, now: string) => string;
  /** What the advice depends on. */
  readonly rests: (answers: number) => string;
  /** Heading while the verdict is open. */
  readonly notYet: string;
  readonly notYetWhy: (names: string) => string;
  readonly askPerson: string;
  readonly call: (phone: string) => string;
  readonly mail: (address: string) => string;
  readonly handout: string;
  /** The part that makes a hand-out did not come. */
  readonly noHandout: string;
}
export interface NamesWords {
  readonly label: string;
  readonly hint: string;
  readonly count: (plants: number) => string;
  readonly none: string;
  readonly shared: (name: string) => string;
  readonly sharedHelp: string;
  readonly other: string;
  readonly now: (odds: string) => string;
  readonly alike: string;
  readonly tell: string;
  readonly check: string;
}
export interface ComparisonWords {
  /** Asks for plants to be shown beside each other. */
  readonly open: string;
  readonly openWith: (name: string) => string;
  /** That a press on the name of a look-alike compares it. */
  readonly press: string;
  /** The names of the plants, joined. */
  readonly heading: (names: string) => string;
  readonly now: string;
  readonly nowNone: string;
  /** So many characters are enough; `plants` are compared. */
  readonly enough: (characters: number, plants: number) => string;
  readonly notEnough: string;
  /** Beside a character that is one of so many that are enough. */
  readonly one: (characters: number) => string;
  readonly difference: Readonly<Record<'always' | 'usually' | 'partly', string>>;
  /** Of three plants, which differ so: one of them, or pairs joined. */
  readonly pair: (difference: string, names: string) => string;
  readonly from: (one: string, other: string) => string;
  readonly looking: {
    readonly now: string;
    readonly careful: string;
    readonly handle: string;
    readonly measure: string;
    readonly magnify: string;
    readonly season: (month: string) => string;
    readonly dig: string;
    readonly fact: string;
  };
  readonly how: Readonly<Record<'usually' | 'sometimes' | 'rarely', string>>;
  readonly absent: string;
  readonly unknown: string;
  readonly saw: string;
  readonly partly: (features: number) => string;
  readonly alike: (features: number) => string;
  /** The characters, joined. */
  readonly unknownOf: (features: string) => string;
  readonly stack: string;
  readonly unstack: string;
  readonly unsure: string;
  readonly missing: (ids: string, count: number) => string;
  readonly few: string;
  /** A size: no less, no more, not exactly; and sizes that are seldom seen. */
  readonly atLeast: (size: string) => string;
  readonly upTo: (size: string) => string;
  readonly about: (size: string) => string;
  readonly seldom: (sizes: string) => string;
}
export interface PortraitWords {
  /** Opens the portrait where it is folded away. */
  readonly open: string;
  /** What is to be seen: the plant, its height, what stands beside it. */
  readonly picture: (name: string, height: string, beside: string) => string;
  readonly beside: Readonly<Record<'person' | 'hand', string>>;
  /** What the drawing is made of, and what of it is to scale. */
  readonly honest: string;
  /** The drawing shows another plant than the usual one. */
  readonly varied: string;
  readonly another: string;
  readonly usual: string;
  readonly previous: string;
  readonly next: string;
  /** A month, and whether the plant flowers in it; undefined where nobody says. */
  readonly month: (month: string, flowering: boolean | 'seed' | undefined) => string;
  readonly inFlower: string;
  readonly close: string;
  readonly inWords: string;
  /** Characters of which nothing is known, joined. */
  readonly unknown: (characters: string) => string;
  readonly broken: string;
  readonly sometimes: (states: string) => string;
  readonly photos: string;
  /** An id that is not in the key. */
  readonly missing: (id: string) => string;
}
