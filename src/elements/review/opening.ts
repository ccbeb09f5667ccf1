// How reports come in, and which of them is looked at.
import { html, type TemplateResult } from 'lit';
import type { Find } from '../../report/find/index.ts';
import { claimOf } from '../../report/review/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';

/** What could not be opened: where it came from, and what is wrong there; nothing more is known of what did not come. */
export interface Fault {
  readonly name: string;
  readonly wrong?: string;
}

export interface Opening {
  readonly text: ReviewWords;
  readonly faults: readonly Fault[];
  readonly open: (files: readonly File[]) => void;
  readonly paste: () => void;
}

export function renderOpening({ text, faults, open, paste }: Opening): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const files = [...(input.files ?? [])];
    // The same file may be chosen again after it was mended.
    input.value = '';
    open(files);
  };
  return html`<p>${text.intro}</p>
    <label class="picker outline target">
      <input class="unseen" type="file" multiple accept="application/json,.json" @change=${chosen} /><span>${text.open}</span>
    </label>
    <details>
      <summary>${text.paste}</summary>
      <textarea id="pasted" rows="4" aria-label=${text.paste}></textarea>
      <button class="outline" type="button" @click=${paste}>${text.pasteOpen}</button>
    </details>
    <div role="alert">
      ${faults.map(({ name, wrong }) =>
        wrong === undefined
          ? html`<p class="wrong">${text.notFetched}</p><pre>${name}</pre>`
          : html`<p class="wrong">${text.bad(name)}</p><pre>${wrong}</pre>`,
      )}
    </div>`;
}

export interface List {
  readonly text: ReviewWords;
  readonly finds: readonly Find[];
  readonly at: number;
  readonly nameOf: (find: Find) => (taxon: string) => string;
  readonly turnTo: (at: number) => void;
}

export function renderList({ text, finds, at, nameOf, turnTo }: List): TemplateResult {
  const step = (by: number) => turnTo((at + by + finds.length) % finds.length);
  return html`<nav aria-label=${text.list}>
    <ol class="list">
      ${finds.map((find, i) => {
        const plant = nameOf(find)(claimOf(find) ?? find.verdict.taxa[0] ?? 'outside');
        const status = find.review ? text.status[find.review.status] : text.unreviewed;
        return html`<li><button class="outline" type="button" aria-current=${i === at ? 'true' : 'false'} @click=${() => turnTo(i)}>
          ${i + 1}. ${plant}: ${status}
        </button></li>`;
      })}
    </ol>
    <div class="row">
      <button class="plain" type="button" @click=${() => step(-1)}>${text.previous}</button>
      <span role="status">${text.nth(at + 1, finds.length)}</span>
      <button class="plain" type="button" @click=${() => step(1)}>${text.next}</button>
    </div>
  </nav>`;
}
