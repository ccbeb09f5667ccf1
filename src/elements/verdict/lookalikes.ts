// What the plant is easily taken for: whether each was put to the test, and what would tell it apart.
import { html, nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { type Check, isOpen, type LookalikeOf, lookalikesOf, type Snapshot } from '../../session/index.ts';
import { compareButton } from '../shared/compare.ts';
import { plantName, taxonOf } from '../shared/plant.ts';
import { type Saying, said } from '../shared/said.ts';
import { statusOf } from '../shared/status.ts';
import { terms } from '../shared/terms.ts';

/** How many look-alikes still to be checked are shown at once. */
const FEW = 3;

export interface LookalikesView {
  readonly saying: Saying;
  /** Level of the heading. */
  readonly level: number;
  /** Asks for a character, by id. */
  readonly ask: (character: string) => void;
}

/** Those still to be checked, the first of them open; then, folded away, those already told apart. */
export function renderLookalikes(
  snapshot: Snapshot,
  taxon: string,
  view: LookalikesView,
): TemplateResult | typeof nothing {
  const { words, language } = view.saying;
  const { key } = snapshot.prepared;
  const alike = lookalikesOf(snapshot, taxon);
  if (alike.length === 0) return nothing;
  const untested = alike.filter((one) => !one.tested);
  const tested = alike.filter((one) => one.tested);
  const list = (some: readonly LookalikeOf[], opened: boolean) =>
    html`<ul class="alike">${repeat(
      some,
      (one) => one.taxon.id,
      (one, i) => html`<li>${renderOne(snapshot, taxon, one, opened && i === 0, view)}</li>`,
    )}</ul>`;
  const folded = (summary: string, some: readonly LookalikeOf[]) =>
    some.length > 0 ? html`<details class="more"><summary>${summary}</summary>${list(some, false)}</details>` : nothing;
  const name = plantName(key, taxonOf(snapshot.prepared, taxon), language).text;
  const rest = untested.slice(FEW);
  return html`<div role="heading" class="sub" aria-level=${view.level}>${words.verdict.alike(name)}</div>
    ${untested.length > 0 ? list(untested.slice(0, FEW), true) : nothing}
    ${folded(words.verdict.moreAlike(rest.length), rest)} ${folded(words.verdict.toldFrom(tested.length), tested)}`;
}

function renderOne(
  { prepared }: Snapshot,
  taxon: string,
  one: LookalikeOf,
  opened: boolean,
  view: LookalikesView,
): TemplateResult {
  const { words, language, say } = view.saying;
  const { tested, untested, partly } = words.verdict;
  const name = plantName(prepared.key, one.taxon, language);
  const earlier = (i: number) =>
    one.checks
      .slice(0, i)
      .map((check) => say(check.words))
      .join(' ');
  const test = one.tested ? tested : one.told.length > 0 ? partly(one.told.length, one.needs) : untested;
  return html`<details ?open=${opened}>
    <summary>
      <span class="line">
        <span class="who"><b lang=${name.lang}>${name.text}</b> ${statusOf(one.taxon.status, words)}</span>
        <span class="test ${one.tested ? 'tested' : 'untested'}">${one.tested ? tick : ring}${test}</span>
      </span>
    </summary>
    <ul class="checks">
      ${one.checks.map((check, i) => html`<li><p>${terms(say(check.words), earlier(i))}</p>${renderCheck(check, view)}</li>`)}
    </ul>
    ${compareButton([taxon, one.taxon.id], html`${words.comparison.open}<span class="unseen">: ${name.text}</span>`)}
  </details>`;
}

/** Beside the author's words: what was answered, or a way to look, or why not to. */
function renderCheck(check: Check, { saying, ask }: LookalikesView): TemplateResult {
  const { verdict } = saying.words;
  const { character, mark, answer } = check.feature;
  if (mark === 'answered' && answer)
    return html`<p class="quiet">${verdict.answered(said(character, answer, saying))}</p>`;
  if (!isOpen(check)) return html`<p class="quiet">${mark === 'dig' ? verdict.dig : verdict.hidden}</p>`;
  return html`<button class="plain" type="button" @click=${() => ask(character.id)}>
    ${verdict.look}<span class="unseen">: ${saying.say(character.label)}</span>
  </button>`;
}

const tick = svg`<svg viewBox="0 0 24 24" aria-hidden="true"><path d="m4 13 5 5L20 6" /></svg>`;
const ring = svg`<svg viewBox="0 0 24 24" aria-hidden="true"><circle cx="12" cy="12" r="8" stroke-dasharray="5 3.4" /></svg>`;
