// What plants are called in a review.
import type { PreparedKey } from '../../key/index.ts';
import type { Find } from '../../report/find/index.ts';
import { taxonIn } from '../../report/review/index.ts';
import type { ReviewWords } from '../../words/review/index.ts';
import { plantName } from '../shared/plant-name.ts';

/**
 * Names by the id of a taxon, in the language of the words: the name in a sentence, with the scientific one behind it
 * where `both`; of what the key lacks, the name in the find.
 */
export const namesIn =
  (prepared: PreparedKey, find: Find, { language, outside }: ReviewWords, both: boolean) =>
  (id: string): string => {
    if (id === 'outside') return outside;
    const taxon = taxonIn(prepared, id);
    if (taxon === undefined) return find.standing.find((one) => one.taxon === id)?.name ?? id;
    const { text } = plantName(prepared.key, taxon, language);
    return text === taxon.name || !both ? text : `${text} (${taxon.name})`;
  };
