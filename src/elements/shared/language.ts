// The language that holds at an element, and when it changes.

/** The trees an element stands in, from its own outwards. */
function* rootsOf(element: Element): Generator<Node> {
  let root = element.getRootNode();
  while (true) {
    yield root;
    if (!(root instanceof ShadowRoot)) return;
    root = root.host.getRootNode();
  }
}

/** Value of the nearest `lang`, the element's own first, through shadow roots; empty where nobody said. */
export function languageAt(element: Element): string {
  let at: Element | undefined = element;
  while (at) {
    const said: Element | null = at.closest('[lang]');
    if (said) return said.getAttribute('lang') ?? '';
    const root: Node = at.getRootNode();
    at = root instanceof ShadowRoot ? root.host : undefined;
  }
  return '';
}

/** Calls `changed` whenever a `lang` at or above the element may have changed; returns how to stop. */
export function watchLanguage(element: Element, changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  for (const root of rootsOf(element))
    observer.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
  return () => observer.disconnect();
}
