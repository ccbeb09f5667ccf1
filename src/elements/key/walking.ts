// The two ways through a key.
import { html, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { Snapshot, Way } from '../../session/index.ts';

const WAYS: readonly Way[] = ['couplets', 'free'];

/** The switch between step by step and choosing what to look at. */
export function renderWays(snapshot: Snapshot, { words }: Settings, choose: (way: Way) => void): TemplateResult {
  return html`<fieldset class="ways" part="ways">
    <legend class="unseen">${words.couplet.ways}</legend>
    ${WAYS.map(
      (way) => html`<label class="radio">
        <input type="radio" name="way" value=${way} .checked=${snapshot.way === way} @change=${() => choose(way)} />
        ${words.couplet.way[way]}
      </label>`,
    )}
  </fieldset>`;
}
