// Going on with a session as somebody else reads: the answers stay, what they are worth changes.
import { describe, expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import { type KeyAnswer, prepareKey } from '../key/index.ts';
import { SessionError } from './error.ts';
import { SessionStore } from './store.ts';

const prepared = streambank();
const trail: readonly KeyAnswer[] = [
  { character: 'growth-form', states: ['tall-cane'], sureness: 'sure' },
  { character: 'ligule', skipped: true },
];
const started = () => new SessionStore(prepared, { month: 9, trail, observer: 'technician' });
const misread = (share: number) => prepareKey(prepared.key, { misread: new Map([['growth-form', share]]) });

describe('a session that goes on as somebody else reads', () => {
  test('keeps its trail and month, and is less sure where that person errs more', () => {
    const store = started();
    const before = store.snapshot;
    let heard = 0;
    store.subscribe(() => {
      heard++;
    });
    store.request('reading', { prepared: misread(0.45), observer: 'novice' });
    const { snapshot } = store;
    expect(heard).toBe(1);
    expect(snapshot.trail).toEqual(before.trail);
    expect(snapshot.month).toBe(9);
    expect(snapshot.observer).toBe('novice');
    expect(snapshot.identification.standing[0]?.probability).toBeLessThan(
      before.identification.standing[0]?.probability ?? 0,
    );
    store.request('withdraw', { character: 'growth-form' });
    store.request('restart', {});
    expect(store.snapshot.prepared).toBe(snapshot.prepared);
  });

  test('is back where it was when it goes on as before', () => {
    const store = started();
    const before = store.snapshot;
    store.request('reading', { prepared: misread(0.45), observer: 'novice' });
    store.request('reading', { prepared, observer: 'technician' });
    expect(store.snapshot.identification).toEqual(before.identification);
    expect(store.snapshot.walk?.path).toEqual(before.walk?.path);
  });

  test('refuses another key and an observer that the key does not have, and stays as it was', () => {
    const store = started();
    const before = store.snapshot;
    const other = prepareKey({ ...prepared.key });
    expect(() => store.request('reading', { prepared: other, observer: 'novice' })).toThrow(SessionError);
    expect(() => store.request('reading', { prepared, observer: 'nobody' })).toThrow();
    expect(store.snapshot).toBe(before);
  });
});

describe('a key made ready for somebody', () => {
  test.each([0, 1, -0.1, 2, Number.NaN])('refuses %d as a share of misreadings', (share) => {
    expect(() => misread(share)).toThrow(RangeError);
  });

  test('refuses a character that it does not have, and names it', () => {
    expect(() => prepareKey(prepared.key, { misread: new Map([['no-such', 0.1]]) })).toThrow('no-such');
  });

  test('differs in nothing but those shares', () => {
    const same = prepareKey(prepared.key, {
      misread: new Map(prepared.key.characters.map(({ id, misread }) => [id, misread])),
    });
    expect(same.matrix.spec).toEqual(prepared.matrix.spec);
    const specs = misread(0.45).matrix.spec.characters;
    const changed = specs.filter((spec, c) => spec.misread !== prepared.matrix.spec.characters[c]?.misread);
    expect(changed.map(({ id, misread }) => [id, misread])).toEqual([['growth-form', 0.45]]);
  });
});
