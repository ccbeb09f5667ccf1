// From the tree to numbered couplets, as floras print them: plain data by index, for others to put in words.

import { type Further, furtherOf } from './further.ts';
import type { KeyProblem } from './problem.ts';
import type { KeyNode } from './tree.ts';

export interface NumberedLead {
  /** Index of the main character where the problem's characters come from, and its states in this lead. */
  readonly character: number;
  readonly states: readonly number[];
  /** More characters that split the taxa in the same way, the best first. */
  readonly further: readonly Further[];
  /** The number of the next couplet, or the taxa named here: several when nothing tells them apart. */
  readonly to: number | readonly number[];
}

export interface NumberedCouplet {
  /** From 1; the first is where everyone starts. */
  readonly number: number;
  /** The couplet that leads here, 0 for the first: what stands in brackets behind the number. */
  readonly from: number;
  /** Taxa that may come here. */
  readonly taxa: readonly number[];
  readonly leads: readonly NumberedLead[];
}

/**
 * Numbers the couplets of a key in the order in which they are read: after each couplet the one that its first lead goes
 * on to. The lead with the fewer taxa comes first, so that names come early. A key that is an end from the start has no
 * couplets.
 */
export function numbered(problem: KeyProblem, root: KeyNode): NumberedCouplet[] {
  const couplets: NumberedCouplet[] = [];
  const put = (node: KeyNode, from: number, asked: ReadonlySet<number>): number => {
    const number = couplets.length + 1;
    const leads: NumberedLead[] = [];
    couplets.push({ number, from, taxa: node.taxa.map(({ taxon }) => taxon), leads });
    const main = node.character as number;
    const further = furtherOf(problem, node, asked);
    const order = node.leads.map((_, b) => b).sort((a, b) => countOf(node, a) - countOf(node, b) || a - b);
    for (const b of order) {
      const { states, to } = node.leads[b] as KeyNode['leads'][number];
      leads.push({
        character: problem.characters[main]?.character as number,
        states,
        further: further.map((leadsOf) => leadsOf[b] as Further),
        to: to.leads.length > 0 ? put(to, number, new Set([...asked, main])) : to.taxa.map(({ taxon }) => taxon),
      });
    }
    return number;
  };
  if (root.leads.length > 0) put(root, 0, new Set());
  return couplets;
}

const countOf = (node: KeyNode, b: number): number => node.leads[b]?.to.taxa.length ?? 0;
