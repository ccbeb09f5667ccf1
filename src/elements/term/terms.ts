import { html, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { termsIn } from '../../key/index.ts';
import { LeadwortPart } from '../shared/part.ts';
import './term.ts';
import { termsStyles } from './term.styles.ts';

/**
 * A sentence whose trade terms can be asked what they mean, each where it stands first. Without a glossary it is the
 * sentence that stands inside.
 *
 * @tag leadwort-terms
 * @slot - The sentence, shown as it is until the glossary is here.
 */
export class LeadwortTerms extends LeadwortPart {
  static override styles = termsStyles;

  @property({ attribute: false }) sentence = '';
  /** What the same block has said already: a term in it is not marked again. */
  @property({ attribute: false }) earlier = '';

  override render(): TemplateResult {
    const { album, settings, sentence, earlier } = this;
    if (!album || !settings) return html`<slot></slot>`;
    const pieces = termsIn(sentence, album.glossary, settings.language, earlier);
    if (pieces.every(({ term }) => term === undefined)) return html`<slot></slot>`;
    return html`${pieces.map(({ text, term }) => (term ? html`<leadwort-term word=${text}>${text}</leadwort-term>` : text))}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-terms': LeadwortTerms;
  }
}
