// What speaks for and against a plant, as words: the character and what was said of it.
import { css, html, nothing, type TemplateResult } from 'lit';
import type { Character } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { type Saying, said } from './said.ts';
import { terms } from './terms.ts';

type Reasons = Pick<ReturnType<typeof standingOf>, 'for' | 'against' | 'unseen'>;

/** One plant's line of the standing. */
export function standingOf(snapshot: Snapshot, taxon: string): Snapshot['identification']['standing'][number] {
  const found = snapshot.identification.standing.find((one) => one.taxon === taxon);
  if (found === undefined) throw new Error(`no standing of ${taxon}`);
  return found;
}

export function reasons(snapshot: Snapshot, of: Reasons, saying: Saying): TemplateResult {
  const { standing } = saying.words;
  const silent = of.for.length === 0 && of.against.length === 0;
  return html`
    ${silent ? html`<p>${standing.nothing}</p>` : nothing}
    ${side(snapshot, standing.for, 'for', of.for, saying)} ${side(snapshot, standing.against, 'against', of.against, saying)}
    <p class="quiet">${standing.unseen(of.unseen.length)}</p>`;
}

function side(snapshot: Snapshot, label: string, kind: 'for' | 'against', ids: readonly string[], saying: Saying) {
  if (ids.length === 0) return nothing;
  return html`<p class="side">${label}</p>
    <ul class="reasons ${kind}">
      ${ids.map((id) => html`<li>${answerLine(snapshot, id, saying)}</li>`)}
    </ul>`;
}

/** "Leaf stalk: none, the leaf wraps the stem." */
export function answerLine(snapshot: Snapshot, id: string, saying: Saying): TemplateResult {
  const { prepared, trail } = snapshot;
  const character = prepared.key.characters[prepared.characterIndex.get(id) ?? -1] as Character;
  const answer = trail.find((step) => step.character === id);
  const label = saying.say(character.label);
  return html`${terms(label)}: <b>${answer ? terms(said(character, answer, saying), label) : nothing}</b>`;
}

export const reasonsStyles = css`
  .side { font-weight: 700; margin-block-start: 0.6em; }
  .reasons { margin-block: 0.2em; }
  .reasons li { padding-inline-start: 1.5em; position: relative; }
  .reasons li + li { margin-block-start: 0.25em; }
  .reasons li::before { position: absolute; inset-inline-start: 0.15em; font-weight: 700; content: '+' / ''; color: var(--reed); }
  .reasons.against li::before { content: '\\2212' / ''; color: var(--rust); }
  .reasons b { font-weight: 600; }
`;
