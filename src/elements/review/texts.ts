// The sentences of the desk: the reader's, and those of whoever reported, who is answered in their own language.
import { type ReportWords, reportWords } from '../../words/report/index.ts';
import { type ReviewWords, reviewWords } from '../../words/review/index.ts';

export interface Texts {
  readonly review: ReviewWords;
  readonly report: ReportWords;
}

/** By BCP 47 tag; what did not come is asked for again with the next look. */
export class TextShelf {
  readonly #there = new Map<string, Texts | undefined>();
  readonly #came: () => void;

  constructor(came: () => void) {
    this.#came = came;
  }

  /** Undefined until they are there. */
  in(language: string): Texts | undefined {
    if (!this.#there.has(language)) {
      this.#there.set(language, undefined);
      Promise.all([reviewWords(language), reportWords(language)]).then(
        ([review, report]) => {
          this.#there.set(language, { review, report });
          this.#came();
        },
        () => this.#there.delete(language),
      );
    }
    return this.#there.get(language);
  }
}
