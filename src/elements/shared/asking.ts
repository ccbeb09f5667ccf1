// What a question and a couplet have in common: the heading, how to look, what is unsafe about it, and the bar of buttons.
import { html, nothing, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { Character } from '../../key/index.ts';
import type { QuestionReason } from '../../session/index.ts';
import type { QuestionWords } from '../../words/index.ts';
import { terms } from './terms.ts';

export type Sureness = keyof QuestionWords['sureness'];
const SURENESS: readonly Sureness[] = ['sure', 'think', 'guess'];
type Say = (sentence: string) => string;

/** The heading that takes the focus, above it a small line when there is one. */
export function headingOf(
  text: string,
  { headingLevel }: Settings,
  step: string | typeof nothing = nothing,
): TemplateResult {
  return html`<div role="heading" aria-level=${headingLevel} tabindex="-1" id="heading">
    ${step === nothing ? nothing : html`<span class="step" part="step">${step}<span class="unseen">: </span></span>`}
    <span part="heading">${text}</span>
  </div>`;
}

/** "Question 4 · Leaf", or "Question 2 again · Leaf". */
export function stepOf(
  { number, reason }: { readonly number: number; readonly reason: QuestionReason },
  character: Character | undefined,
  { words }: Settings,
): string {
  const numbered = (reason === 'changing' ? words.question.again : words.question.number)(number);
  return character ? `${numbered} · ${words.common.part[character.part]}` : numbered;
}

/** How to look, and what botanists call it; nothing where the key says neither. */
export function helpOf(character: Character, { words: { question } }: Settings, say: Say) {
  const trade = character.trade === character.question ? '' : character.trade;
  if (!character.help && !trade) return nothing;
  return html`<details class="help">
    <summary>${question.help}</summary>
    ${character.help ? html`<p>${terms(say(character.help))}</p>` : nothing}
    ${trade ? html`<p class="quiet">${terms(question.trade(say(trade)))}</p>` : nothing}
  </details>`;
}

/** What is unsafe about looking, said before it is answered. */
export function cautionOf(character: Character, { words: { question } }: Settings, say: Say) {
  const cautions = [
    ...(character.effort === 'dig' ? [question.dig] : []),
    ...(character.caution ? [say(character.caution)] : []),
  ];
  if (cautions.length === 0) return nothing;
  return html`<div class="caution" part="caution">
    <b>${question.careful}</b>
    ${cautions.map((caution) => html`<p>${caution}</p>`)}
  </div>`;
}

export interface Bar {
  /** Something was said that can be sent. */
  readonly said: boolean;
  /** What was ticked so far, in words. */
  readonly tally: string;
  readonly answer: (sureness: Sureness) => void;
  readonly skip: () => void;
  /** Further ways out, each with its words. */
  readonly away: readonly { readonly words: string; readonly go: () => void }[];
}

/** How sure a person is, "can't tell", and the ways out. */
export function barOf({ said, tally, answer, skip, away }: Bar, { words: { question } }: Settings): TemplateResult {
  return html`<div class="bar" part="bar">
    <p>
      <span class="tally" role="status" id="tally">${tally}</span>
      ${said ? html`<b id="how-sure">${question.howSure}</b>` : nothing}
    </p>
    ${
      said
        ? html`<div class="sureness" role="group" aria-labelledby="how-sure">
          ${SURENESS.map(
            (
              one,
            ) => html`<button class=${one === 'sure' ? 'solid' : 'outline'} type="button" @click=${() => answer(one)}>
              ${question.sureness[one]}
            </button>`,
          )}
        </div>`
        : nothing
    }
    <div class="others">
      <button class=${said ? 'plain skip' : 'outline skip'} type="button" @click=${skip}>${question.cannotTell}</button>
      ${away.map(({ words, go }) => html`<button class="plain" type="button" @click=${go}>${words}</button>`)}
    </div>
  </div>`;
}
