// A sentence in which trade terms can be asked what they mean.
import { html, type TemplateResult } from 'lit';

/**
 * The sentence as it is until the terms are here, and for good without a glossary; then each term in it is a button.
 * Not for what stands inside a label, a summary or a button. `earlier` is what the same block has said already.
 */
export const terms = (sentence: string, earlier = ''): TemplateResult =>
  html`<leadwort-terms .sentence=${sentence} .earlier=${earlier}>${sentence}</leadwort-terms>`;
