// Whether the parts of a key go together: ids that exist, kinds that match, shares and thresholds that make sense.
import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';
import { checkCharacters } from './characters.ts';
import { checkCouplets } from './couplets.ts';
import { checkFrame } from './frame.ts';
import { checkGuidance } from './guidance.ts';
import { indexOf } from './ids.ts';
import { checkLookalikes } from './lookalikes.ts';
import { checkTaxa } from './taxa.ts';

/** Notes every error in how the parts of the key refer to each other. */
export function checkReferences(key: Key, problems: Problems): void {
  const ids = indexOf(key);
  checkFrame(key, problems);
  checkCharacters(key, ids, problems);
  checkTaxa(key, ids, problems);
  checkLookalikes(key, ids, problems);
  checkCouplets(key, ids, problems);
  checkGuidance(key, ids, problems);
}
