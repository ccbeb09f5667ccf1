// The verdict in sentences: what it may be, how sure that is, and what keeps it from being surer.
import type { Identification, Key, Taxon } from '../../key/index.ts';
import { en } from '../../words/index.ts';
import type { Paint } from '../paint.ts';
import { commonName, nameOf, taxonOf } from './names.ts';

const { odds, or } = en.common;
const A_PLANT: Readonly<Record<Taxon['status'], string>> = {
  native: 'a native plant',
  introduced: 'an introduced plant',
  invasive: 'an invasive plant',
};

export function verdictLines(key: Key, found: Identification, paint: Paint): string[] {
  return [paint('heading', sentence(key, found)), ...doubts(key, found), ...concern(found)];
}

function sentence(key: Key, { standing, outside, verdict }: Identification): string {
  const [first = ''] = verdict.taxa;
  const taxon = taxonOf(key, first);
  const share = odds(standing.find((one) => one.taxon === first)?.probability ?? 0);
  if (verdict.kind === 'outside') return `Most likely a plant that is not in this key: ${odds(outside)}.`;
  if (verdict.kind === 'open' || taxon === undefined) {
    const names = verdict.taxa.map((id) => nameOf(key, id));
    return names.length === 0 ? 'Open.' : `Open: it may be ${or(names)}. None of them leads enough.`;
  }
  const full = `${commonName(key, taxon)} (${taxon.name}), ${A_PLANT[taxon.status]} here`;
  return verdict.kind === 'settled'
    ? `Most likely ${full}: ${share}.`
    : `Leaning to ${full}: ${share}, but not settled.`;
}

/** What stands between the leading plant and a settled verdict. */
function doubts(key: Key, { standing, verdict }: Identification): string[] {
  if (verdict.kind === 'outside' || verdict.kind === 'settled') return [];
  const lead = standing[0]?.taxon ?? '';
  return verdict.doubts.flatMap((doubt): string[] => {
    if (doubt === 'weight') return ['The answers so far do not carry enough weight.'];
    if (doubt === 'natives')
      return ['A native plant may still be meant, and taking a native for an invader must not happen.'];
    return verdict.rivals
      .filter(({ told, needs }) => told.length < needs)
      .map(({ taxon, told }) => `Not yet told from ${nameOf(key, taxon)}.${telling(key, lead, taxon, told)}`);
  });
}

/** What the key says tells the two apart, the sure signs first, without those that have already spoken. */
function telling(key: Key, lead: string, rival: string, told: readonly string[]): string {
  const pair = key.lookalikes.find(({ taxa }) => taxa.includes(lead) && taxa.includes(rival));
  const signs = (pair?.separate ?? []).filter(({ character }) => !told.includes(character));
  const [best] = [...signs.filter(({ how }) => how === 'always'), ...signs];
  return best === undefined ? '' : ` ${best.words}`;
}

function concern({ verdict, concern: probability }: Identification): string[] {
  return verdict.kind === 'settled' ? [] : [`That it is one of the plants of concern: ${odds(probability)}.`];
}
