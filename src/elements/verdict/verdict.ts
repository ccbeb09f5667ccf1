import { html, nothing, svg, type TemplateResult } from 'lit';
import { MOST_COMPARED, type VerdictKind } from '../../key/index.ts';
import type { Snapshot } from '../../session/index.ts';
import { compareButton } from '../shared/compare.ts';
import { drawnLine } from '../shared/drawn.ts';
import { LeadwortPart } from '../shared/part.ts';
import { latin, plantName, taxonOf } from '../shared/plant.ts';
import { answerLine, reasons, reasonsStyles, standingOf } from '../shared/reasons.ts';
import { shownKind } from '../shared/shown.ts';
import { statusOf, statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { renderLookalikes } from './lookalikes.ts';
import { styles } from './verdict.styles.ts';

/** From this chance of having been misread on, an answer is worth a second look (ours). */
const WORTH_A_LOOK = 0.5;
/** From here on a verdict says what else the plant may be, native or invasive (ours). */
const STILL_SAID = 0.01;

/**
 * What may be said of the plant, how sure it is, what would settle it, and that it is no confirmation.
 *
 * Empty until there is something to say: a settled or leaning verdict at once, an open or outside one from the third
 * answer on.
 *
 * @tag leadwort-verdict
 * @fires leadwort-comparison - Plants were asked to be shown side by side. Detail: `{ taxa }`.
 * @csspart verdict - The whole.
 * @csspart heading - What may be said, in one sentence; said aloud when it changes.
 * @csspart stop - The key's cautions.
 */
export class LeadwortVerdict extends LeadwortPart {
  static override styles = [shared, statusStyles, reasonsStyles, styles];

  private get shown(): VerdictKind | undefined {
    return this.snapshot && shownKind(this.snapshot);
  }

  private nameOf(snapshot: Snapshot, id: string): string {
    return plantName(snapshot.prepared.key, taxonOf(snapshot.prepared, id), this.saying.language).text;
  }

  private heading(snapshot: Snapshot, kind: VerdictKind): string {
    const { verdict } = this.saying.words;
    const lead = snapshot.identification.verdict.taxa[0];
    if (lead === undefined || kind === 'outside') return verdict.outside;
    return kind === 'open' ? verdict.open : verdict[kind](this.nameOf(snapshot, lead));
  }

  private renderBody(snapshot: Snapshot, kind: VerdictKind): TemplateResult {
    if (kind === 'outside') return this.renderOutside(snapshot);
    return kind === 'open' ? this.renderOpen(snapshot) : this.renderName(snapshot);
  }

  /** Settled or leaning: the name, how sure, what it rests on, and what would overthrow it. */
  private renderName(snapshot: Snapshot): TemplateResult {
    const { saying } = this;
    const { words } = saying;
    const { prepared, identification } = snapshot;
    const lead = identification.verdict.taxa[0] as string;
    const taxon = taxonOf(prepared, lead);
    const standing = standingOf(snapshot, lead);
    return html`
      <p class="names">${latin(taxon)} ${statusOf(taxon.status, words)}</p>
      <p class="sure">${words.verdict.sure(words.common.odds(standing.probability), snapshot.answered)}</p>
      ${drawnLine(lead, words.portrait.open)} ${this.renderStill(snapshot, taxon.status === 'invasive')}
      ${this.renderStop(snapshot)} ${this.renderDoubts(snapshot)}
      ${identification.verdict.kind === 'settled' ? nothing : this.renderRecheck(snapshot)} ${renderLookalikes(
        snapshot,
        lead,
        {
          saying,
          level: this.below,
          ask: (character) => this.request('ask', { character }),
        },
      )}
      <details class="why">
        <summary>${words.verdict.why}</summary>
        ${reasons(snapshot, standing, saying)}
      </details>`;
  }

  private renderOpen(snapshot: Snapshot): TemplateResult {
    const { words, language } = this.saying;
    const { key } = snapshot.prepared;
    const taxa = snapshot.identification.verdict.taxa.map((id) => taxonOf(snapshot.prepared, id));
    const lead = taxa[0];
    return html`
      <p class="sure">${words.verdict.couldBe(words.common.or(taxa.map((taxon) => plantName(key, taxon, language).text)))}</p>
      ${this.renderStill(snapshot, lead?.status === 'invasive')}
      ${taxa.length > 1 && taxa.length <= MOST_COMPARED ? compareButton(snapshot.identification.verdict.taxa, words.comparison.open, 'outline') : nothing}
      <p>${snapshot.question ? words.verdict.openNext : words.verdict.openEnd}</p>
      ${this.renderStop(snapshot)} ${this.renderRecheck(snapshot)}`;
  }

  private renderOutside(snapshot: Snapshot): TemplateResult {
    const { words } = this.saying;
    return html`
      <p class="sure">${words.verdict.outsideSure(words.common.odds(snapshot.identification.outside))}</p>
      <ul class="advice">
        ${words.verdict.outsideDo.map((line) => html`<li>${line}</li>`)}
      </ul>
      ${this.renderStop(snapshot)} ${this.renderRecheck(snapshot)}`;
  }

  /** What the plant may still be, where the mistake would cost most. */
  private renderStill(snapshot: Snapshot, invader: boolean): TemplateResult | typeof nothing {
    const { words } = this.saying;
    const held = invader ? snapshot.natives : snapshot.identification.concern;
    if (held < STILL_SAID) return nothing;
    const odds = words.common.odds(held);
    return html`<p class="still">${invader ? words.verdict.stillNative(odds) : words.verdict.stillConcern(odds)}</p>`;
  }

  private renderStop(snapshot: Snapshot): TemplateResult {
    const [first, ...rest] = snapshot.prepared.key.cautions;
    return html`<div class="stop" part="stop" role="note" aria-label=${this.saying.words.verdict.stop}>
      <p class="stop-word">${stopMark}${this.saying.words.verdict.stop}</p>
      ${first === undefined ? nothing : html`<p class="first">${this.say(first)}</p>`}
      ${rest.map((caution) => html`<p>${this.say(caution)}</p>`)}
    </div>`;
  }

  private renderDoubts(snapshot: Snapshot): TemplateResult | typeof nothing {
    const { verdict } = this.saying.words;
    const { doubts } = snapshot.identification.verdict;
    if (doubts.length === 0) return nothing;
    return html`<div role="heading" class="sub" aria-level=${this.below}>${verdict.inTheWay}</div>
      <ul class="doubts">
        ${doubts.map((doubt) => html`<li>${verdict.doubt[doubt]}</li>`)}
      </ul>`;
  }

  private renderRecheck(snapshot: Snapshot): TemplateResult | typeof nothing {
    const { saying } = this;
    const [first] = snapshot.identification.recheck;
    if (first === undefined || first.gain < WORTH_A_LOOK || snapshot.question?.character === first.character)
      return nothing;
    const { key, characterIndex } = snapshot.prepared;
    const label = this.say(key.characters[characterIndex.get(first.character) as number]?.label ?? '');
    return html`<div class="again">
      <p>${saying.words.verdict.recheck(saying.words.common.odds(first.gain))}</p>
      <p class="quiet">${answerLine(snapshot, first.character, saying)}</p>
      <button class="outline" type="button" @click=${() => this.request('ask', { character: first.character })}>
        ${saying.words.verdict.lookAgain(label)}
      </button>
    </div>`;
  }

  private get below(): number {
    return Math.min(6, (this.settings?.headingLevel ?? 2) + 1);
  }

  override render() {
    const { snapshot, shown: kind } = this;
    const level = this.settings?.headingLevel ?? 2;
    return html`<section part="verdict" class=${kind ?? 'none'} aria-label=${kind ? this.saying.words.verdict.heading : nothing}>
      <div role="status">${
        snapshot && kind
          ? html`<div role="heading" aria-level=${level} class="heading" part="heading">${this.heading(snapshot, kind)}</div>`
          : nothing
      }</div>
      ${snapshot && kind ? this.renderBody(snapshot, kind) : nothing}
    </section>`;
  }
}

/** The eight-sided sign that says stop on every road. */
const stopMark = svg`<svg viewBox="0 0 24 24" aria-hidden="true"><path d="M8 2h8l6 6v8l-6 6H8l-6-6V8ZM7.5 12h9" /></svg>`;

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-verdict': LeadwortVerdict;
  }
}
