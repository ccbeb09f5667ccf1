// One source as a line: a link where it is on the web, else its title.
import { html, nothing, type TemplateResult } from 'lit';
import type { Source } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';

export function sourceLine(
  { title, institution, year, url, kind }: Source,
  { common, guidance }: Words,
): TemplateResult {
  if (kind === 'memory') return html`<span>${common.memory}</span>`;
  const rest = [institution, year].filter((one) => one !== undefined && one !== '').join(', ');
  const safe = url !== undefined && /^https?:\/\//i.test(url);
  return html`<span>${
    safe
      ? html`<a href=${url} target="_blank" rel="noopener noreferrer">${title}<span class="unseen"> (${guidance.newTab})</span></a>`
      : html`<cite>${title}</cite>`
  }${rest === '' ? nothing : `. ${rest}`}</span>`;
}
