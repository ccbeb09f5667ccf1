// A quiet line behind which a plant is drawn, once somebody wants it.
import { html, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { bring } from './late.ts';

/** `text` says what opens; `taxon` is the id of the plant. */
export function drawnLine(taxon: string, text: unknown): TemplateResult {
  const open = ({ currentTarget }: Event): void => {
    const line = currentTarget as HTMLDetailsElement;
    if (!line.open) return;
    // Without a connection it stays empty, and is asked for again when it is opened again.
    bring('portrait').catch(() => undefined);
    if (line.querySelector('leadwort-portrait')) return;
    const portrait = document.createElement('leadwort-portrait');
    portrait.setAttribute('taxon', taxon);
    portrait.setAttribute('heading', 'off');
    line.append(portrait);
  };
  // Another plant is another line: what was opened for one is not left open for the next.
  return html`${keyed(taxon, html`<details class="drawn" @toggle=${open}><summary>${text}</summary></details>`)}`;
}
