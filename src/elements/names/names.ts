import { html, nothing, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import type { Key, SharedName, Standing, Taxon } from '../../key/index.ts';
import { isOpen, type LookalikeOf, lookalikesOf, type Snapshot } from '../../session/index.ts';
import { compareButton } from '../shared/compare.ts';
import { drawnLine } from '../shared/drawn.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plant, plantName } from '../shared/plant.ts';
import { standingOf } from '../shared/reasons.ts';
import { statusOf, statusStyles } from '../shared/status.ts';
import { shared } from '../shared/styles.ts';
import { styles } from './names.styles.ts';
import { NameSearch } from './search.ts';

const STANDINGS: readonly Standing[] = ['native', 'introduced', 'invasive'];

/**
 * Looks up a name: who bears it, whether that is a native, and what it is easily taken for. It leads to the plant's
 * features and never to advice, since a name alone settles nothing.
 *
 * @tag leadwort-names
 * @fires leadwort-comparison - A plant was asked to be shown beside a look-alike. Detail: `{ taxa }`.
 * @csspart field - The search field.
 * @csspart results - The plants found.
 */
export class LeadwortNames extends LeadwortPart {
  static override styles = [shared, statusStyles, styles];

  @query('input') private field!: HTMLInputElement | null;
  @state() private typed = '';

  #search: NameSearch | undefined;
  /** The key that #search looks through. */
  #key: Key | undefined;

  protected override willUpdate(): void {
    const key = this.snapshot?.prepared.key;
    if (key === this.#key) return;
    this.#key = key;
    this.#search = key && new NameSearch(key);
  }

  /** Goes to what tells the plant from a look-alike, or else to what the key would ask next. */
  private check(snapshot: Snapshot, taxon: Taxon): void {
    const checks = lookalikesOf(snapshot, taxon.id).flatMap((one) => one.checks.filter(isOpen));
    const character =
      checks[0]?.feature.character.id ??
      snapshot.identification.next[0]?.character ??
      snapshot.prepared.key.characters.find((one) => one.asked)?.id;
    if (character !== undefined) this.request('ask', { character });
  }

  private renderShared(snapshot: Snapshot, { name, taxa }: SharedName): TemplateResult {
    const { words } = this.saying;
    const ids = new Set(taxa.map((taxon) => taxon.id));
    const pairs = snapshot.prepared.key.lookalikes.filter((pair) => pair.taxa.every((id) => ids.has(id)));
    const lines = new Set(pairs.flatMap(({ separate: [first] }) => (first ? [first.words] : [])));
    return html`<div class="shared">
      <div role="heading" aria-level=${this.below} class="sub">${words.names.shared(name)}</div>
      <p>${words.names.sharedHelp}</p>
      ${
        lines.size > 0
          ? html`<p class="tell">${words.names.tell}</p>
            <ul class="lines">${[...lines].map((line) => html`<li>${this.say(line)}</li>`)}</ul>`
          : nothing
      }
    </div>`;
  }

  private renderPlant(snapshot: Snapshot, taxon: Taxon): TemplateResult {
    const { words, language } = this.saying;
    const { key } = snapshot.prepared;
    const name = plantName(key, taxon, language);
    const others = [...taxon.common].flatMap(([lang, names]) =>
      names.filter((one) => one !== name.text).map((text) => ({ lang, text })),
    );
    const alike = lookalikesOf(snapshot, taxon.id);
    return html`<p class="name">${plant(key, taxon, words, language)}</p>
      ${
        others.length > 0
          ? html`<p class="quiet">${words.names.other}: ${others.map(({ lang, text }, i) => html`${i > 0 ? ', ' : nothing}<span lang=${lang}>${text}</span>`)}</p>`
          : nothing
      }
      ${
        snapshot.answered > 0
          ? html`<p>${words.names.now(words.common.odds(standingOf(snapshot, taxon.id).probability))}</p>`
          : nothing
      }
      ${drawnLine(taxon.id, html`${words.portrait.open}<span class="unseen">: ${name.text}</span>`)}
      ${alike.length > 0 ? this.renderAlike(snapshot, taxon, alike) : nothing}
      <button class="plain" type="button" @click=${() => this.check(snapshot, taxon)}>
        ${words.names.check}<span class="unseen">: ${name.text}</span>
      </button>`;
  }

  /** Look-alikes by where they belong, natives first: that is what a name hides. */
  private renderAlike({ prepared }: Snapshot, of: Taxon, alike: readonly LookalikeOf[]): TemplateResult {
    const { words, language } = this.saying;
    const groups = STANDINGS.map((status) => ({ status, some: alike.filter((one) => one.taxon.status === status) }));
    return html`<div class="alike">
      <p>${words.names.alike}: <span class="quiet">${words.comparison.press}</span></p>
      <ul>
        ${groups.map(({ status, some }) =>
          some.length === 0
            ? nothing
            : html`<li>${statusOf(status, words)}: ${some.map(({ taxon }) => {
                const { text, lang } = plantName(prepared.key, taxon, language);
                return compareButton(
                  [of.id, taxon.id],
                  html`<span class="unseen">${words.comparison.open}: </span><span lang=${lang}>${text}</span>`,
                );
              })}</li>`,
        )}
      </ul>
    </div>`;
  }

  private get below(): number {
    return Math.min(6, (this.settings?.headingLevel ?? 2) + 1);
  }

  /** Puts the cursor into the field. */
  override focus(options?: FocusOptions): void {
    this.field?.focus(options);
  }

  override render() {
    const { snapshot, typed } = this;
    const { names } = this.saying.words;
    const asked = typed.trim() !== '';
    const found = asked ? this.#search?.find(typed) : undefined;
    return html`<div part="field" role="search">
        <label for="name">${names.label}</label>
        <p class="quiet" id="hint">${names.hint}</p>
        <input id="name" type="search" autocomplete="off" autocapitalize="none" spellcheck="false" aria-describedby="hint"
          @input=${(event: InputEvent) => {
            this.typed = (event.currentTarget as HTMLInputElement).value;
          }} />
      </div>
      <p role="status" class="quiet count">${found ? names.count(found.taxa.length) : nothing}</p>
      ${
        snapshot && found
          ? html`<div part="results">
              ${found.taxa.length === 0 ? html`<p>${names.none}</p>` : nothing}
              ${found.shared ? this.renderShared(snapshot, found.shared) : nothing}
              <ul class="plants">
                ${found.taxa.map((taxon) => html`<li>${this.renderPlant(snapshot, taxon)}</li>`)}
              </ul>
            </div>`
          : nothing
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-names': LeadwortNames;
  }
}
