// A report as a mail: everything in the text, and an address that opens it where the person writes mail.

import { type FormOptions, type Report, reportOf } from './told.ts';
import type { FormWords } from './words.ts';

export interface Mail {
  readonly subject: string;
  /** All of the report, lines ended by line feeds. */
  readonly body: string;
  /** The lead, when and where, and which file to attach. */
  readonly short: string;
}

/** A name for the file that holds the whole find. */
export const fileName = ({ find }: Pick<FormOptions, 'find'>): string => `find-${find.id.slice(0, 8)}.json`;

export function mailOf(options: FormOptions): Mail {
  const report = reportOf(options);
  const { own }: FormWords = options.words;
  const { title, lead, cautions, sections, plant, date } = report;
  const where = sections.filter(({ id }) => id === 'where' || id === 'about');
  return {
    subject: oneLine(own.subject(plant, date)),
    body: [title, lead.join('\n'), ...listed(cautions), ...sections.map(sectionText)].join('\n\n'),
    short: [title, lead.join('\n'), ...where.map(sectionText), own.attach(fileName(options))].join('\n\n'),
  };
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

const listed = ({ heading, items }: Report['cautions']): string[] =>
  items.length === 0 ? [] : [[heading.toLocaleUpperCase(), ...items.map((item) => `- ${oneLine(item)}`)].join('\n')];

function sectionText({ heading, facts, table, notes, photos }: Report['sections'][number]): string {
  return [
    heading.toLocaleUpperCase(),
    ...facts.map(([label, value]) => `${label}: ${value}`),
    ...(table?.rows ?? []).map(([first = '', ...rest]) => {
      const told = rest.filter((cell) => cell !== '').map(oneLine);
      return `- ${oneLine(first)}${told.length > 0 ? `: ${told.join(', ')}` : ''}`;
    }),
    ...photos.map(({ photo, title }, i) => `${i + 1}. ${oneLine(title)} (${photo.width} x ${photo.height})`),
    ...notes,
  ].join('\n');
}

/** Longest address that is handed to a mail program; some cut longer ones without a word (ours). */
export const MOST_ADDRESS = 1900;

/** Half a surrogate pair is no character, and cannot be put into an address. */
const encoded = (text: string): string =>
  encodeURIComponent(text.replace(/\p{Cs}/gu, '\uFFFD').replace(/\r?\n/g, '\r\n'));

/**
 * An address that opens the mail (RFC 6068: everything percent-encoded, lines broken by %0D%0A). `whole` is false where
 * the text would be too long: then the short text stands in it, which says that the file must be attached, and only where
 * even that is too long, the subject alone.
 */
export function mailto(to: string, { subject, body, short }: Mail): { readonly url: string; readonly whole: boolean } {
  const address = encoded(to.trim()).replaceAll('%40', '@');
  const start = `mailto:${address}?subject=${encoded(subject)}`;
  const [whole, less] = [body, short].map((text) => `${start}&body=${encoded(text)}`) as [string, string];
  if (whole.length <= MOST_ADDRESS) return { url: whole, whole: true };
  return { url: less.length <= MOST_ADDRESS ? less : start, whole: false };
}
