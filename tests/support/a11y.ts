import axe from 'axe-core';
import { expect } from 'vitest';

/** Fails with the rule names and targets when axe finds a violation inside the element (shadow roots included). */
export async function expectAccessible(el: Element, off: readonly string[] = []): Promise<void> {
  const rules = Object.fromEntries(off.map((id) => [id, { enabled: false }]));
  const { violations, passes } = await axe.run(el, { resultTypes: ['violations'], rules });
  expect(passes.length, 'axe looked at nothing').toBeGreaterThan(0);
  expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
}
