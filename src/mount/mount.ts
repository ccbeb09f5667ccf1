// Puts a key into every `<div data-leadwort data-src="...">`.

const TAG = 'leadwort-key';
/** What says something of any element, beside the key's own attributes. */
const GENERAL = ['lang', 'dir', 'name'];

/** What of a page's own data- attributes is meant for the key: no other may reach it, such as data-style or data-onclick. */
function options(): readonly string[] {
  const { observedAttributes = [] } = customElements.get(TAG) as unknown as { observedAttributes?: string[] };
  return [...new Set([...GENERAL, ...observedAttributes])];
}

/** Makes the key's attributes those of `div`, without their `data-`. */
function follow(div: Element, key: Element, names: readonly string[]): void {
  for (const name of names) {
    const value = div.getAttribute(`data-${name}`);
    if (value === null) key.removeAttribute(name);
    else if (value !== key.getAttribute(name)) key.setAttribute(name, value);
  }
}

/** What stood in the div stands in the key, which shows it until it is there. */
function fill(div: Element): void {
  // Another copy of this script may have been here, or the page has the element itself.
  if (div.querySelector(`:scope > ${TAG}`)) return;
  const names = options();
  const key = document.createElement(TAG);
  follow(div, key, names);
  key.append(...div.childNodes);
  div.append(key);
  new MutationObserver(() => follow(div, key, names)).observe(div, {
    attributeFilter: names.map((name) => `data-${name}`),
  });
}

let watching: MutationObserver | undefined;

/** Fills those that are on the page, and from now on those that come later. */
export async function mount(): Promise<void> {
  await customElements.whenDefined(TAG);
  const all = () => document.querySelectorAll('[data-leadwort]').forEach(fill);
  watching ??= new MutationObserver(all);
  watching.observe(document, { childList: true, subtree: true, attributeFilter: ['data-leadwort'] });
  all();
}
