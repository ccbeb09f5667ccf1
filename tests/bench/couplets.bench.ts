// Branching keys for made-up matrices of 100 taxa x 40 characters, a tenth of the cells with two states, a tenth unknown.
import { type Bench, digits, type Tools, table } from './bench.ts';
import type { Built } from './couplets.work.ts';

const SEEDS = [1, 2, 3] as const;
/** Leads, whether couplets alone are counted, and what that is called. */
const KINDS = [
  ['two', true, 'two leads, couplets counted'],
  ['each', true, 'a lead for each state, couplets counted'],
  ['two', false, 'two leads, wrong turns priced'],
] as const;

export default { title: 'Couplets', report } satisfies Bench;

async function report(tools: Tools): Promise<string> {
  const rows: string[][] = [];
  for (const [leads, plain, name] of KINDS)
    for (const seed of SEEDS) {
      tools.say(`couplets: ${name}, seed ${seed}`);
      const built = await tools.inNode<Built>('couplets', 'build', 100, 40, seed, leads, plain);
      rows.push([
        `${name}, seed ${seed}`,
        built.effort.toFixed(4),
        built.bound.toFixed(4),
        built.exact ? 'proved the least' : `${(100 * built.gap).toFixed(1)} %`,
        String(built.depth),
        String(built.opened),
        digits(built.seconds),
      ]);
    }
  return [
    'Expected effort to a name in glances, the bound proved under it, and the gap between them; 100 taxa x 40 characters.',
    'Budget: 5 s, within 5 % of the bound, where couplets are counted.',
    '',
    table(['key', 'effort', 'bound', 'gap', 'longest way', 'places opened', 's in Node'], rows),
  ].join('\n');
}
