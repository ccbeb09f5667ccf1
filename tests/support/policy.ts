// What a strict content security policy would block.
import { expect } from 'vitest';

function* within(root: ParentNode): Generator<Element> {
  for (const element of root.querySelectorAll('*')) {
    yield element;
    if (element.shadowRoot) yield* within(element.shadowRoot);
  }
}

/** Fails when anything in the element, shadow roots included, has a style attribute, a style tag or a written handler. */
export function expectPolicyProof(element: Element): void {
  const all = [...within(element), ...(element.shadowRoot ? within(element.shadowRoot) : [])];
  expect(all.length, 'nothing was drawn').toBeGreaterThan(0);
  const blocked = all.filter(
    (one) =>
      one.hasAttribute('style') ||
      ['STYLE', 'SCRIPT'].includes(one.tagName.toUpperCase()) ||
      one.getAttributeNames().some((name) => name.startsWith('on')),
  );
  expect(blocked.map((one) => one.outerHTML.slice(0, 120))).toEqual([]);
}
