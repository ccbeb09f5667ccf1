import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { Key } from '../../key/index.ts';
import {
  type Alike,
  classesOf,
  coupletsOf,
  labelOf,
  type Name,
  type Sheet,
  type SheetLead,
  STYLES,
  type Style,
  sentence,
  sheetIn,
  sheetWords,
} from '../../report/sheet/index.ts';
import { LeadwortPart } from '../shared/part.ts';
import { latin } from '../shared/plant.ts';
import { shared } from '../shared/styles.ts';
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
    const { settings, snapshot, style } = this;
    const key = snapshot?.prepared.key;
    // An answer changes nothing of what is printed.
    if (key === this.#key && !changed.has('settings') && !changed.has('layout')) return;
    this.#key = key;
    this.#sheet =
      key && settings && key.couplets.length > 0
        ? sheetIn(key, {
            style,
            language: settings.language,
            words: sheetWords(settings.words),
            units: settings.units,
          })
        : undefined;
  }

  private get style_(): never {
    throw new Error();
  }

  override render() {
    return nothing;
  }
}
