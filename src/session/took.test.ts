import { expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import { SessionStore } from './store.ts';

function timed() {
  const clock = { now: 5000 };
  const store = new SessionStore(streambank(), { month: 7, clock: () => clock.now });
  const say = (character: string, state: string, after: number) => {
    clock.now += after;
    store.request('answer', { answer: { character, states: [state], sureness: 'sure' } });
  };
  return { clock, store, say, took: () => [...store.snapshot.took] };
}

test('each answer is told with the seconds since what was done before it', () => {
  const { clock, store, say, took } = timed();
  say('growth-form', 'tall-cane', 4000);
  clock.now += 1500;
  store.request('ask', { character: 'light' });
  say('light', 'full-sun', 2500);
  clock.now += 500;
  store.request('answer', { answer: { character: 'sap', skipped: true } });
  expect(took()).toEqual([
    ['growth-form', 4],
    ['light', 2.5],
    ['sap', 0.5],
  ]);
});

test('an answer that is changed tells the time of the last look; one taken back tells none', () => {
  const { clock, store, say, took } = timed();
  say('growth-form', 'tall-cane', 4000);
  say('light', 'full-sun', 2000);
  say('growth-form', 'grass', 9000);
  expect(took()).toEqual([
    ['growth-form', 9],
    ['light', 2],
  ]);
  clock.now += 1000;
  store.request('withdraw', { character: 'light' });
  expect(took()).toEqual([['growth-form', 9]]);
  store.request('restart', {});
  expect(took()).toEqual([]);
});

test('a trail that is opened again keeps its times, and without a clock nothing is timed', () => {
  const { store } = timed();
  const trail = [{ character: 'light', states: ['full-sun'], sureness: 'sure' }] as const;
  const again = new SessionStore(store.snapshot.prepared, { month: 7, trail, took: new Map([['light', 7]]) });
  again.request('answer', { answer: { character: 'sap', skipped: true } });
  expect([...again.snapshot.took]).toEqual([['light', 7]]);
});
