// What the two elements that hold a key have in common: the same attributes, the same provider.
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { describeProblem, KeyContentError } from '../../key/index.ts';
import { flag } from './flag.ts';
import { Provider, type ProviderOptions } from './provider.ts';

/** How many mistakes of a key are shown to whoever opens the page. */
const SHOWN = 5;

export abstract class LeadwortHolder extends LitElement implements ProviderOptions {
  /** A field of the form around it, once it has a name. */
  static readonly formAssociated = true;

  /** Address of the key's bundle, resolved against the page. */
  @property() src = '';
  /** `us` or `metric`; the key's own when left out. */
  @property() units = '';
  /** Month in which the plant is looked at, 1 to 12; today's when left out. */
  @property({ type: Number }) month: number | undefined;
  /** Id of a kind of observer of the key; the one that misreads most when left out. */
  @property() observer = '';
  /** Level of the parts' headings, 1 to 6. */
  @property({ type: Number, attribute: 'heading-level' }) headingLevel = 2;
  /** Address of the folder with the key's photographs; without it none is asked for, and drawings are shown. */
  @property() images = '';

  /**
   * Keeps the answers on the device through a reload; the value is a name to keep them under, none: the element's place
   * among those of the page. Left out, or `false`: nothing is kept.
   */
  @property() keep: string | boolean | null = null;

  /** Name of a parameter of the page's address that holds the answers; without it the address is neither read nor changed. */
  @property({ attribute: 'link-parameter' }) linkParameter = '';
  /** Name under which a form sends what the key says, as JSON. */
  @property({ reflect: true }) name: string | undefined;
  /** Holds a form that the element is a named field of until a verdict stands. */
  @property({ converter: flag }) required = false;

  /** What the browser gave back of an earlier visit. @internal */
  formState = '';

  protected readonly provider = new Provider(this);

  /** The form was reset: a new plant. @internal */
  formResetCallback(): void {
    const { state } = this.provider;
    if (state.phase === 'ready') state.store.request('restart', {});
  }

  /** The page was come back to. @internal */
  formStateRestoreCallback(state: unknown): void {
    this.formState = `${state}`;
    if (this.provider.state.phase !== 'empty') void this.provider.reload();
  }

  /** What to say while there is no key: that it comes, or why it does not. Nothing once it is there. */
  protected renderStatus(): TemplateResult {
    const { state, settings } = this.provider;
    const words = settings?.words;
    const loading = state.phase === 'loading' ? html`<p class="quiet">${words?.common.loading}</p>` : nothing;
    const failed = state.phase === 'failed' && words ? this.#renderFault(state.error) : nothing;
    return html`<div class="notice" role="status" part="status">${loading}${failed}</div>`;
  }

  #renderFault(error: unknown): TemplateResult {
    const words = this.provider.settings?.words;
    const again = html`<button class="outline" type="button" @click=${() => this.provider.reload()}>
      ${words?.common.retry}
    </button>`;
    if (!(error instanceof KeyContentError)) return html`<p>${words?.common.failed}</p>${again}`;
    const rest = error.problems.length + error.more - SHOWN;
    return html`
      <p>${words?.key.mistakes}</p>
      <ul class="mistakes">
        ${error.problems.slice(0, SHOWN).map((problem) => html`<li>${describeProblem(problem)}</li>`)}
        ${rest > 0 ? html`<li>${words?.key.moreMistakes(rest)}</li>` : nothing}
      </ul>
      ${again}
    `;
  }
}
