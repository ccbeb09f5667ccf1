// The key itself inside the practice room, over a session of its own: the parts in it know no difference.
import { ContextProvider } from '@lit/context';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { sessionContext } from '../../contexts/index.ts';
import type { KeyAnswer, Month, PreparedKey } from '../../key/index.ts';
import { SessionStore, type Snapshot } from '../../session/index.ts';
import { shared } from '../shared/styles.ts';

/** What a run came to. */
export interface RunEnd {
  /** Id of the plant, `outside` or `unsure`. */
  readonly said: string;
  readonly trail: readonly KeyAnswer[];
}

/** @internal A part of the practice room. */
export class LeadwortPracticeRun extends LitElement {
  static override styles = [shared];

  @property({ attribute: false }) prepared: PreparedKey | undefined;
  @property({ attribute: false }) month: Month = 1;
  /** Called whenever an answer changed what is known. */
  @property({ attribute: false }) told: ((snapshot: Snapshot) => void) | undefined;

  readonly #session = new ContextProvider(this, { context: sessionContext, initialValue: undefined });
  #store: SessionStore | undefined;
  #stop: (() => void) | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.prepared || (this.#store && !changed.has('prepared') && !changed.has('month'))) return;
    this.#stop?.();
    const store = new SessionStore(this.prepared, { month: this.month, clock: () => performance.now() });
    this.#store = store;
    this.#stop = store.subscribe(() => {
      this.told?.(store.snapshot);
      this.requestUpdate();
    });
    this.#session.setValue(store);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
    this.#store = undefined;
  }

  override render(): TemplateResult | typeof nothing {
    const snapshot = this.#store?.snapshot;
    if (!snapshot) return nothing;
    return html`<leadwort-trail></leadwort-trail>
      ${snapshot.asked ? html`<leadwort-couplet></leadwort-couplet>` : html`<leadwort-question></leadwort-question>`}
      <leadwort-standing></leadwort-standing>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-practice-run': LeadwortPracticeRun;
  }
}
