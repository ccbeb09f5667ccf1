// Whom to ask wherever the plant is, and why to look upstream.
import { html, nothing, type TemplateResult } from 'lit';
import type { Areas } from '../../guidance/nearby/index.ts';
import { renderContact, type Told } from './card.ts';
import { inLanguage } from './said.ts';

/**
 * `elsewhere` is whom the file names for everywhere else; where it names nobody, it is whoever keeps the page, by
 * telephone and mail address, empty for none. `others`: there is an answer above, and these are asked besides.
 */
export function renderAnyway(
  elsewhere: Areas['elsewhere'],
  { phone, email }: { readonly phone: string; readonly email: string },
  others: boolean,
  told: Told,
): TemplateResult {
  const { words, level } = told;
  const page = !elsewhere && (phone !== '' || email !== '');
  return html`<div class="asking">
    <div role="heading" class="sub" aria-level=${level}>${others ? words.others : words.anyway}</div>
    ${
      page
        ? html`<p><b>${words.page}</b></p>
          ${renderContact({ ...(phone ? { phone } : {}), ...(email ? { email } : {}), languages: [] }, 'page', told)}`
        : nothing
    }
    ${
      elsewhere
        ? html`<p><b>${inLanguage(elsewhere.name, words.language)}</b></p>
          ${elsewhere.statement ? html`<p>${inLanguage(elsewhere.statement, words.language)}</p>` : nothing}
          ${elsewhere.contacts.map((contact) => renderContact(contact, 'elsewhere', told))}`
        : nothing
    }
    ${page || elsewhere ? html`<p class="quiet">${words.yourself}</p>` : html`<p>${words.nobody}</p>`}
  </div>`;
}

export function renderUpstream({ words, level }: Told): TemplateResult {
  return html`<div class="upstream" part="upstream">
    <div role="heading" class="sub" aria-level=${level}>${words.upstream}</div>
    ${words.upstreamSay.map((line) => html`<p>${line}</p>`)}
  </div>`;
}
