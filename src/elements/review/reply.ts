// The answer to who reported, prepared as mail; the specialist sends it.
import { html, type TemplateResult } from 'lit';
import { mailLink } from '../../guidance/index.ts';
import { type Find, PHOTOS } from '../../report/find/index.ts';
import type { ReportWords } from '../../words/report/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';

export function renderReply(
  { contact, consent, review }: Find,
  text: ReviewWords,
  { photos: { wants } }: ReportWords,
  nameOf: (id: string) => string,
): TemplateResult {
  const link = consent.contact ? mailLink(contact?.email ?? '') : undefined;
  if (!link || !review) return html`<p>${text.noMail}</p>`;
  const plant = review.taxon === undefined ? text.status[review.status] : nameOf(review.taxon);
  const wanted = (review.wanted ?? []).map((id) => {
    const kind = PHOTOS.find((one) => one === id);
    return kind ? wants[kind] : id;
  });
  const body = text.replyText(`${plant}.`, review.by, review.remarks ?? '', wanted).replace(/\n/g, '\r\n');
  const query = `subject=${encodeURIComponent(text.reply(plant))}&body=${encodeURIComponent(body)}`;
  return html`<a class="target" href=${`${link}?${query}`}>${text.mail}</a>`;
}
