import { describe, expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import { SHARE } from '../key/prepared.ts';
import { stateOrder } from './order.ts';
import { SessionStore } from './store.ts';

const prepared = streambank();
const identification = (states?: string[]) =>
  new SessionStore(prepared, {
    month: 9,
    trail: states ? [{ character: 'growth-form', states, sureness: 'sure' }] : [],
  }).snapshot.identification;

describe('the order of answers', () => {
  test('holds every state once', () => {
    for (const { id, states } of prepared.key.characters)
      expect([...stateOrder(prepared, identification(), id)].sort()).toEqual(states.map((state) => state.id).sort());
  });

  test('of scales and measures is the key’s own', () => {
    for (const { id, kind, states } of prepared.key.characters)
      if (kind !== 'choice')
        expect(stateOrder(prepared, identification(['grass']), id)).toEqual(states.map((state) => state.id));
  });

  test('begins with what the likeliest plants show, by the traits as the key’s files have them', () => {
    const { standing } = identification(['tall-cane']);
    const known = prepared.key.characters.find(({ id }) => id === 'growth-form');
    const weight = new Map(known?.states.map(({ id }) => [id, 0]));
    for (const { taxon, probability } of standing) {
      const trait = prepared.key.taxa.find(({ id }) => id === taxon)?.traits.get('growth-form');
      if (trait?.kind !== 'states') throw new Error(`${taxon} has no growth form`);
      const total = trait.states.reduce((sum, { how }) => sum + SHARE[how], 0);
      for (const { state, how } of trait.states)
        weight.set(state, (weight.get(state) ?? 0) + (probability * SHARE[how]) / total);
    }
    const order = stateOrder(prepared, identification(['tall-cane']), 'growth-form');
    expect(order[0]).toBe('tall-cane');
    const weights = order.map((id) => weight.get(id) as number);
    weights.slice(1).forEach((one, i) => {
      expect(one).toBeLessThanOrEqual((weights[i] as number) + 1e-12);
    });
  });
});
