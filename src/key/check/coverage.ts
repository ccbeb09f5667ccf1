import { list } from '../path.ts';
import type { Problems } from '../problem.ts';
import type { Character, Key, Taxon } from '../types.ts';

const percent = (share: number) => `${Math.round(100 * share)} %`;

/** Taxa of which little is known, characters that are known of few taxa, and what rests on memory. */
export function checkCoverage(
  key: Key,
  { knownOfTaxon, knownOfCharacter }: { readonly knownOfTaxon: number; readonly knownOfCharacter: number },
  problems: Problems,
): void {
  key.taxa.forEach((taxon, i) => {
    const applying = key.characters.filter((character) => applies(character, taxon));
    const unknown = applying.filter(({ id }) => !taxon.traits.has(id));
    const known = applying.length - unknown.length;
    if (applying.length === 0 || known >= knownOfTaxon * applying.length) return;
    problems.warn(
      'taxa.json',
      ['taxa', i, 'traits'],
      'thin-taxon',
      `at least ${percent(knownOfTaxon)} of the characters that apply to ${taxon.name}`,
      `${known} of ${applying.length}; unknown are ${list(unknown.map(({ id }) => id))}`,
    );
  });
  key.characters.forEach((character, i) => {
    const applying = key.taxa.filter((taxon) => applies(character, taxon));
    const known = applying.filter(({ traits }) => traits.has(character.id)).length;
    if (known > 0 && known >= knownOfCharacter * applying.length) return;
    problems.warn(
      'characters.json',
      ['characters', i],
      'thin-character',
      `${character.id} known of at least ${percent(knownOfCharacter)} of the taxa that it applies to`,
      `${known} of ${applying.length}`,
    );
  });
  // That a ligule means nothing on a lily is seldom written anywhere.
  const traits = key.taxa.flatMap(({ traits }) => [...traits.values()].filter(({ kind }) => kind !== 'not-applicable'));
  const remembered = traits.filter(({ source }) => source.every((id) => key.sources.get(id)?.kind === 'memory'));
  if (remembered.length === 0) return;
  problems.warn(
    'taxa.json',
    ['taxa'],
    'from-memory',
    'traits that were read in a source',
    `${remembered.length} of ${traits.length} from memory alone (${percent(remembered.length / traits.length)})`,
  );
}

/** Whether the character may mean something for the taxon, by what is known of it. */
function applies({ id, applies: rule }: Character, { traits }: Taxon): boolean {
  if (traits.has(id)) return traits.get(id)?.kind !== 'not-applicable';
  const deciding = rule && traits.get(rule.character);
  return deciding?.kind !== 'states' || deciding.states.some(({ state }) => rule?.states.includes(state));
}
