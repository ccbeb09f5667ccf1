// `leadwort sheet FOLDER -o FILE`: the branching key as floras print it.
import { resolve } from 'node:path';
import { htmlOf, STYLES, type Style, sheetOf } from '../report/sheet/index.ts';
import type { Command, Given } from './command.ts';
import { Refusal, UsageError } from './errors.ts';
import { writeWhole } from './files.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { readPrepared } from './prepared.ts';
import { count, kB } from './print/table.ts';

const isStyle = (word: string): word is Style => (STYLES as readonly string[]).includes(word);

async function run({ operands: [shown = ''], text }: Given, io: Io): Promise<ExitCode> {
  const style = text.get('style') ?? 'bracketed';
  if (!isStyle(style)) throw new UsageError(`--style: one of ${STYLES.join(', ')}.`, 'sheet');
  const { key } = await readPrepared(resolve(io.cwd, shown), shown);
  const language = text.get('lang') ?? key.languages[0] ?? '';
  if (!key.languages.includes(language)) throw new UsageError(`--lang: one of ${key.languages.join(', ')}.`, 'sheet');
  if (key.couplets.length === 0)
    throw new Refusal(`${shown}: this key has no couplets yet; leadwort couplets builds them`);
  const target = text.get('output') ?? '';
  const page = htmlOf(sheetOf(key, { style, language }));
  await writeWhole(resolve(io.cwd, target), target, page);
  io.stdout(`${target}: ${count(key.couplets.length, 'couplet')}, ${style}, ${kB(Buffer.byteLength(page))}\n`);
  return EXIT.done;
}

export const sheet: Command = {
  name: 'sheet',
  summary: 'makes the branching key a page to print, as floras print it',
  more: [
    'One HTML file that needs nothing else: cautions, the key, what tells look-alikes apart, and all names. Open it in a',
    'browser and print it, on A4 or Letter. `bracketed` puts the couplets one after the other by number; `indented` puts',
    'below each statement all that it leads to. An older file is replaced.',
  ],
  operands: [{ name: 'KEY', help: 'a key folder, or a bundle made of one, with couplets' }],
  options: {
    output: { type: 'string', short: 'o', value: 'FILE', help: 'the file to write, such as key.html', required: true },
    style: { type: 'string', value: 'STYLE', help: `${STYLES.join(' or ')}; bracketed when left out` },
    lang: { type: 'string', value: 'LANG', help: "one of the key's languages; its first when left out" },
  },
  run,
};
