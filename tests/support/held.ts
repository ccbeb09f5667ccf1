// Hands a session and settings to the parts inside, without loading anything; and what every part must keep to.
import { ContextProvider } from '@lit/context';
import { fixture } from '@open-wc/testing';
import { html, LitElement, render, type TemplateResult } from 'lit';
import { expect } from 'vitest';
import { albumContext, type Settings, sessionContext, settingsContext } from '../../src/contexts/index.ts';
import type { SessionStore } from '../../src/session/index.ts';
import { en, wordsFor } from '../../src/words/index.ts';
import { expectAccessible } from './a11y.ts';
import { withMedia } from './media.ts';

export const english: Settings = { words: en, language: 'en', units: 'us', headingLevel: 2 };
export const spanish = async (): Promise<Settings> => ({ ...english, words: await wordsFor('es'), language: 'es' });

class TestHolder extends LitElement {
  readonly session = new ContextProvider(this, { context: sessionContext });
  readonly settings = new ContextProvider(this, { context: settingsContext });
  readonly album = new ContextProvider(this, { context: albumContext });
  override render() {
    return html`<slot></slot>`;
  }
}
customElements.define('test-holder', TestHolder);

// 280 px: the narrowest column a part is made for.
const narrow = new CSSStyleSheet();
narrow.replaceSync('.narrow { inline-size: 280px; }');
document.adoptedStyleSheets.push(narrow);

export interface Held<Part extends HTMLElement = HTMLElement> {
  readonly holder: TestHolder;
  readonly part: Part & LitElement;
  readonly root: ShadowRoot;
  /** Text on the screen, spaces run together. */
  text(): string;
  find(selector: string): HTMLElement;
  all(selector: string): HTMLElement[];
  /** The first button or summary whose name holds these words. */
  control(words: string): HTMLElement;
}

/** The one part in `template`, drawn with the session and the settings. */
export async function held<Part extends HTMLElement>(
  template: TemplateResult,
  store: SessionStore,
  settings: Settings = english,
  around: TemplateResult = html`<test-holder></test-holder>`,
): Promise<Held<Part>> {
  const outer = await fixture<HTMLElement>(around);
  const holder = (outer instanceof TestHolder ? outer : outer.querySelector('test-holder')) as TestHolder;
  holder.session.setValue(store);
  holder.settings.setValue(settings);
  render(template, holder);
  const part = holder.firstElementChild as Part & LitElement;
  await part.updateComplete;
  await part.updateComplete;
  const root = part.shadowRoot as ShadowRoot;
  const all = (selector: string) => [...root.querySelectorAll<HTMLElement>(selector)];
  const find = (selector: string) => {
    const [found] = all(selector);
    if (found === undefined) throw new Error(`nothing matches ${selector} in: ${words(part)}`);
    return found;
  };
  const control = (wanted: string) => {
    const found = all('button, summary').find((one) => words(one).includes(wanted));
    if (found === undefined) throw new Error(`no control says "${wanted}" in: ${words(part)}`);
    return found;
  };
  return { holder, part, root, find, all, control, text: () => words(part) };
}

const words = (of: HTMLElement): string => ((of.shadowRoot ?? of).textContent ?? '').replaceAll(/\s+/g, ' ').trim();

/** What holds for every part in every state: no axe violation as it is and in forced colours, and nothing inline. */
export async function expectSound({ part, root, holder }: Held): Promise<void> {
  await expectAccessible(holder);
  await withMedia({ forcedColors: 'active' }, () => expectAccessible(holder));
  expect(root.querySelectorAll('[style], style, script')).toHaveLength(0);
  expect(part.scrollWidth, 'something is wider than the part').toBeLessThanOrEqual(part.clientWidth + 1);
}

/** No control smaller than a thumb: 48 px each way, but for links inside a sentence. */
export function expectRoom({ all }: Held): void {
  for (const one of all('button, summary, input')) {
    const { width, height } = one.getBoundingClientRect();
    if (width === 0) continue;
    expect(Math.min(width, height), one.textContent ?? '').toBeGreaterThanOrEqual(47.5);
  }
}
