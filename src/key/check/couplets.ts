// Couplets against the traits: leads that contradict them, taxa that get nowhere, couplets that tell nothing apart.
import { checkWritten, type Fault, problemOf } from '../../engine/couplets/index.ts';
import type { Path } from '../path.ts';
import { list } from '../path.ts';
import { prepareKey } from '../prepared.ts';
import type { Problems } from '../problem.ts';
import type { Couplet, Key, Taxon } from '../types.ts';
import { writtenCouplets } from '../written.ts';

const FILE = 'couplets.json';
const COUPLETS: Path = ['couplets'];

/** A key whose parts go together; see checkReferences. */
export function checkCoupletsInMatrix(key: Key, problems: Problems): void {
  if (key.couplets.length === 0) return;
  const prepared = prepareKey(key);
  // Couplets by hand may ask for what is never proposed.
  const problem = problemOf(prepared.matrix, { asks: () => true });
  const { faults } = checkWritten(
    problem,
    writtenCouplets(prepared, problem, key.couplets, () => false),
  );
  for (const told of grouped(faults)) warn(key, told, problems);
}

interface Told {
  readonly fault: Fault;
  /** All taxa of which the same is to be said. */
  readonly taxa: readonly number[];
}

/** A lead that contradicts ten taxa is one fault, not ten. */
function grouped(faults: readonly Fault[]): Told[] {
  const groups = new Map<string, { fault: Fault; taxa: number[] }>();
  for (const fault of faults) {
    const { taxon, ...rest } = { taxon: undefined, ...fault };
    const name = JSON.stringify(rest);
    const group = groups.get(name) ?? { fault, taxa: [] };
    if (taxon !== undefined) group.taxa.push(taxon);
    groups.set(name, group);
  }
  return [...groups.values()];
}

function warn(key: Key, { fault, taxa }: Told, problems: Problems): void {
  const names = list(taxa.map((t) => (key.taxa[t] as Taxon).name));
  const couplet = 'couplet' in fault ? (key.couplets[fault.couplet] as Couplet) : undefined;
  const at: Path = 'couplet' in fault ? [...COUPLETS, fault.couplet] : COUPLETS;
  const of = couplet === undefined ? '' : ` of couplet ${couplet.number}`;
  switch (fault.kind) {
    case 'contradicts': {
      const { character = '', states = [] } = couplet?.leads[fault.lead] ?? {};
      problems.warn(
        FILE,
        [...at, 'leads', fault.lead],
        'contradicts',
        `below this lead${of} only taxa that may show ${character} ${list(states)}`,
        `${names}, which by the traits never do`,
      );
      return;
    }
    case 'fits-no-lead':
      problems.warn(FILE, at, 'unreachable', `a lead${of} for every taxon that comes here`, `none for ${names}`);
      return;
    case 'separates-nothing':
      problems.warn(
        FILE,
        at,
        'separates-nothing',
        `leads${of} that part some taxa`,
        'every taxon may follow every lead',
      );
      return;
    case 'unreached-couplet':
      problems.warn(FILE, at, 'unreachable', `a lead that goes on to couplet ${couplet?.number}`, 'none');
      return;
    case 'not-named':
      problems.warn(FILE, at, 'unreachable', 'leads that end with every taxon', `none for ${names}`);
      return;
    case 'unreached':
      problems.warn(
        FILE,
        at,
        'unreachable',
        'for every taxon a way that its traits allow',
        `none for ${names}: other leads turn it away`,
      );
      return;
    // Errors already: see references/couplets.ts.
    case 'same-number':
    case 'dangling':
    case 'cycle':
  }
}
