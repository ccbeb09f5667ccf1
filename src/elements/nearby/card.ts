// One programme, or one person to ask, with the ways to reach them.
import { html, nothing, type TemplateResult } from 'lit';
import { type Contact, mailLink, type Offer, phoneLink } from '../../guidance/nearby/index.ts';
import type { NearbyWords } from '../../words/nearby/index.ts';
import { dayInWords, inBoth, inLanguage, languagesInWords } from './said.ts';

export type How = 'phone' | 'mail' | 'form';

/** All that a card needs to know of the page and the person. */
export interface Told {
  readonly words: NearbyWords;
  readonly language: string;
  readonly metric: boolean;
  /** Level of the card's heading. */
  readonly level: number;
  /** How well the place is known, in metres. */
  readonly uncertainty: number;
  readonly subject: string;
  readonly lines: readonly string[];
  /** A plant's name in a sentence; undefined where there is no key, or no such plant in it. */
  readonly nameOf: (taxon: string) => string | undefined;
  readonly plant: string | undefined;
  readonly reach: (programme: string, how: How) => void;
}

export function renderOffer(offer: Offer, told: Told): TemplateResult {
  const { words, language } = told;
  const { area, inside, distance } = offer;
  const say = (texts: Offer['area']['programme']) => inLanguage(texts, language);
  return html`<article class="programme" part="programme">
    <div role="heading" aria-level=${told.level} class="name">${say(area.programme)}</div>
    ${area.organisation ? html`<p class="quiet">${say(area.organisation)}</p>` : nothing}
    <p class="where">${inside ? words.here : words.away(inBoth(distance, words, told.metric))}</p>
    ${offer.unsure ? html`<p>${words.unsure(inBoth(told.uncertainty, words, told.metric))}</p>` : nothing}
    ${renderPlants(offer, told)} ${area.statement ? html`<p>${say(area.statement)}</p>` : nothing}
    ${
      area.offers.length > 0
        ? html`<p class="label">${words.offers}</p>
          <ul class="offers">
            ${area.offers.map((one) => html`<li>${say(one)}</li>`)}
          </ul>`
        : nothing
    }
    ${area.contacts.map((contact) => renderContact(contact, area.id, told))}
    <p class="quiet">
      ${area.until ? words.until(dayInWords(area.until, language)) : nothing}
      ${(offer.due ? words.due : words.checked)(dayInWords(area.reviewed, language))}
    </p>
  </article>`;
}

/** For which plants, and whether this one is among them. */
function renderPlants({ area: { plants }, fits }: Offer, { words, language, nameOf, plant }: Told) {
  if (!plants) return nothing;
  const own = plant === undefined ? undefined : nameOf(plant);
  if (plant !== undefined && fits && own) return html`<p class="meant">${words.meantFor(own)}</p>`;
  const names = plants.map(nameOf);
  if (!names.includes(undefined)) {
    const all = new Intl.ListFormat(language, { type: 'conjunction' }).format(names as string[]);
    return html`<p>${words.onlyFor(all)}</p>`;
  }
  return fits ? nothing : html`<p>${words.otherPlants}</p>`;
}

/** An address may be broken before its host, and need not be elsewhere. */
function breakable(text: string): TemplateResult {
  const [name = '', host] = text.split('@');
  return host === undefined ? html`${name}` : html`${name}@<wbr />${host}`;
}

export function renderContact(contact: Contact, programme: string, told: Told): TemplateResult {
  const { words, language } = told;
  const { person, phone, email, form, post, hours, languages } = contact;
  const about = [
    hours ? inLanguage(hours, language) : '',
    languages.length > 0 ? words.speaks(languagesInWords(languages, language)) : '',
  ].filter(Boolean);
  const link = (href: string | undefined, how: How, text: string) =>
    href === undefined
      ? html`<span>${text}</span>`
      : html`<a class=${how === 'phone' ? 'solid' : 'outline'} href=${href} @click=${() => told.reach(programme, how)}>${breakable(text)}</a>`;
  return html`<address class="contact" part="contact">
    ${person ? html`<b>${person}</b>` : nothing}
    ${about.length > 0 ? html`<span class="quiet">${about.join(' · ')}</span>` : nothing}
    <span class="ways">
      ${phone ? link(phoneLink(phone), 'phone', words.call(phone)) : nothing}
      ${email ? link(mailLink(email, told.subject, told.lines), 'mail', words.write(email)) : nothing}
      ${
        form
          ? html`<a
              class="outline form"
              href=${form}
              target="_blank"
              rel="noopener noreferrer"
              @click=${() => told.reach(programme, 'form')}
              >${words.form}<span class="unseen"> (${words.newTab})</span></a
            ><span class="print">${form}</span>`
          : nothing
      }
    </span>
    ${post ? html`<span class="post">${inLanguage(post, language)}</span>` : nothing}
  </address>`;
}
