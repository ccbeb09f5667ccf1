// Reports that were saved or set aside, and the next one.
import { html, nothing, type TemplateResult } from 'lit';
import type { ReportWords } from '../../words/report/index.ts';

export interface FilesDesk {
  /** What is wrong with the file that was chosen last; empty for nothing. */
  readonly trouble: string;
  readonly open: (file: File) => void;
  /** Goes back to the report that was set aside; undefined where there is none. */
  readonly takeUp: (() => void) | undefined;
  readonly startAnew: () => void;
}

export function renderFiles({ out }: ReportWords, { trouble, open, takeUp, startAnew }: FilesDesk): TemplateResult {
  const chosen = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const [file] = input.files ?? [];
    input.value = '';
    if (file) open(file);
  };
  return html`<div class="files">
    <label class="picker outline target">
      <input class="unseen" type="file" accept="application/json,.json" @change=${chosen} />
      <span>${out.open}</span>
    </label>
    <p class="quiet">${out.openHelp}</p>
    <div role="alert">${trouble ? html`<p class="wrong">${out.badFile}</p><pre>${trouble}</pre>` : nothing}</div>
    ${takeUp ? html`<button class="plain" type="button" @click=${takeUp}>${out.before}</button>` : nothing}
    <button class="plain" type="button" @click=${startAnew}>${out.fresh}</button>
  </div>`;
}
