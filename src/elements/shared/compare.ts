// A button that asks for plants to be shown side by side; whoever holds a comparison hears it.
import { html, type TemplateResult } from 'lit';
import { fire } from './events.ts';

export function compareButton(
  taxa: readonly string[],
  text: unknown,
  kind: 'plain' | 'outline' = 'plain',
): TemplateResult {
  return html`<button
    class="${kind} compare"
    type="button"
    @click=${({ currentTarget }: Event) => fire(currentTarget as HTMLElement, 'leadwort-comparison', { taxa })}
  >${text}</button>`;
}
