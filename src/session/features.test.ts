import { expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import { features } from './features.ts';
import { observersOf, SessionStore } from './store.ts';

const prepared = streambank();
const marks = (store: SessionStore) =>
  new Map(features(store.snapshot).flatMap((group) => group.features.map((one) => [one.character.id, one.mark])));

test('all that may be looked at is listed once, in the order a person walks round a plant', () => {
  const groups = features(new SessionStore(prepared, { month: 7 }).snapshot);
  expect(groups.map(({ part }) => part).slice(0, 3)).toEqual(['whole', 'place', 'leaf']);
  const listed = groups.flatMap((group) => group.features.map(({ character }) => character.id));
  const asked = prepared.key.characters.filter((one) => one.asked).map(({ id }) => id);
  expect([...listed].sort()).toEqual([...asked].sort());
});

test('each says whether it was answered, passed over, is out of season, or lies below the ground', () => {
  const store = new SessionStore(prepared, { month: 1 });
  store.request('answer', { answer: { character: 'light', states: ['full-sun'], sureness: 'sure' } });
  store.request('answer', { answer: { character: 'sap', skipped: true } });
  expect(['light', 'sap', 'flower-colour', 'underground', 'leaf-shape'].map((id) => marks(store).get(id))).toEqual([
    'answered',
    'skipped',
    'hidden',
    'dig',
    'open',
  ]);
});

test('whoever does not say who is looking is taken for the one who misreads most, however the file is sorted', () => {
  const observers = new Map([
    ['botanist', 0.25],
    ['novice', 1],
    ['technician', 0.5],
  ]);
  const key = { ...prepared.key, observers };
  expect(observersOf(key)).toEqual(['novice', 'technician', 'botanist']);
  expect(new SessionStore({ ...prepared, key }, { month: 7 }).snapshot.observer).toBe('novice');
});
