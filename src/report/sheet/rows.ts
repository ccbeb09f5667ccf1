// What every drawing of the sheet's leads needs: their labels, their sentences, their steps.
import type { SheetLead } from './sheet.ts';
import { MOST_STEPS } from './style.ts';

/** `3b`: the couplet's number, and a letter for the lead. */
export const labelOf = ({ couplet, lead }: SheetLead): string => `${couplet}${letter(lead)}`;

/** 0 is a, 25 z, 26 aa. */
const letter = (n: number): string =>
  (n < 26 ? '' : letter(Math.floor(n / 26) - 1)) + String.fromCharCode(97 + (n % 26));

export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** Classes of the style sheet: how far in a lead stands, and whether what follows stands below it. */
export function classesOf({ depth, to }: SheetLead): string {
  const step = depth > 0 ? ` step-${Math.min(depth, MOST_STEPS)}` : '';
  return `lead${step}${to === undefined ? ' below' : ''}`;
}

/** Leads by couplet, as the bracketed layout sets them together. */
export function coupletsOf(leads: readonly SheetLead[]): SheetLead[][] {
  const couplets = new Map<number, SheetLead[]>();
  for (const lead of leads) couplets.set(lead.couplet, [...(couplets.get(lead.couplet) ?? []), lead]);
  return [...couplets.values()];
}
