// What else was told, of the stand and of the person, in the words of the printed report, which come when they are needed.
import { html, type TemplateResult } from 'lit';
import { ifDefined } from 'lit/directives/if-defined.js';
import type { PreparedKey } from '../../key/index.ts';
import type { Find } from '../../report/find/index.ts';
import { untilDone } from '../shared/late.ts';
import type { Saying } from '../shared/said.ts';

/** Named one by one, so that a build leaves out the other forms. */
export const bringForms = untilDone(async () => {
  const { darwinCoreCsv, formWords, reportOf } = await import('../../report/forms/index.ts');
  return { darwinCoreCsv, formWords, reportOf };
});
export type Forms = Awaited<ReturnType<typeof bringForms>>;
export type Rest = ReturnType<Forms['reportOf']>['sections'];

/** What is shown of the answers, the place and the photographs stands elsewhere. */
export const restOf = (
  { reportOf, formWords }: Forms,
  { key }: PreparedKey,
  find: Find,
  { words, units }: Saying,
): Rest =>
  reportOf({ find, key, words: formWords(words), units }).sections.filter(
    ({ id }) => id === 'stand' || id === 'person',
  );

export function renderRest(rest: Rest, find: Find, level: number): TemplateResult[] {
  const theirs = [find.remarks, find.access];
  return rest.map(
    ({ heading, facts, notes }) => html`<section>
      <div role="heading" aria-level=${level} class="sub">${heading}</div>
      <dl class="facts">
        ${facts.map(([label, value]) => html`<div><dt>${label}</dt><dd lang=${ifDefined(theirs.includes(value) ? find.language : undefined)}>${value}</dd></div>`)}
      </dl>
      ${notes.map((note) => html`<p>${note}</p>`)}
    </section>`,
  );
}
