import type { LooseCouplet } from '../loose.ts';
import type { Couplet } from '../types.ts';

/** Leads with what they leave out filled in, and one form for where they lead. */
export function strictCouplets(couplets: readonly LooseCouplet[]): Couplet[] {
  return couplets.map(({ number, leads }) => ({
    number,
    leads: leads.map(({ also = [], to, ...lead }) => ({ ...lead, also, to: typeof to === 'string' ? [to] : to })),
  }));
}
