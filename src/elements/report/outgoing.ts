// A report on paper, as a mail, for a map and for a table. Comes when somebody asks for one of them.
import type { Key } from '../../key/index.ts';
import type { Find } from '../../report/find/index.ts';
import { darwinCoreCsv, formWords, geoJson, mailOf, mailto, type Report, reportOf } from '../../report/forms/index.ts';
import type { Saying } from '../shared/said.ts';

export { renderPrinted } from './printed.ts';

export interface Taking {
  readonly find: Find;
  /** The key on the page. */
  readonly key: Key;
  readonly saying: Saying;
}

/** Plants of another key than the one on the page go by what the find itself says. */
const keyOf =
  ({ key }: Taking) =>
  (find: Find) =>
    find.key.id === key.id ? key : undefined;

export const toPrint = (taking: Taking): Report =>
  reportOf({
    find: taking.find,
    key: keyOf(taking)(taking.find),
    words: formWords(taking.saying.words),
    units: taking.saying.units,
  });

/** `whole` is false where a mail cannot hold everything: its text then asks for the file. */
export const toMail = (taking: Taking, to: string): { readonly url: string; readonly whole: boolean } =>
  mailto(
    to,
    mailOf({
      find: taking.find,
      key: keyOf(taking)(taking.find),
      words: formWords(taking.saying.words),
      units: taking.saying.units,
    }),
  );

export const toMap = (taking: Taking): string =>
  `${JSON.stringify(geoJson([taking.find], keyOf(taking)), undefined, 2)}\n`;
export const toTable = (taking: Taking): string => darwinCoreCsv([taking.find], keyOf(taking));
