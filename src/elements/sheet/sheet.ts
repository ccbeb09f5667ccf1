import { html, nothing, type PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import type { Key } from '../../key/index.ts';
import { type Sheet, STYLES, type Style, sheetIn, sheetWords } from '../../report/sheet/index.ts';
import { LeadwortPart } from '../shared/part.ts';
import { shared } from '../shared/styles.ts';
import { printed } from './printed.ts';
import { styles } from './sheet.styles.ts';

const isStyle = (word: string): word is Style => (STYLES as readonly string[]).includes(word);

/**
 * The branching key as floras print it, with cautions before it and look-alikes and all names behind it: to be read on
 * the screen and printed. Draws nothing for a key without couplets.
 *
 * @tag leadwort-sheet
 * @csspart choice - The choice of a layout, and the button that prints; not on paper.
 * @csspart sheet - What is printed.
 */
export class LeadwortSheet extends LeadwortPart {
  static override styles = [shared, styles];

  #sheet: Sheet | undefined;
  /** The key that #sheet was made of. */
  #key: Key | undefined;

  /** `bracketed`: couplets by number; `indented`: below each lead what it leads to. Bracketed for anything else. */
  @property() layout = 'bracketed';

  protected override willUpdate(changed: PropertyValues): void {
    const { settings, snapshot, layout } = this;
    const key = snapshot?.prepared.key;
    // An answer changes nothing of what is printed.
    if (key === this.#key && !changed.has('settings') && !changed.has('layout')) return;
    this.#key = key;
    this.#sheet = undefined;
    if (key === undefined || settings === undefined || key.couplets.length === 0) return;
    const { language, units } = settings;
    const style = isStyle(layout) ? layout : 'bracketed';
    this.#sheet = sheetIn(key, { style, language, units, words: sheetWords(settings.words) });
  }

  override render() {
    const sheet = this.#sheet;
    if (sheet === undefined) return nothing;
    const { words, style } = sheet;
    return html`<div part="choice">
        <fieldset>
          <legend>${words.layout}</legend>
          ${STYLES.map(
            (one) => html`<label class="target">
              <input
                type="radio"
                name="layout"
                value=${one}
                .checked=${one === style}
                @change=${() => {
                  this.layout = one;
                }}
              />
              <span>${words.layouts[one]}</span>
            </label>`,
          )}
        </fieldset>
        <button class="solid" type="button" @click=${() => window.print()}>${words.print}</button>
      </div>
      ${printed(sheet, this.settings?.headingLevel ?? 2)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-sheet': LeadwortSheet;
  }
}
