// What may follow a verdict: the people who help, and the report. Both stand further down; this leads there.
import { html, nothing, type TemplateResult } from 'lit';
import type { Words } from '../../words/index.ts';

/** Takes a person to a part of the page; a folded one opens. */
function goTo(page: ParentNode, selector: string): void {
  const at = page.querySelector<HTMLElement>(selector);
  const folded = at?.closest('details');
  if (folded) folded.open = true;
  at?.scrollIntoView({ block: 'start' });
  at?.focus({ preventScroll: true });
}

/** `page` is what both are looked for in; `helps`: the page says who helps near a person. */
export function renderNext(page: ParentNode, { report }: Words, helps: boolean): TemplateResult {
  const to = (label: string, selector: string) =>
    html`<button class="outline" type="button" @click=${() => goTo(page, selector)}>${label}</button>`;
  return html`<div class="next" role="group" aria-label=${report.next}>
    ${helps ? to(report.helps, '.help') : nothing} ${to(report.open, '.report > summary')}
  </div>`;
}
