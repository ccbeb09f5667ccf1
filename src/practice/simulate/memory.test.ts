// How simulated learners forget, reckoned by hand from the formulas of the two models.
import { describe, expect, test } from 'vitest';
import { HalvingMemory, MEMORIES, PowerMemory } from './memory.ts';

const DAY = 86_400;

describe.each(Object.entries(MEMORIES))('a memory of the model %s', (_, make) => {
  test('knows nothing that was never met, and of what was met less as time goes by', () => {
    const memory = make();
    expect(memory.recall('a')).toBe(0);
    memory.meet('a');
    expect(memory.recall('b')).toBe(0);
    const seen = [memory.recall('a')];
    for (const days of [1, 1, 5, 30]) {
      memory.sleep(days);
      seen.push(memory.recall('a'));
    }
    expect(seen).toEqual([...seen].sort((a, b) => b - a));
    expect(new Set(seen).size).toBe(seen.length);
    for (const share of seen) expect(share > 0 && share <= 1).toBe(true);
  });

  test('keeps longer what was met on several days than what was met as often in a row', () => {
    const [spread, crammed] = [make(), make()];
    for (let n = 0; n < 4; n++) {
      spread.meet('a');
      spread.sleep(n < 3 ? 2 : 0);
    }
    crammed.sleep(6);
    for (let n = 0; n < 4; n++) {
      crammed.meet('a');
      crammed.wait(18);
    }
    spread.sleep(30);
    crammed.sleep(30);
    expect(spread.recall('a')).toBeGreaterThan(crammed.recall('a'));
  });
});

// P. I. Pavlik and J. R. Anderson (2005), Cognitive Science 29: 559-586, from memory: activation is the logarithm of the sum
// of age^-decay, decay is 0.217 e^(activation when met) + 0.177, recall 1 / (1 + e^((-0.704 - activation) / 0.255)), and
// time between sessions counts 0.025 of that within one.
describe('the power of the age', () => {
  const recall = (activation: number) => 1 / (1 + Math.exp((-0.704 - activation) / 0.255));

  test('decays by 0.177 after a first encounter', () => {
    const memory = new PowerMemory();
    memory.meet('a');
    memory.wait(100);
    expect(memory.recall('a')).toBeCloseTo(recall(-0.177 * Math.log(100)), 12);
  });

  test('decays faster after an encounter with what is still known, and both add up', () => {
    const memory = new PowerMemory();
    memory.meet('a');
    memory.wait(100);
    memory.meet('a');
    memory.wait(50);
    const decay = 0.217 * 100 ** -0.177 + 0.177;
    expect(memory.recall('a')).toBeCloseTo(recall(Math.log(150 ** -0.177 + 50 ** -decay)), 12);
  });

  test('takes a day between sessions for 36 minutes', () => {
    const [slept, waited] = [new PowerMemory(), new PowerMemory()];
    slept.meet('a');
    waited.meet('a');
    slept.sleep(1);
    waited.wait(36 * 60);
    expect(slept.recall('a')).toBe(waited.recall('a'));
  });
});

// The constants are ours: a half-life of 0.4 days at first, times 1 + 1.6 (1 - recall) at each encounter.
describe('the halving', () => {
  test('takes 0.4 days after a first encounter', () => {
    const memory = new HalvingMemory();
    memory.meet('a');
    memory.sleep(0.4);
    expect(memory.recall('a')).toBeCloseTo(0.5, 12);
    memory.wait(0.4 * DAY);
    expect(memory.recall('a')).toBeCloseTo(0.25, 12);
  });

  test('takes 1.8 times as long after an encounter with what was half forgotten, and no longer with what was not', () => {
    const memory = new HalvingMemory();
    memory.meet('a');
    memory.meet('a');
    memory.sleep(0.4);
    expect(memory.recall('a')).toBeCloseTo(0.5, 12);
    memory.meet('a');
    expect(memory.recall('a')).toBe(1);
    memory.sleep(0.4 * 1.8);
    expect(memory.recall('a')).toBeCloseTo(0.5, 12);
  });
});
