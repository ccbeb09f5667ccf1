// What a scheduled item is called.

import { parseItem } from '../../practice/index.ts';
import { COVER } from '../../report/find/cover.ts';
import type { CoverClass } from '../../report/find/index.ts';
import type { View } from './feedback.ts';
import { ownName } from './plant-name.ts';

export function itemName({ prepared, saying, words }: View, item: string): string {
  const parsed = parseItem(item);
  const plant = (id: string) => ownName(prepared, id, saying.language);
  if (parsed?.of === 'taxon') return plant(parsed.taxon);
  if (parsed?.of === 'pair') return words.crew.pair(...(parsed.pair.map(plant) as [string, string]));
  if (parsed?.of === 'character')
    return saying.say(prepared.key.characters[prepared.characterIndex.get(parsed.character) ?? -1]?.label ?? item);
  return parsed ? words.cover(...COVER[Number(parsed.cover) as CoverClass]) : item;
}
