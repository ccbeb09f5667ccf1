// Readings of the practice room as the engine learns from them: what the specimen showed is known.
import type { KnownReading } from '../../engine/learn/index.ts';
import { engineAnswers, type KeyAnswer, type PreparedKey } from '../../key/index.ts';
import { readingsIn } from '../learner/rates.ts';
import type { PracticeRecord } from '../types.ts';
import { peopleIn } from './merge.ts';

/**
 * Every reading of records of this key, each attempt once, whichever file it stands in; typed sizes and what the key no
 * longer has are left out. The order of the records changes nothing.
 */
export function readingsOfRecords(prepared: PreparedKey, records: readonly PracticeRecord[]): KnownReading[] {
  const { key, characterIndex, taxonIndex } = prepared;
  // A file does not say who its learner is. They read as the key's least trained observers do: right as a start. Who has
  // learnt since slips less often, so that their right readings count for more than they should, and the rates that are
  // proposed come out low rather than high.
  const times = Math.max(...key.observers.values());
  return peopleIn(key.id, records).people.flatMap(({ attempts }) =>
    attempts.flatMap((attempt) => {
      const taxon = taxonIndex.get(attempt.specimen.taxon);
      if (taxon === undefined) return [];
      return readingsIn(prepared, [attempt]).flatMap(({ character, shown, said, sureness }): KnownReading[] => {
        const states = key.characters[characterIndex.get(character) ?? -1]?.states ?? [];
        const index = states.findIndex(({ id }) => id === shown);
        if (index < 0 || said.length === 0 || !said.every((id) => states.some((state) => state.id === id))) return [];
        const answer: KeyAnswer = { character, states: said, sureness };
        return engineAnswers(prepared, [answer]).map((one) => ({ taxon, times, answer: one, shown: index }));
      });
    }),
  );
}
