// couplets.json as it is written: a lead to a line, so that a change reads as one.
import type { Couplet, Lead } from './types.ts';

/** `frame` is what stands in the file beside the couplets, such as a comment, and comes first. */
export function printCouplets(couplets: readonly Couplet[], frame: Readonly<Record<string, unknown>> = {}): string {
  const fields = Object.entries(frame).map(([name, value]) => ` ${JSON.stringify(name)}: ${JSON.stringify(value)},\n`);
  const printed = couplets.map(({ number, leads }) => {
    const lines = leads.map((lead) => `   ${JSON.stringify(loose(lead))}`);
    return `  {"number": ${number}, "leads": [\n${lines.join(',\n')}\n  ]}`;
  });
  return `{\n${fields.join('')} "couplets": [\n${printed.join(',\n')}\n ]\n}\n`;
}

/** As short as the schema lets it be. */
const loose = ({ text, character, states, also, to }: Lead) => ({
  ...(text === undefined ? {} : { text }),
  ...(character === undefined ? {} : { character, states }),
  ...(also.length === 0 ? {} : { also }),
  to: typeof to === 'object' && to.length === 1 ? to[0] : to,
});
