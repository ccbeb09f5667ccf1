// What the room and the crew's page have in common: their sentences, and files handed out.
import type { PropertyValues } from 'lit';
import { state } from 'lit/decorators.js';
import { type PracticeWords, practiceWords } from '../../words/practice/index.ts';
import { LeadwortPart } from '../shared/part.ts';

/** A part that fetches the sentences of the room in the page's language; undefined until they are there. */
export abstract class WordedPart extends LeadwortPart {
  @state() protected words: PracticeWords | undefined;
  #language: string | undefined;

  protected override willUpdate(_changed: PropertyValues): void {
    const language = this.settings?.language;
    if (language === this.#language || language === undefined) return;
    this.#language = language;
    practiceWords(language).then(
      (words) => {
        if (language === this.#language) this.words = words;
      },
      () => {
        this.#language = undefined;
      },
    );
  }
}

/** Hands a file to the browser's downloads. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
