// Answers that are not kept, or not as they were.
import { html, type TemplateResult } from 'lit';
import type { Words } from '../../words/index.ts';

export type Trouble = keyof Words['keep'];

export const renderTrouble = (trouble: Trouble, words: Words): TemplateResult => html`<p>${words.keep[trouble]}</p>`;
