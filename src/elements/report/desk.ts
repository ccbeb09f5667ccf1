// What every section of the form is handed, and the fields that sections are made of.
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { ReportWords } from '../../words/report/index.ts';
import type { Pictures } from '../shared/picture.ts';
import type { Saying } from '../shared/said.ts';
import type { Draft, Field } from './draft.ts';

export interface Desk {
  readonly draft: Draft;
  readonly words: ReportWords;
  readonly saying: Saying;
  readonly pictures: Pictures;
  /** Level of the sections' headings. */
  readonly level: number;
  /** What is to be said of a field; undefined while nothing is wrong with it. */
  readonly trouble: (field: Field) => string | undefined;
  readonly set: (field: Field, value: string) => void;
  /** The person is done with a field for now. */
  readonly left: (field: Field) => void;
}

export interface FieldOptions {
  readonly help?: string;
  readonly kind?: 'text' | 'size' | 'date' | 'tel' | 'email' | 'lines';
  readonly complete?: 'name' | 'tel' | 'email';
  /** Latest day of a date. */
  readonly most?: string;
}
type Typed = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;
const typedIn = (event: Event) => (event.currentTarget as Typed).value;

/** Longest text of a line and of several: less than a find takes. */
const LINE = 300;
const LINES = 2000;

export function field(desk: Desk, name: Field, label: string, options: FieldOptions = {}): TemplateResult {
  const { help, kind = 'text', complete = 'off', most } = options;
  const trouble = desk.trouble(name);
  const described = [...(help ? [`${name}-help`] : []), ...(trouble ? [`${name}-trouble`] : [])].join(' ');
  const typed = (event: Event) => desk.set(name, typedIn(event));
  const left = () => desk.left(name);
  const value = desk.draft.fields[name];
  return html`<div class="field ${kind}">
    <label for=${name}>${label}</label>
    ${help ? html`<p class="quiet" id="${name}-help">${help}</p>` : nothing}
    ${
      kind === 'lines'
        ? html`<textarea id=${name} rows="3" maxlength=${LINES} autocomplete=${complete} aria-describedby=${described || nothing}
            .value=${live(value)} @input=${typed} @change=${left}></textarea>`
        : html`<input id=${name} type=${kind === 'size' ? 'text' : kind} inputmode=${kind === 'size' ? 'decimal' : nothing}
            maxlength=${LINE} max=${most ?? ''} autocomplete=${complete}
            aria-invalid=${trouble ? 'true' : 'false'} aria-describedby=${described || nothing}
            .value=${live(value)} @input=${typed} @change=${left} />`
    }
    <p class="wrong" id="${name}-trouble" role="alert">${trouble ?? nothing}</p>
  </div>`;
}

/** One of several; the first choice is that nothing is said, unless `usual` says what holds then. */
export function choice<Value extends string>(
  { draft, words, set }: Desk,
  name: Field,
  label: string,
  values: readonly Value[],
  naming: (value: Value) => string,
  usual?: Value,
): TemplateResult {
  const chosen = draft.fields[name] || (usual ?? '');
  return html`<div class="field">
    <label for=${name}>${label}</label>
    <select id=${name} @change=${(event: Event) => set(name, typedIn(event))}>
      ${usual === undefined ? html`<option value="" ?selected=${chosen === ''}>${words.more.unsaid}</option>` : nothing}
      ${values.map((value) => html`<option value=${String(value)} ?selected=${value === chosen}>${naming(value)}</option>`)}
    </select>
  </div>`;
}

export function tick({ draft, set }: Desk, name: Field, label: string, help?: string): TemplateResult {
  return html`<div class="tick">
    <label class="target">
      <input type="checkbox" id=${name} aria-describedby=${help ? `${name}-help` : nothing}
        .checked=${live(draft.fields[name] === 'yes')}
        @change=${(event: Event) => set(name, (event.currentTarget as HTMLInputElement).checked ? 'yes' : '')} />
      <span>${label}</span>
    </label>
    ${help ? html`<p class="quiet" id="${name}-help">${help}</p>` : nothing}
  </div>`;
}

/** One of the four that are needed, or the sending: a heading and whether it is there. */
export function section(
  { level, words }: Desk,
  name: string,
  heading: string,
  there: boolean | undefined,
  inside: unknown,
): TemplateResult {
  return html`<section class="step ${name}" part=${name}>
    <div class="head">
      <div role="heading" aria-level=${Math.min(6, level + 1)} class="sub">${heading}</div>
      ${there === undefined ? nothing : html`<span class="state ${there ? 'there' : 'lacking'}">${there ? words.there : words.needed}</span>`}
    </div>
    ${inside}
  </section>`;
}
