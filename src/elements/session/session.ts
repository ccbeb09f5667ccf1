import { html, type TemplateResult } from 'lit';
import { LeadwortHolder } from '../shared/holder.ts';
import { bring, LATE } from '../shared/late.ts';
import { shared } from '../shared/styles.ts';
import { sessionStyles } from './session.styles.ts';

/**
 * @summary Holds a key and one person's answers for the parts inside it, wherever they stand.
 *
 * @tag leadwort-session
 * @slot - Any content; the parts in it share the key and the answers.
 * @csspart status - What is said while the key loads, or why it did not.
 * @fires {CustomEvent} leadwort-started - The first thing was said of a new plant: `{key, version}`.
 * @fires {CustomEvent} leadwort-answered - The session took an answer, or one passed over: `{character, number}`.
 * @fires {CustomEvent} leadwort-verdict - The kind of verdict or the leading taxon changed: `{kind, taxa}`.
 * @fires {CustomEvent} leadwort-keep - The answers are not kept, or not as they were: `{trouble, reason}`.
 * @attr {string} lang - Language of the words; else the nearest `lang` on the page.
 */
export class LeadwortSession extends LeadwortHolder {
  static override styles = [shared, sessionStyles];

  protected override updated(): void {
    if (this.provider.state.phase !== 'ready') return;
    // Without a connection they stay away, and are tried again with the next answer.
    // Terms stand inside other parts.
    for (const part of LATE)
      if (part === 'term' || this.querySelector(`leadwort-${part}`)) bring(part).catch(() => undefined);
  }

  override render(): TemplateResult {
    return html`${this.renderStatus()}<slot></slot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-session': LeadwortSession;
  }
}
