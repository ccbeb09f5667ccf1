/** What may hand down a key: the elements that do, through shadow roots; one that is not defined yet counts. */
export function isAlone(element: Element): boolean {
  if (element.closest('leadwort-session, leadwort-key')) return false;
  const root = element.getRootNode();
  return !(root instanceof ShadowRoot) || isAlone(root.host);
}
