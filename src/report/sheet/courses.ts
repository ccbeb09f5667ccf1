// In which order the leads of a key are printed, and where each leads.
import type { Couplet } from '../../key/index.ts';
import type { Style } from './sheet.ts';

export interface Row {
  readonly couplet: Couplet;
  /** Which of its leads, from 0. */
  readonly lead: number;
  readonly depth: number;
  readonly from: readonly number[];
  /** undefined: what follows stands right below. */
  readonly to: number | readonly string[] | undefined;
}

/** The couplets that can be reached from the first, and their leads in the order of the layout. */
export function coursesOf(all: readonly Couplet[], style: Style): { couplets: Couplet[]; rows: Row[] } {
  const [first] = all;
  if (first === undefined) return { couplets: [], rows: [] };
  const rows = indented(first, new Map(all.map((couplet) => [couplet.number, couplet])));
  const reached = new Set(rows.map(({ couplet }) => couplet));
  const others = all.filter((couplet) => couplet !== first && reached.has(couplet));
  const couplets = [first, ...others.sort((a, b) => a.number - b.number)];
  return { couplets, rows: style === 'indented' ? rows : bracketed(couplets) };
}

function bracketed(couplets: readonly Couplet[]): Row[] {
  const from = new Map<number, Set<number>>();
  for (const { number, leads } of couplets)
    for (const { to } of leads) if (typeof to === 'number') from.set(to, (from.get(to) ?? new Set()).add(number));
  return couplets.flatMap((couplet) =>
    couplet.leads.map(({ to }, lead) => ({
      couplet,
      lead,
      depth: 0,
      from: [...(from.get(couplet.number) ?? [])].sort((a, b) => a - b),
      to,
    })),
  );
}

/** Depth first. A couplet that several leads lead to stands below the first of them; the others name its number. */
function indented(first: Couplet, byNumber: ReadonlyMap<number, Couplet>): Row[] {
  const rows: Row[] = [];
  const printed = new Set([first]);
  const open = [{ couplet: first, lead: 0 }];
  for (let here = open.at(-1); here !== undefined; here = open.at(-1)) {
    const { couplet, lead } = here;
    const to = couplet.leads[lead]?.to;
    if (to === undefined) {
      open.pop();
      continue;
    }
    here.lead += 1;
    const next = typeof to === 'number' ? byNumber.get(to) : undefined;
    const below = next !== undefined && !printed.has(next);
    rows.push({ couplet, lead, depth: open.length - 1, from: [], to: below ? undefined : to });
    if (below) {
      printed.add(next);
      open.push({ couplet: next, lead: 0 });
    }
  }
  return rows;
}
