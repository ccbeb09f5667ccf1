// A size typed instead of ticked.
import { html, nothing, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { Character, Unit } from '../../key/index.ts';
import type { Question } from '../../session/index.ts';
import { unitsFor } from '../shared/sizes.ts';
import { checked, type Draft, isLength, type } from './draft.ts';

/** The field for a number with its unit; `change` is handed each new draft. */
export function renderTyped(
  { answer }: Question,
  character: Character,
  draft: Draft,
  { words: { question: words }, units: system }: Settings,
  change: (draft: Draft) => void,
): TemplateResult {
  const own = character.unit ?? 'count';
  const middle = character.states[Math.floor((character.states.length - 1) / 2)]?.to ?? 1;
  const suits = isLength(own) ? unitsFor(middle, own, system) : undefined;
  const unit: Unit = draft.unit ?? suits?.best ?? 'count';
  const options = suits ? [...new Set([...suits.units, ...(isLength(unit) ? [unit] : [])])] : [];
  const typed = (event: Event) => change(type(draft, (event.target as HTMLInputElement).value, unit));
  const chosen = (event: Event) => change(type(draft, draft.typed, (event.target as HTMLSelectElement).value as Unit));
  const wrong = isLength(unit) ? words.wrongLength(words.unitName[unit]) : words.wrongCount;
  return html`<details class="typed" ?open=${answer !== undefined && 'value' in answer}>
    <summary>${words.type}</summary>
    <div class="fields">
      <label for="size">${suits ? words.length : words.count}</label>
      <input
        id="size"
        inputmode="decimal"
        autocomplete="off"
        .value=${draft.typed}
        aria-invalid=${draft.wrong ? 'true' : 'false'}
        aria-describedby="wrong"
        @input=${typed}
        @change=${() => change(checked(draft))}
      />
      ${
        suits
          ? html`<select aria-label=${words.unit} @change=${chosen}>
            ${options.map((one) => html`<option value=${one} ?selected=${one === unit}>${words.unitName[one]}</option>`)}
          </select>`
          : nothing
      }
    </div>
    <p class="wrong" id="wrong" role="alert">${draft.wrong ? wrong : nothing}</p>
  </details>`;
}
