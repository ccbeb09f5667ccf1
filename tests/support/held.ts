// Hands a session and settings to the parts inside, without loading anything.
import { ContextProvider } from '@lit/context';
import { fixture } from '@open-wc/testing';
import { html, LitElement, render, type TemplateResult } from 'lit';
import { type Settings, sessionContext, settingsContext } from '../../src/contexts/index.ts';
import type { SessionStore } from '../../src/session/index.ts';
import { en } from '../../src/words/index.ts';

export const english: Settings = { words: en, language: 'en', units: 'us', headingLevel: 2 };

export class TestHolder extends LitElement {
  readonly session = new ContextProvider(this, { context: sessionContext });
  readonly settings = new ContextProvider(this, { context: settingsContext });
  override render() {
    return html`<slot></slot>`;
  }
}
customElements.define('test-holder', TestHolder);

/** The part in `template`, drawn with the session and the settings. */
export async function held<Part extends HTMLElement>(
  template: TemplateResult,
  store: SessionStore,
  settings: Settings = english,
): Promise<{ part: Part; holder: TestHolder; root: ShadowRoot }> {
  const holder = await fixture<TestHolder>(html`<test-holder></test-holder>`);
  holder.session.setValue(store);
  holder.settings.setValue(settings);
  render(template, holder);
  const part = holder.firstElementChild as Part & LitElement;
  await part.updateComplete;
  await part.updateComplete;
  return { part, holder, root: part.shadowRoot as ShadowRoot };
}
