// What the trial runs is what people get: the same questions in the same order, and the same verdict.
import { expect, test } from 'vitest';
import { natureOf } from '../src/command/trial/nature.ts';
import { free, NOTHING, observersFor, runPlant, Trial } from '../src/engine/trial/index.ts';
import { identify, type KeyAnswer, type Month } from '../src/key/index.ts';
import { SessionStore } from '../src/session/index.ts';
import { streambank } from './support/streambank.ts';

const prepared = streambank();
const { key } = prepared;
const trial = new Trial({ nature: natureOf(prepared), rules: key.thresholds, way: free, seed: 4 });
const [novice] = observersFor(key.observers);

test.each([0, 1, 2, 3, 4, 5, 6, 7])('plant %d is asked about as on the page', (i) => {
  if (novice === undefined) throw new Error('the key has no observer');
  const { plant, readings, book } = trial.draw(novice, i);
  const month = plant.month as Month;
  const { asked, from, verdict } = runPlant(book, free, month, readings.said);
  const store = new SessionStore(prepared, { month, observer: novice.id });
  const answers = asked.map((c): KeyAnswer => {
    const character = key.characters[c]?.id as string;
    const state = readings.said[c] as number;
    return state === NOTHING
      ? { character, skipped: true }
      : { character, states: [key.characters[c]?.states[state]?.id as string], sureness: 'sure' };
  });
  for (const answer of answers) {
    expect(store.snapshot.question?.character).toBe(answer.character);
    store.request('answer', { answer });
  }
  const found = identify(prepared, { month, observer: novice.id, answers });
  expect(found.verdict.kind).toBe(verdict.kind);
  expect(found.verdict.taxa).toEqual(verdict.taxa.map((t) => key.taxa[t]?.id));
  expect(found.outside).toBeCloseTo(from.p[prepared.matrix.outside] as number, 12);
});
