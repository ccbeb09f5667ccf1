import { html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Snapshot } from '../../session/index.ts';
import { bar, barStyles } from '../shared/bar.ts';
import { compareButton } from '../shared/compare.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plant, plantName, taxonOf } from '../shared/plant.ts';
import { reasons, reasonsStyles } from '../shared/reasons.ts';
import { statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { styles } from './standing.styles.ts';

/** How many plants the opened list shows before it is asked for all. */
const AT_FIRST = 8;
/** Below this no plant is named in the sentence: a name that is hardly likely would only frighten (ours). */
const WORTH_NAMING = 0.25;
/** From here on the list says that the plant may be none of the key (ours). */
const OUTSIDE_SAID = 0.05;

/**
 * How every plant stands after the answers: one sentence, which opens to the plants that still fit.
 *
 * @tag leadwort-standing
 * @fires leadwort-comparison - A plant was asked to be shown beside the leading one. Detail: `{ taxa }`.
 * @csspart sentence - The one sentence; said aloud when it changes.
 * @csspart list - The list of plants.
 */
export class LeadwortStanding extends LeadwortPart {
  static override styles = [shared, statusStyles, barStyles, reasonsStyles, styles];

  @state() private open = false;
  @state() private all = false;

  private get sentence(): string {
    const { snapshot, settings } = this;
    if (!snapshot || !settings) return '';
    const { standing } = settings.words;
    const { identification, fitting, answered, prepared } = snapshot;
    const plants = prepared.key.taxa.length;
    const lead = identification.standing[0];
    if (answered === 0 || lead === undefined) return standing.all(plants);
    if (identification.verdict.kind === 'outside') return standing.outside(plants);
    if (lead.probability < WORTH_NAMING) return standing.fitting(fitting);
    const { text } = plantName(prepared.key, taxonOf(prepared, lead.taxon), settings.language);
    return standing.leading(fitting, text, settings.words.common.odds(lead.probability));
  }

  private renderList(snapshot: Snapshot): TemplateResult {
    const { standing } = this.saying.words;
    const lines = this.lines(snapshot);
    const shown = this.all
      ? lines
      : lines.slice(0, Math.min(AT_FIRST, snapshot.answered ? snapshot.fitting : AT_FIRST));
    const { outside } = snapshot.identification;
    return html`<div id="list" part="list" ?hidden=${!this.open}>
      <ol aria-label=${standing.heading}>
        ${repeat(
          shown,
          (line) => line.taxon,
          (line) => html`<li>${this.renderLine(snapshot, line)}</li>`,
        )}
        ${
          snapshot.answered > 0 && outside > OUTSIDE_SAID
            ? html`<li><p class="name">${standing.notHere}</p>${this.renderOdds(outside)}</li>`
            : nothing
        }
      </ol>
      ${
        lines.length > shown.length || this.all
          ? html`<button class="plain" type="button" @click=${() => {
              this.all = !this.all;
            }}>${this.all ? standing.fewer : standing.more(lines.length)}</button>`
          : nothing
      }
    </div>`;
  }

  /** Likeliest first; before any answer by name, since nothing stands out yet. */
  private lines(snapshot: Snapshot) {
    const { standing } = snapshot.identification;
    if (snapshot.answered > 0) return standing;
    const { prepared } = snapshot;
    const { language } = this.saying;
    const name = (id: string) => plantName(prepared.key, taxonOf(prepared, id), language).text;
    return [...standing].sort((a, b) => name(a.taxon).localeCompare(name(b.taxon), language));
  }

  private renderLine(snapshot: Snapshot, line: Snapshot['identification']['standing'][number]): TemplateResult {
    const { saying } = this;
    const { key } = snapshot.prepared;
    const taxon = taxonOf(snapshot.prepared, line.taxon);
    const name = html`<p class="name">${plant(key, taxon, saying.words, saying.language)}</p>`;
    if (snapshot.answered === 0) return name;
    return html`${name}${this.renderOdds(line.probability)}
      <details>
        <summary class="plain">${saying.words.standing.why}<span class="unseen">: ${plantName(key, taxon, saying.language).text}</span></summary>
        ${reasons(snapshot, line, saying)} ${this.renderCompare(snapshot, line.taxon)}
      </details>`;
  }

  /** Each plant beside the leading one. */
  private renderCompare({ identification, prepared }: Snapshot, taxon: string): TemplateResult | typeof nothing {
    const lead = identification.standing[0]?.taxon;
    if (lead === undefined || lead === taxon) return nothing;
    const { words, language } = this.saying;
    const { text } = plantName(prepared.key, taxonOf(prepared, lead), language);
    return compareButton([lead, taxon], words.comparison.openWith(text));
  }

  private renderOdds(probability: number): TemplateResult {
    return html`<p class="odds"><span class="quiet">${this.saying.words.common.odds(probability)}</span>${bar(probability)}</p>`;
  }

  override render() {
    const { snapshot } = this;
    const { standing } = this.saying.words;
    return html`<div class="head">
        <p role="status" part="sentence">${this.sentence}</p>
        ${
          snapshot
            ? html`<button class="plain" type="button" aria-expanded=${this.open} aria-controls="list" @click=${() => {
                this.open = !this.open;
              }}>${this.open ? standing.close : standing.open}</button>`
            : nothing
        }
      </div>
      ${snapshot ? this.renderList(snapshot) : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-standing': LeadwortStanding;
  }
}
