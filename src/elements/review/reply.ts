// The answer to who reported, prepared as mail; the specialist sends it.
import { html, type TemplateResult } from 'lit';
import { mailLink } from '../../guidance/index.ts';
import { type Find, PHOTOS } from '../../report/find/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import type { Texts } from './texts.ts';

/** `theirs` and `nameOf` speak the language of whoever reported. */
export function renderReply(
  { contact, consent, review }: Find,
  text: ReviewWords,
  theirs: Texts,
  nameOf: (id: string) => string,
): TemplateResult {
  const link = consent.contact ? mailLink(contact?.email ?? '') : undefined;
  if (!link || !review) return html`<p>${text.noMail}</p>`;
  const { wants } = theirs.report.photos;
  const plant = review.taxon === undefined ? theirs.review.status[review.status] : nameOf(review.taxon);
  const wanted = (review.wanted ?? []).map((id) => {
    const kind = PHOTOS.find((one) => one === id);
    return kind ? wants[kind] : id;
  });
  const body = theirs.review.replyText(`${plant}.`, review.by, review.remarks ?? '', wanted).replace(/\n/g, '\r\n');
  const query = `subject=${encodeURIComponent(theirs.review.reply(plant))}&body=${encodeURIComponent(body)}`;
  return html`<a class="target" href=${`${link}?${query}`}>${text.mail}</a>`;
}
