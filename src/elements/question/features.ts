// Everything else that may be looked at, by part of the plant.
import { html, nothing, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import { type Feature, features, type Snapshot } from '../../session/index.ts';
import { said } from '../shared/said.ts';

interface Doing {
  readonly say: (sentence: string) => string;
  readonly ask: (character: string) => void;
}

/** The list behind "Look at something else". */
export function renderFeatures(snapshot: Snapshot, settings: Settings, doing: Doing): TemplateResult {
  const { words } = settings;
  return html`<details class="else" part="else">
    <summary>${words.question.else}</summary>
    ${features(snapshot).map(
      (group) => html`<details class="group">
        <summary>${words.common.part[group.part]} <span class="quiet">${group.features.length}</span></summary>
        <ul>
          ${group.features.map((feature) => renderFeature(feature, snapshot, settings, doing))}
        </ul>
      </details>`,
    )}
  </details>`;
}

function renderFeature(feature: Feature, snapshot: Snapshot, settings: Settings, { say, ask }: Doing): TemplateResult {
  const { character } = feature;
  const note = noteOf(feature, snapshot, settings, say);
  const choose = (event: Event) => {
    (event.currentTarget as HTMLElement).closest('.else')?.removeAttribute('open');
    ask(character.id);
  };
  return html`<li>
    <button class="feature" type="button" @click=${choose}>
      <span class="title">${say(character.label)}</span>
      ${note ? html`<span class="detail">${note}</span>` : nothing}
    </button>
  </li>`;
}

function noteOf(
  { character, mark, answer }: Feature,
  { month }: Snapshot,
  { words, language, units }: Settings,
  say: Doing['say'],
): string {
  if (answer && mark === 'answered') return said(character, answer, { words, language, units, say });
  if (mark === 'skipped') return words.question.mark.skipped;
  if (mark === 'hidden') return words.question.mark.hidden(words.common.months[month]);
  return mark === 'dig' ? words.question.mark.dig : '';
}
