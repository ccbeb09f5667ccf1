// Registration that can be repeated: the same version again is silent, another version warns once and the first stays.
import { VERSION } from '../../version.ts';

const MARK = Symbol.for('leadwort-version');
type Marked = CustomElementConstructor & { [MARK]?: string };

/** Registers `element` under `tag`. Does nothing where there is no DOM. */
export function define(tag: string, element: CustomElementConstructor): void {
  if (typeof customElements === 'undefined') return;
  const there = customElements.get(tag) as Marked | undefined;
  if (there === undefined) {
    Object.defineProperty(element, MARK, { value: VERSION, configurable: true });
    customElements.define(tag, element);
    return;
  }
  const version = there[MARK];
  if (version === VERSION || warned.has(tag)) return;
  warned.add(tag);
  console.warn(
    `<${tag}> is already defined here by Leadwort ${version ?? '(unknown version)'}; Leadwort ${VERSION} leaves it as it is.`,
  );
}

const warned = new Set<string>();
