// Readings of the practice room as the engine learns from them: what the specimen showed is known.
import type { KnownReading } from '../../engine/learn/index.ts';
import { engineAnswers, type KeyAnswer, type PreparedKey } from '../../key/index.ts';
import { readingsIn } from '../learner/rates.ts';
import type { PracticeRecord } from '../types.ts';
import { mergeRecords } from './record.ts';

/**
 * Every reading of records of this key, each attempt once, whichever file it stands in; typed sizes and what the key no
 * longer has are left out. The order of the records changes nothing.
 */
export function readingsOfRecords(prepared: PreparedKey, records: readonly PracticeRecord[]): KnownReading[] {
  const { key, characterIndex, taxonIndex } = prepared;
  const people = new Map<string, PracticeRecord>();
  for (const record of records) {
    if (record.key.id !== key.id) continue;
    const before = people.get(record.learner.id);
    people.set(record.learner.id, before ? mergeRecords(before, record) : record);
  }
  const sorted = [...people].sort(([a], [b]) => (a < b ? -1 : 1));
  const times = Math.max(...key.observers.values());
  return sorted.flatMap(([, { attempts }]) =>
    attempts.flatMap((attempt) => {
      const taxon = taxonIndex.get(attempt.specimen.taxon);
      if (taxon === undefined) return [];
      return readingsIn(prepared, [attempt]).flatMap(({ character, shown, said }): KnownReading[] => {
        const states = key.characters[characterIndex.get(character) ?? -1]?.states ?? [];
        const index = states.findIndex(({ id }) => id === shown);
        if (index < 0 || said.length === 0 || !said.every((id) => states.some((state) => state.id === id))) return [];
        const answer: KeyAnswer = { character, states: said, sureness: 'sure' };
        return engineAnswers(prepared, [answer]).map((one) => ({ taxon, times, answer: one, shown: index }));
      });
    }),
  );
}
