// `leadwort handout KEY TAXON -o FILE`: one plant on one page, to give away.
import { resolve } from 'node:path';
import { portraitOf } from '../drawing/portrait/index.ts';
import type { Month, Taxon } from '../key/index.ts';
import { handoutFile, handoutOf } from '../report/handout/index.ts';
import { wordsFor } from '../words/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { writeWhole } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { readPrepared } from './prepared.ts';
import { count, kB } from './print/table.ts';

/** The number of a month, of text such as `6` or, where none is given, of today. */
function monthOf(text: string | undefined, today: string): Month {
  const month = Number(text ?? today.slice(5, 7));
  if (!Number.isInteger(month) || month < 1 || month > 12) throw new UsageError('--month: from 1 to 12.', 'handout');
  return month as Month;
}

async function run({ operands: [shown = '', wanted = ''], text }: Given, io: Io): Promise<ExitCode> {
  const month = monthOf(text.get('month'), io.today);
  const { key } = await readPrepared(resolve(io.cwd, shown), shown);
  const language = text.get('lang') ?? key.languages[0] ?? '';
  if (!key.languages.includes(language)) throw new UsageError(`--lang: one of ${key.languages.join(', ')}.`, 'handout');
  const taxon = key.taxa.find(({ id }) => id === wanted);
  if (taxon === undefined) throw new Refusal(`${shown}: ${unknown(key.taxa, wanted)}`);
  const [phone, mail] = [text.get('phone'), text.get('mail')];
  const contact = { ...(phone ? { phone } : {}), ...(mail ? { mail } : {}) };
  const handout = handoutOf(key, taxon, { language, words: await wordsFor(language), contact });
  const target = text.get('output') ?? '';
  const page = handoutFile(handout, portraitOf(key, taxon, { month }));
  await writeWhole(resolve(io.cwd, target), target, page);
  const statements = handout.topics.reduce((sum, { said }) => sum + said.length, 0);
  if (statements === 0) io.stderr(`leadwort: ${shown} has no guidance on ${taxon.name}: the page says to ask.\n`);
  io.stdout(`${target}: ${taxon.name}, ${count(statements, 'statement')}, ${kB(Buffer.byteLength(page))}\n`);
  return EXIT.done;
}

/** A plant is asked for by its id; somebody who gives a name is told the id. */
function unknown(taxa: readonly Taxon[], wanted: string): string {
  const name = wanted.toLowerCase();
  const meant = taxa.filter((taxon) =>
    [taxon.name, ...taxon.synonyms, ...[...taxon.common.values()].flat()].some((one) => one.toLowerCase() === name),
  );
  return meant.length === 0
    ? `no plant has the id "${wanted}"; taxa.json has them`
    : `"${wanted}" is no id, but a name of ${meant.map(({ id }) => id).join(' and of ')}`;
}

export const handout: Command = {
  name: 'handout',
  summary: 'makes one page about one plant, to print and give away',
  more: [
    'One HTML file that needs nothing else: the plant drawn, how to tell it from its look-alikes, what to do and not to',
    'do, when, cautions, whom to ask, and where that comes from. It fits one side of A4 or Letter where the texts are as',
    'long as those of the demonstration key. Without --phone and --mail there is a line to write on. An older file is',
    'replaced.',
  ],
  operands: [
    { name: 'KEY', help: 'a key folder, or a bundle made of one' },
    { name: 'TAXON', help: 'the id of the plant, such as arundo-donax' },
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'FILE', help: 'the file to write, such as page.html', required: true },
    lang: { type: 'string', value: 'LANG', help: "one of the key's languages; its first when left out" },
    month: { type: 'string', value: 'N', help: 'month in which the plant is drawn, 1 to 12; this one when left out' },
    phone: { type: 'string', value: 'TEXT', help: 'telephone of whom to ask' },
    mail: { type: 'string', value: 'TEXT', help: 'mail address of whom to ask' },
  },
  run,
};
