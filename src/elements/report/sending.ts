// The sending: what is still needed, what came of it, and the other ways to keep or hand on a report.
import { html, nothing, type TemplateResult } from 'lit';
import type { Lack } from '../../report/find/index.ts';
import type { Outcome, Receipt } from '../../report/send/index.ts';
import { type Desk, section } from './desk.ts';
import { fieldAt } from './faults.ts';
import { kilobytes } from './photos.ts';

export type Way = 'mail' | 'print' | 'file' | 'map' | 'table';
/** What the last press came to: still at work, a file that is no report, a part that did not come. */
export type Note = 'sending' | 'late' | 'check' | 'copied' | 'copy-failed';

export interface SendDesk {
  readonly endpoint: boolean;
  readonly lacking: readonly Lack[];
  readonly note: Note | undefined;
  readonly outcome: Outcome | undefined;
  /** Kept with the draft: that it arrived once. */
  readonly receipt: Receipt | undefined;
  /** It was changed after it arrived. */
  readonly stale: boolean;
  /** It waits, and goes by itself. */
  readonly queued: boolean;
  readonly send: () => void;
  readonly stop: () => void;
  readonly take: (way: Way) => void;
  readonly copy: (text: string) => void;
}

export function renderSending(desk: Desk, sending: SendDesk): TemplateResult {
  const { words, saying } = desk;
  const { out } = words;
  const { endpoint, lacking, note, outcome, receipt, stale, send, stop, take } = sending;
  const things = saying.words.common.list(lacking.map((one) => out.lack[one]));
  const way = (one: Way, label: string) =>
    html`<button class="outline" type="button" data-way=${one} @click=${() => take(one)}>${label}</button>`;
  const fault: Partial<Record<Note, string>> = { late: out.late, check: out.check };
  return section(
    desk,
    'out',
    out.heading,
    undefined,
    html`<p class="lacking" role="status">${lacking.length > 0 ? out.lacking(things) : nothing}</p>
      ${
        endpoint && (!receipt || stale)
          ? html`<button class="solid send" type="button" ?disabled=${note === 'sending'} @click=${send}>${out.send}</button>`
          : nothing
      }
      <p class="wrong" role="alert">${(note && fault[note]) ?? nothing}</p>
      <div role="status" class="news">
        ${note === 'sending' ? html`<p>${out.sending} <button class="plain" type="button" @click=${stop}>${out.stop}</button></p>` : nothing}
        ${note !== 'sending' && outcome && outcome.state !== 'sent' ? renderNotSent(desk, outcome, sending) : nothing}
      </div>
      ${receipt ? renderReceipt(desk, sending, receipt) : nothing}
      <div class="keep">
        <div>${way('mail', out.mail)}<p class="quiet">${out.mailHelp}</p></div>
        <div>${way('print', out.print)}</div>
        <div>${way('file', out.file)}<p class="quiet">${out.fileHelp}</p></div>
      </div>
      <details>
        <summary>${out.forOffice}</summary>
        <div class="keep">${way('map', 'GeoJSON')} ${way('table', 'Darwin Core CSV')}</div>
      </details>`,
  );
}

function renderNotSent(
  { words }: Desk,
  outcome: Exclude<Outcome, { state: 'sent' }>,
  { queued, send: again }: SendDesk,
): TemplateResult {
  if (outcome.state === 'waiting')
    return html`<div class="waiting" part="waiting" tabindex="-1">
      <p class="said">${words.waiting.heading}</p>
      <p>${words.waiting.reason[outcome.reason]} ${queued ? words.waiting.queued : nothing} ${words.waiting.safe}</p>
      <button class="outline" type="button" @click=${again}>${words.waiting.again}</button>
    </div>`;
  const { refused } = words;
  return html`<div class="refused" part="refused" tabindex="-1">
    <p class="said">${refused.heading}</p>
    ${outcome.words && !outcome.moved ? nothing : html`<p>${outcome.moved ? refused.moved : refused.status(outcome.status)}</p>`}
    ${
      outcome.words || outcome.faults.length > 0
        ? html`<p>${refused.said} ${outcome.words}</p>
          <ul>${outcome.faults.map(({ path, words: text }) => html`<li>${text}${path && !fieldAt(path) ? html` <code>${path}</code>` : nothing}</li>`)}</ul>`
        : nothing
    }
    <p>${refused.safe}</p>
  </div>`;
}

/** One line each: what stands on the screen is what is copied. */
export function receiptLines({ words, saying, draft }: Desk, receipt: Receipt): [label: string, text: string][] {
  const when = new Intl.DateTimeFormat(saying.language, { dateStyle: 'long', timeStyle: 'short' });
  return [
    [words.receipt.number, receipt.number ?? words.receipt.noNumber],
    [words.receipt.when, when.format(new Date(receipt.when))],
    [words.receipt.sent, words.receipt.what(receipt.photos, kilobytes(receipt.bytes, saying.language))],
    [words.receipt.id, draft.id],
  ];
}

function renderReceipt(desk: Desk, { stale, copy, note }: SendDesk, receipt: Receipt): TemplateResult {
  const { words } = desk;
  const lines = receiptLines(desk, receipt);
  const text = lines.map(([label, one]) => `${label}: ${one}`).join('\n');
  return html`<div class="receipt" part="receipt">
    <p class="said" tabindex="-1" id="arrived">${words.receipt.heading}</p>
    <dl>${lines.map(([label, one]) => html`<div><dt>${label}</dt><dd>${one}</dd></div>`)}</dl>
    ${receipt.at ? html`<p><a href=${receipt.at} target="_blank" rel="noopener noreferrer">${words.receipt.see}</a></p>` : nothing}
    <button class="outline" type="button" @click=${() => copy(text)}>${words.receipt.copy}</button>
    <p role="status">${note === 'copied' ? words.out.copied : note === 'copy-failed' ? words.out.copyFailed : nothing}</p>
    ${stale ? html`<p class="warn">${words.receipt.changed}</p>` : html`<p>${words.receipt.next}</p>`}
  </div>`;
}
