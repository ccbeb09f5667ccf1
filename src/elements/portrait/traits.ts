// A row of the matrix in words: each character and what the plant shows of it.
import { html, type TemplateResult } from 'lit';
import { type Character, formatMeasure, spreadOf, type Taxon, type Trait } from '../../key/index.ts';
import { type Saying, said } from '../shared/said.ts';

/** What a trait says; empty where the character means nothing. */
function traitOf(character: Character, trait: Trait, saying: Saying): string {
  const { words, language, units } = saying;
  if (trait.kind === 'not-applicable') return '';
  if (trait.kind === 'range') {
    const { low, high } = spreadOf(trait.range);
    const { unit } = trait.range;
    const system = unit === 'mm' ? 'metric' : units;
    const size = (value: number) => formatMeasure(value, unit, { system, locale: language });
    return words.question.between(size(low), size(high));
  }
  const of = (usual: boolean) =>
    said(
      character,
      {
        character: character.id,
        states: trait.states.filter(({ how }) => (how === 'usually') === usual).map(({ state }) => state),
        sureness: 'sure',
      },
      saying,
    );
  const [usually, sometimes] = [of(true), of(false)];
  return [usually, sometimes && words.portrait.sometimes(sometimes)].filter((part) => part !== '').join('; ');
}

/** The long description of a plant: all that the key knows of it. */
export function renderTraits(characters: readonly Character[], taxon: Taxon, saying: Saying): TemplateResult {
  const rows = characters.flatMap((character) => {
    const trait = taxon.traits.get(character.id);
    const text = trait ? traitOf(character, trait, saying) : '';
    return text === '' ? [] : [{ label: saying.say(character.label), text }];
  });
  return html`<dl>
    ${rows.map(({ label, text }) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}
  </dl>`;
}
