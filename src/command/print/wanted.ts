// Photographs still wanted, for people: one line, or one row for each.
import type { Manifest, Wanted } from '../../key/index.ts';
import { count, table } from './table.ts';

type Rows = readonly Wanted[];

/** `341 photographs still wanted: 7 of each of 12 taxa, 6 of each of 43 taxa`; undefined where nothing is. */
export function wantedLine({ wanted = [] }: Pick<Manifest, 'wanted'>): string | undefined {
  if (wanted.length === 0) return undefined;
  const ofTaxon = new Map<string, number>();
  for (const { taxon } of wanted) ofTaxon.set(taxon, (ofTaxon.get(taxon) ?? 0) + 1);
  const taxa = new Map<number, number>();
  for (const n of ofTaxon.values()) taxa.set(n, (taxa.get(n) ?? 0) + 1);
  const groups = [...taxa]
    .sort(([a], [b]) => b - a)
    .map(([n, t]) => `${n} of ${t > 1 ? 'each of ' : ''}${count(t, 'taxon', 'taxa')}`);
  return `${count(wanted.length, 'photograph')} still wanted: ${groups.join(', ')}`;
}

const months = (season: Wanted['season']): string => (typeof season === 'string' ? season : season.join(' '));

export function wantedTable(wanted: Rows): string {
  if (wanted.length === 0) return 'No photographs are wanted.\n';
  const head = ['taxon', 'organ', 'months', 'angle', 'scale', 'why'];
  const rows = wanted.map((one) => [one.taxon, one.organ, months(one.season), one.angle, one.scale, one.why ?? '']);
  return `\n${table([head, ...rows]).join('\n')}\n`;
}
