// A link to the answers, for whoever should see how a name was come by.
import { html, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { Snapshot } from '../../session/index.ts';

/** What is said beside the button, until it loses the focus. */
function tell(button: Element, text: string): void {
  const status = button.nextElementSibling;
  if (status) status.textContent = text;
}

/** `parameter` is that of the page's address. */
export function renderCopy(parameter: string, snapshot: Snapshot, { words, language }: Settings): TemplateResult {
  const copy = async (button: Element) => {
    const { addressWith } = await import('../shared/linked.ts');
    const address = addressWith(parameter, snapshot, language);
    try {
      await navigator.clipboard.writeText(address);
      tell(button, words.key.copied);
    } catch {
      tell(button, `${words.key.notCopied} ${address}`);
    }
  };
  return html`<div class="copy">
    <button
      class="plain"
      type="button"
      @click=${({ currentTarget }: Event) => copy(currentTarget as Element)}
      @blur=${({ currentTarget }: Event) => tell(currentTarget as Element, '')}
    >
      ${words.key.copyLink}
    </button>
    <p class="quiet" role="status"></p>
  </div>`;
}
