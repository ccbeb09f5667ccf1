// All that may be looked at, in the order a person walks round a plant: what the question offers out of turn.
import { type Character, type KeyAnswer, PARTS, type Part } from '../key/index.ts';
import type { Snapshot } from './state.ts';

/** `answered` and `skipped` are on the trail; `hidden` cannot be seen in this month; `dig` lies below the ground. */
export type FeatureMark = 'answered' | 'skipped' | 'hidden' | 'dig' | 'open';

export interface Feature {
  readonly character: Character;
  readonly mark: FeatureMark;
  /** What was said of it. */
  readonly answer?: KeyAnswer;
}

/** Every character that a person may be asked for, by part; parts without any are left out. */
export function features({
  prepared,
  trail,
  month,
}: Snapshot): readonly { readonly part: Part; readonly features: readonly Feature[] }[] {
  const said = new Map(trail.map((answer) => [answer.character, answer]));
  const feature = (character: Character): Feature => {
    const answer = said.get(character.id);
    if (answer) return { character, mark: 'skipped' in answer ? 'skipped' : 'answered', answer };
    if (character.effort === 'dig') return { character, mark: 'dig' };
    return { character, mark: character.months.includes(month) ? 'open' : 'hidden' };
  };
  const asked = prepared.key.characters.filter((character) => character.asked);
  return PARTS.map((part) => ({
    part,
    features: asked.filter((character) => character.part === part).map(feature),
  })).filter((group) => group.features.length > 0);
}
