// The key as a tree of plain data.
import type { Workings } from './exact.ts';
import type { Place } from './places.ts';
import { EACH } from './splits.ts';

/** A taxon at a place: its index, and the weight of those of its plants that come here. */
export interface Here {
  readonly taxon: number;
  readonly weight: number;
}

/** A place of the key: a couplet, or an end where `leads` is empty. */
export interface KeyNode {
  readonly taxa: readonly Here[];
  readonly weight: number;
  /** Index into the problem's characters; absent at an end. */
  readonly character?: number;
  /** Cost of this couplet, weight x glances. */
  readonly cost: number;
  readonly leads: readonly { readonly states: readonly number[]; readonly to: KeyNode }[];
}

/** The best key known from `place` on. */
export function treeOf(work: Workings, place: Place): KeyNode {
  const { places } = work;
  const taxa = Array.from({ length: place.count }, (_, i) => ({
    taxon: places.taxa[place.at + i] as number,
    weight: places.weight[place.at + i] as number,
  }));
  const split = places.named(place) ? undefined : work.of(place).split;
  if (split === undefined) return { taxa, weight: place.weight, cost: 0, leads: [] };
  const { character, lead, shown } = split;
  const cost = work.splitter.cost(place, character, lead);
  const states = lead === EACH ? bitsOf(shown).map((s) => [s]) : [bitsOf(shown & ~lead), bitsOf(lead)];
  const mark = places.mark();
  const below = work.split(place, character, lead, shown).map((branch) => treeOf(work, branch));
  places.cut(mark);
  const leads = below.map((to, b) => ({ states: states[b] as number[], to }));
  return { taxa, weight: place.weight, character, cost, leads };
}

const bitsOf = (bits: number): number[] =>
  Array.from({ length: 31 }, (_, s) => s).filter((s) => (bits & (1 << s)) !== 0);

/** Expected cost from this place on, weight x glances. */
export const costOf = (node: KeyNode): number => node.leads.reduce((sum, { to }) => sum + costOf(to), node.cost);

/** The ends below a place, from left to right. */
export const endsOf = (node: KeyNode): KeyNode[] =>
  node.leads.length === 0 ? [node] : node.leads.flatMap(({ to }) => endsOf(to));

/** How long its ways are, in couplets, and which taxa it leaves together. */
export function shapeOf(root: KeyNode): { depth: number; couplets: number; together: number[][] } {
  const depthOf = (node: KeyNode): number => Math.max(0, ...node.leads.map(({ to }) => 1 + depthOf(to)));
  const asked = (node: KeyNode): number =>
    node.leads.reduce((sum, { to }) => sum + asked(to), node.leads.length > 0 ? node.weight : 0);
  const sets = new Map<string, number[]>();
  for (const { taxa } of endsOf(root)) {
    const set = taxa.map(({ taxon }) => taxon);
    if (set.length > 1) sets.set(set.join(), set);
  }
  const together = [...sets.values()].sort((a, b) => {
    const k = a.findIndex((taxon, i) => taxon !== b[i]);
    return k < 0 ? -1 : (a[k] as number) - (b[k] ?? -1);
  });
  return { depth: depthOf(root), couplets: asked(root) / root.weight, together };
}
