// Prints a hand-out from a frame of its own: the page around it stays off the paper, and its policy on styles is kept.
import { portraitOf } from '../../drawing/portrait/index.ts';
import type { Key, Month, Taxon } from '../../key/index.ts';
import { asNode, type HandoutOptions, handoutOf, handoutPage, handoutStyle } from '../../report/handout/index.ts';

export interface Printing extends HandoutOptions {
  readonly key: Key;
  readonly taxon: Taxon;
  /** In which the plant is drawn. */
  readonly month: Month;
}

/** Puts a hand-out into `within`, opens the browser's own printing, and takes it away when that is over. */
export async function printHandout(within: ShadowRoot, { key, taxon, month, ...options }: Printing): Promise<void> {
  for (const old of within.querySelectorAll('iframe')) old.remove();
  const frame = document.createElement('iframe');
  frame.className = 'paper';
  frame.setAttribute('aria-hidden', 'true');
  frame.tabIndex = -1;
  // Some browsers put an empty document of their own into a frame first, and what was written before is lost.
  const loaded = new Promise((ready) => frame.addEventListener('load', ready, { once: true }));
  within.append(frame);
  await loaded;
  const [page, view] = [frame.contentDocument, frame.contentWindow as (Window & typeof globalThis) | null];
  if (!page || !view) return;
  const handout = handoutOf(key, taxon, options);
  const sheet = new view.CSSStyleSheet();
  sheet.replaceSync(handoutStyle);
  page.adoptedStyleSheets = [sheet];
  page.title = handout.name.common;
  page.documentElement.lang = handout.language;
  page.body.replaceChildren(asNode<Node>(handoutPage(handout, portraitOf(key, taxon, { month })), page));
  view.addEventListener('afterprint', () => frame.remove(), { once: true });
  view.print();
}
