// What a plant shows of a character, held against what a person saw.
import type { KeyAnswer } from './answers.ts';
import { type Range, spreadOf } from './range/index.ts';
import type { Character, Frequency, Taxon } from './types.ts';
import { toCanonical } from './units.ts';

/** What one plant shows of a character; `seen`: the person's answer names it, or falls within it. */
export type Shows =
  | {
      readonly kind: 'states';
      readonly states: readonly { readonly state: string; readonly how: Frequency; readonly seen: boolean }[];
    }
  | {
      readonly kind: 'range';
      readonly range: Range;
      /** Id of the class of size in the middle of what is usual. */
      readonly middle: string | undefined;
      readonly seen: boolean;
    }
  | { readonly kind: 'absent' }
  | { readonly kind: 'unknown' };

export function showsOf(taxon: Taxon, character: Character, answer: KeyAnswer | undefined): Shows {
  const trait = taxon.traits.get(character.id);
  if (trait === undefined) return { kind: 'unknown' };
  if (trait.kind === 'not-applicable') return { kind: 'absent' };
  if (trait.kind === 'states') {
    const ticked = answer && 'states' in answer ? answer.states : [];
    return { kind: 'states', states: trait.states.map((one) => ({ ...one, seen: ticked.includes(one.state) })) };
  }
  const unit = character.unit ?? 'count';
  const { low, high, min = low, max = high } = spreadOf(trait.range, unit);
  const typical = Math.sqrt(low * high);
  const middle = character.states.find(
    ({ from = 0, to = Number.POSITIVE_INFINITY }) => typical >= from && typical < to,
  );
  return {
    kind: 'range',
    range: trait.range,
    middle: middle?.id,
    seen: answer !== undefined && isWithin(answer, character, min, max),
  };
}

/** Whether a size that was typed, or a class that was ticked, reaches into the range from `min` to `max`. */
function isWithin(answer: KeyAnswer, { states, unit = 'count' }: Character, min: number, max: number): boolean {
  if ('skipped' in answer) return false;
  if ('value' in answer) {
    const value = toCanonical(answer.value, answer.unit, unit);
    return value >= min && value <= max;
  }
  return states.some(
    ({ id, from = 0, to = Number.POSITIVE_INFINITY }) => answer.states.includes(id) && from < max && to > min,
  );
}
