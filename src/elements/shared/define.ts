// Registration that can be repeated: one version of the elements stands on a page, the first that came.
import { VERSION } from '../../version.ts';

/** Where all copies on a page see which version stands there. */
const STANDS = Symbol.for('leadwort');
let warned = false;

/**
 * Registers `element` under `tag`. Copies of one version share the page in silence, whatever each brings; parts of
 * another version would not understand each other, so a copy of it registers nothing, and says so once. Does nothing
 * where there is no DOM.
 */
export function define(tag: string, element: CustomElementConstructor): void {
  if (typeof customElements === 'undefined') return;
  const page = customElements as CustomElementRegistry & { [STANDS]?: string };
  page[STANDS] ??= VERSION;
  if (page[STANDS] === VERSION) {
    if (!customElements.get(tag)) customElements.define(tag, element);
    return;
  }
  if (!warned)
    console.warn(
      `Leadwort ${page[STANDS]} is on this page; ${VERSION} came later and stays out. Name only one of them.`,
    );
  warned = true;
}
