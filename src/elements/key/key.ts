import { adoptStyles, html, type LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import type { Settings } from '../../contexts/index.ts';
import type { RequestName, Requests, Snapshot } from '../../session/index.ts';
import { LeadwortHolder } from '../shared/holder.ts';
import { bring, type LatePart, untilDone } from '../shared/late.ts';
import { shownKind } from '../shared/shown.ts';
import { shared } from '../shared/styles.ts';
import type { Page } from './drawers.ts';
import type { Trouble } from './keeping.ts';
import { keyStyles } from './key.styles.ts';
import { renderWays } from './walking.ts';

const loadLater = untilDone(() => import('./later.ts'));
/** What of a question and a couplet can be styled from outside. */
const PARTS = 'heading:question-heading, caution:question-caution, card:question-card, bar:question-bar';
/** What an answer may bring to the screen. */
const AFTER_ANSWERS: readonly LatePart[] = ['trail', 'standing', 'verdict', 'guidance'];
/** From this width on, in em of its own font, the stream stands beside the question; as in key.styles.ts. */
const WIDE = 60;

/**
 * The whole: question, answers so far, what it could be, the verdict and what to do, from one address.
 *
 * @summary A plant identification key.
 *
 * @tag leadwort-key
 * @slot - Shown until the key is there, and beside what is said when it does not come.
 * @csspart status - What is said while the key loads, or why it did not.
 * @csspart trail - The answers so far.
 * @csspart question - The question, or the couplet.
 * @csspart question-heading - Its words.
 * @csspart question-caution - What is unsafe about looking.
 * @csspart question-card - One answer, or one lead.
 * @csspart question-bar - The buttons that send the answer.
 * @csspart notice - Said when the water runs elsewhere, and when the couplets have come to their end.
 * @csspart ways - The switch between step by step and choosing what to look at.
 * @csspart stream - The branching key, drawn.
 * @csspart standing - What it could be.
 * @csspart verdict - What may be said.
 * @csspart guidance - What to do and not to do.
 * @csspart nearby - Who helps near the person.
 * @csspart report - The report, when somebody opened it.
 * @csspart comparison - Plants side by side, when somebody asked for it.
 * @csspart foot - Settings, names, and the start with a new plant.
 * @fires {CustomEvent} leadwort-started - The first thing was said of a new plant: `{key, version}`.
 * @fires {CustomEvent} leadwort-answered - The session took an answer, or one passed over: `{character, number}`.
 * @fires {CustomEvent} leadwort-answer - A question was answered or passed over.
 * @fires {CustomEvent} leadwort-verdict - The kind of verdict or the leading taxon changed: `{kind, taxa}`.
 * @fires {CustomEvent} leadwort-guidance - What to do about a taxon was opened: `{taxon}`.
 * @fires {CustomEvent} leadwort-comparison - Plants were asked to be shown side by side; none when that was closed: `{taxa}`.
 * @fires {CustomEvent} leadwort-help - A way to reach somebody was opened: `{programme, how}`.
 * @fires {CustomEvent} leadwort-report - A report arrived, or was taken out otherwise: `{how}`.
 * @fires {CustomEvent} leadwort-keep - The answers are not kept, or not as they were: `{trouble, reason}`.
 * @attr {string} lang - Language of the words; else the nearest `lang` on the page.
 * @cssprop --leadwort-ink - Colour of text.
 * @cssprop --leadwort-paper - Colour behind it.
 * @cssprop --leadwort-reed - Colour of what can be pressed.
 * @cssprop --leadwort-silt - Colour of cards.
 * @cssprop --leadwort-mud - Colour of quiet text.
 * @cssprop --leadwort-rust - Colour of "stop".
 * @cssprop --leadwort-line - Colour of lines.
 * @cssprop --leadwort-radius - How round the corners are.
 */
export class LeadwortKey extends LeadwortHolder {
  static override styles = [shared, keyStyles];

  /** Ids of two or three plants to show side by side, separated by spaces; none: none. */
  @property() compare = '';
  /** Address of the file that says who helps where, GeoJSON. */
  @property() areas = '';
  /** Telephone of whom to ask; nothing is dialled without a tap. */
  @property({ attribute: 'contact-phone' }) contactPhone = '';
  /** Mail address of whom to ask; nothing is sent without a tap. */
  @property({ attribute: 'contact-email' }) contactEmail = '';
  /** Address that a report is sent to; without it, a report can be mailed, printed and saved. */
  @property() endpoint = '';

  /** Parts that were asked for and did not come, for want of a connection. */
  @state() private missing: ReadonlySet<LatePart> = new Set();
  /** "Start with a new plant" was pressed once. */
  @state() private restarting = false;
  /** Drawers of the foot that stand open. */
  @state() private opened: Readonly<Partial<Record<LatePart, boolean>>> = {};
  /** Draws what may be set and what follows a verdict, once it is there. */
  @state() private later: typeof import('./later.ts') | undefined;
  /** Why answers are not kept, or not as they were. */
  @state() private trouble: Trouble | undefined;
  /** Wide enough for the stream beside the question. */
  @state() private wide = false;
  @query('[part=question]') private shown!: LitElement | null;

  #size = new ResizeObserver(([entry]) => {
    const em = Number.parseFloat(getComputedStyle(this).fontSize);
    this.wide = (entry?.contentRect.width ?? 0) >= WIDE * em;
  });
  /** What is on the screen was pressed just now, and not what keeps the focus: the foot and the switch. */
  #pressed = false;
  readonly #press = {
    capture: true,
    handleEvent: (event: Event) => {
      this.#pressed = (event.target as Element).closest('.foot, .ways') === null;
      setTimeout(() => {
        this.#pressed = false;
      });
    },
  };
  #shown: LitElement | null = null;
  /** What the comparison was opened from: the focus goes back there. */
  #opener: HTMLElement | undefined;

  constructor() {
    super();
    this.addEventListener('leadwort-comparison', (event) => void this.#compare(event));
    this.addEventListener('leadwort-keep', ({ detail }) => {
      this.trouble = detail.trouble;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#size.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#size.disconnect();
  }

  protected override updated(_changed: PropertyValues): void {
    if (this.provider.state.phase !== 'ready') return;
    // The first question is on the screen; what follows the answers comes while a person reads it.
    this.#bring(['question', 'term', ...AFTER_ANSWERS]);
    const { id } = this.provider.state.store.snapshot.prepared.key;
    loadLater()
      .then((later) => {
        if (!this.later) adoptStyles(this.renderRoot as ShadowRoot, [...LeadwortKey.elementStyles, later.laterStyles]);
        this.later = later;
        return later.sendWaiting(this.endpoint, id);
      })
      // As the other parts, it is tried again with the next answer.
      .catch(() => undefined);
    if (this.compare) this.#bring(['comparison']);
    if (this.areas && shownKind(this.provider.state.store.snapshot)) this.#bring(['nearby']);
    if (this.wide && this.provider.state.store.snapshot.walk) this.#bring(['stream']);
    const { shown } = this;
    if (this.#shown && shown && shown !== this.#shown && this.#pressed) void this.#focusShown();
    this.#shown = shown;
  }

  /** Takes a person to the question that came for what they did. */
  async #focusShown(): Promise<void> {
    await this.updateComplete;
    await this.shown?.updateComplete;
    this.shown?.focus();
  }

  /** Opens the comparison and takes a person there, or closes it and takes them back. */
  async #compare(event: HTMLElementEventMap['leadwort-comparison']): Promise<void> {
    const from = event.composedPath()[0] as HTMLElement;
    this.compare = event.detail.taxa.join(' ');
    if (this.compare === '') {
      (this.#opener?.isConnected ? this.#opener : this.shown)?.focus();
      return;
    }
    if (from.localName === 'button') this.#opener = from;
    await this.updateComplete;
    await bring('comparison').catch(() => undefined);
    this.renderRoot.querySelector<HTMLElement>('[part=comparison]')?.focus();
  }

  #send<Name extends RequestName>(name: Name, detail: Requests[Name]): void {
    const { state } = this.provider;
    if (state.phase === 'ready') state.store.request(name, detail);
  }

  #bring(parts: readonly LatePart[]): void {
    for (const part of parts)
      bring(part).then(
        () => this.#lacks(part, false),
        () => this.#lacks(part, true),
      );
  }

  /** A key without couplets begins with a question, and waits for it. */
  @state() private questionHere = customElements.get('leadwort-question') !== undefined;

  #lacks(part: LatePart, lacking: boolean): void {
    if (part === 'question') this.questionHere = true;
    if (this.missing.has(part) === lacking) return;
    const missing = new Set(this.missing);
    if (lacking) missing.add(part);
    else missing.delete(part);
    this.missing = missing;
  }

  #restart(): void {
    if (!this.restarting) {
      this.restarting = true;
      return;
    }
    this.restarting = false;
    this.#send('restart', {});
    void this.#focusShown();
  }

  override render(): TemplateResult {
    const { state, settings } = this.provider;
    const ready = state.phase === 'ready' && settings && (this.questionHere || state.store.snapshot.asked);
    // What the page has inside stays where it stood: what is said meanwhile comes below it.
    return html`${ready ? this.#renderKey(state.store.snapshot, settings) : html`<slot></slot>`}${this.renderStatus()}`;
  }

  #renderKey(snapshot: Snapshot, settings: Settings): TemplateResult {
    const { words } = settings;
    const { asked, question, prepared } = snapshot;
    // It speaks with words that the first script does not have.
    const later = 'keep' in words ? this.later : undefined;
    const page = this.#page(settings);
    const restart = snapshot.trail.length > 0 ? this.#renderRestart(settings) : nothing;
    const forked = prepared.key.couplets.length > 0;
    const asking = asked !== undefined || question !== undefined;
    const kind = shownKind(snapshot);
    // A name, or no question left: then what is next is a person.
    const ahead = kind === 'settled' || kind === 'leaning' || (kind !== undefined && !asking);
    return html`${
      this.compare
        ? html`<leadwort-comparison @click=${this.#press} part="comparison" closable lang=${words.language} taxa=${this.compare}></leadwort-comparison>
          ${this.#renderMissing(['comparison'], settings)}`
        : nothing
    }
      <div class=${`page ${asking ? 'asking' : 'done'} ${forked ? 'forked' : ''} ${ahead ? 'ahead' : ''}`} lang=${words.language} @click=${this.#press}>
        <leadwort-trail part="trail"></leadwort-trail>
        <div class="ask">
          <div class="walking" role="status" part="notice">${later?.renderNotice(snapshot, settings, {
            again: (character) => this.#send('ask', { character }),
            on: (place) => {
              this.#send('walk-from', place);
              void this.#focusShown();
            },
          })}${this.trouble ? later?.renderTrouble(this.trouble, words) : nothing}</div>
          ${
            asked
              ? html`<leadwort-couplet part="question" exportparts=${PARTS}></leadwort-couplet>`
              : html`<leadwort-question part="question" exportparts=${PARTS}></leadwort-question>`
          }
          ${this.#renderMissing(['question'], settings)}
          ${forked && asking ? renderWays(snapshot, settings, (way) => this.#send('way', { way })) : nothing}
        </div>
        <div class="verdict">
          <leadwort-verdict part="verdict"></leadwort-verdict>
          ${this.#renderMissing(AFTER_ANSWERS, settings)}
          ${ahead ? later?.renderNext(this.renderRoot, words, this.areas !== '') : nothing}
        </div>
        <div class="guidance">
          <leadwort-guidance part="guidance" .contactPhone=${this.contactPhone} .contactEmail=${this.contactEmail}></leadwort-guidance>
          ${this.areas && kind ? later?.renderNearby(page) : nothing}
          ${snapshot.answered > 0 ? later?.renderReport(page) : nothing}
        </div>
        <div class="side">
          <leadwort-standing part="standing"></leadwort-standing>
          ${forked ? later?.renderStream(page, this.wide) : nothing}
        </div>
        <div class="foot" part="foot">${later ? later.renderFoot(page, snapshot, restart) : restart}</div>
      </div>
    `;
  }

  #renderMissing(parts: readonly LatePart[], { words }: Settings): TemplateResult {
    return html`<div role="status">
      ${
        parts.some((part) => this.missing.has(part))
          ? html`<p>${words.key.missing}</p>
            <button class="outline" type="button" @click=${() => this.#bring(parts)}>${words.common.retry}</button>`
          : nothing
      }
    </div>`;
  }

  #renderRestart({ words }: Settings): TemplateResult {
    return html`<button
        class=${this.restarting ? 'outline' : 'plain'}
        type="button"
        @click=${() => this.#restart()}
        @blur=${() => {
          this.restarting = false;
        }}
      >
        ${this.restarting ? words.key.restartSure : words.key.restart}
      </button>
      <p class="unseen" role="status">${this.restarting ? words.key.restartSure : nothing}</p>`;
  }

  /** What is drawn later needs of this element. */
  #page(settings: Settings): Page {
    return {
      host: this,
      settings,
      opened: this.opened,
      toggle: (part, open) => {
        this.opened = { ...this.opened, [part]: open };
        if (open) this.#bring([part]);
      },
      missing: (part) => this.#renderMissing([part], settings),
      send: (name, detail) => this.#send(name, detail),
    };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-key': LeadwortKey;
  }
}
