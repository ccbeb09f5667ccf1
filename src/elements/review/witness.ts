// Whoever reported, as the comparison shows it: what they said of each feature, and which photograph could show it.
import { html, nothing } from 'lit';
import { type Find, PHOTOS } from '../../report/find/index.ts';
import type { Dossier, Weighed } from '../../report/review/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import type { Witness } from '../comparison/witness.ts';
import { type Saying, said } from '../shared/said.ts';
import type { Texts } from './texts.ts';

/** How sure the person was, and how long it took; empty where neither is known. */
export function aboutOf({ answer }: Weighed, text: ReviewWords): string {
  const about = [
    answer.sureness && text.sureness[answer.sureness],
    answer.seconds === undefined ? undefined : text.seconds(answer.seconds),
  ].filter((one) => one !== undefined);
  return about.length > 0 ? ` (${about.join(', ')})` : '';
}

/** An answer in the reader's language; as the person saw it where the key at hand does not have it. */
export function answerOf({ answer, known }: Weighed, saying: Saying): string {
  if (answer.skipped) return saying.words.trail.skipped;
  return known ? said(known.character, known.answer, saying) : answer.words;
}

export function witnessOf(find: Find, { rows, answers }: Dossier, texts: Texts, saying: Saying): Witness {
  const { review, report } = texts;
  const own = saying.words.comparison;
  return {
    month: find.month,
    answers,
    saw: review.saw,
    answered: ({ character, pairs }) => {
      const row = rows.find(({ answer }) => answer.character === character.id);
      if (!row) return pairs.length > 0 ? html`<p class="quiet">${review.notAsked}</p>` : nothing;
      return html`<p class=${row.answer.skipped ? 'quiet' : 'answer'}>${review.answered(answerOf(row, saying))}${aboutOf(row, review)}</p>`;
    },
    looking: ({ character: { part }, looking }) => {
      if (looking === 'season') return own.looking.season(saying.words.common.months[find.month]);
      if (looking === 'dig' || looking === 'fact') return own.looking[looking];
      const kind = PHOTOS.find((one) => one === part);
      const sent = find.photos.some(({ wants }) => wants === kind);
      const photo = kind ? review[sent ? 'photoSent' : 'photoCould'](report.photos.wants[kind]) : review.photoNone;
      return looking === 'now' || looking === 'careful' ? photo : `${own.looking[looking]}. ${photo}`;
    },
  };
}
