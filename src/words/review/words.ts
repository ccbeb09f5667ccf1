// The sentences of a review. They come with the part that shows them.

export type FitWord = 'usually' | 'sometimes' | 'rarely' | 'no' | 'absent' | 'unknown';
export type ReviewStatus = 'confirmed' | 'corrected' | 'photo-wanted';

export interface ReviewWords {
  readonly language: string;
  readonly heading: string;
  readonly intro: string;
  readonly noSession: string;
  readonly open: string;
  readonly paste: string;
  readonly pasteOpen: string;
  readonly bad: (name: string) => string;
  readonly pasted: string;
  readonly notFetched: string;
  readonly list: string;
  readonly nth: (n: number, all: number) => string;
  readonly previous: string;
  readonly next: string;
  readonly unreviewed: string;
  readonly photos: string;
  readonly noPhotos: string;
  readonly noPicture: string;
  readonly place: string;
  readonly noPlace: string;
  readonly within: (metres: number) => string;
  readonly copy: string;
  readonly copied: string;
  readonly notCopied: string;
  readonly date: string;
  readonly answers: string;
  /** Shows the words as the person saw them, in the language named. */
  readonly theirs: (language: string) => string;
  /** Of the person who reported. */
  readonly sureness: Readonly<Record<'sure' | 'think' | 'guess', string>>;
  readonly seconds: (n: number) => string;
  readonly fit: Readonly<Record<FitWord, string>>;
  readonly notInKey: string;
  readonly apart: string;
  readonly answered: (words: string) => string;
  readonly notAsked: string;
  /** Said of what an answer names. */
  readonly saw: string;
  /** A photograph that shows a feature: one that was sent, one to ask for, or none of the list. */
  readonly photoSent: (what: string) => string;
  readonly photoCould: (what: string) => string;
  readonly photoNone: string;
  readonly standing: string;
  readonly plant: string;
  readonly reported: string;
  readonly today: string;
  readonly keyDiffers: (then: string, today: string) => string;
  readonly outside: string;
  readonly say: string;
  readonly status: Readonly<Record<ReviewStatus, string>>;
  readonly confirm: (plant: string) => string;
  readonly correct: string;
  readonly want: string;
  readonly search: string;
  readonly searchNone: string;
  readonly chosen: string;
  readonly wanted: string;
  readonly by: string;
  readonly remarks: string;
  readonly lacking: Readonly<Record<'status' | 'taxon' | 'wanted' | 'by', string>>;
  readonly write: string;
  readonly written: string;
  readonly refused: string;
  readonly save: string;
  readonly mail: string;
  readonly noMail: string;
  readonly table: string;
  readonly reply: (plant: string) => string;
  readonly replyText: (what: string, by: string, remarks: string, wanted: readonly string[]) => string;
}
