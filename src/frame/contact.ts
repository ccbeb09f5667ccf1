// Whom to ask, until the key is there and when it does not come.

/** Links made of the telephone and the mail address that the key names. */
export function contactLinks(key: Element): HTMLElement[] {
  const ways = [
    ['tel:', key.getAttribute('contact-phone')],
    ['mailto:', key.getAttribute('contact-email')],
  ] as const;
  return ways.flatMap(([scheme, to]) => {
    if (!to) return [];
    const line = document.createElement('p');
    const link = document.createElement('a');
    link.href = `${scheme}${encodeURIComponent(to).replaceAll('%40', '@')}`;
    link.textContent = to;
    line.append(link);
    return [line];
  });
}
