// Whom to ask, as a page's owner wrote it, as addresses that a tap opens: nothing is dialled or sent by itself.

/** `tel:+15550142` of `+1 (555) 01-42`; undefined where there are too few digits for a telephone, or letters. */
export function phoneLink(text: string): string | undefined {
  if (!/^[\d\s()+./-]+$/.test(text)) return undefined;
  const digits = text.replace(/\D/g, '');
  if (digits.length < 3) return undefined;
  return `tel:${text.trim().startsWith('+') ? '+' : ''}${digits}`;
}

/** `mailto:` of one plain address; undefined of anything else, such as one that brings fields along. */
export function mailLink(text: string): string | undefined {
  const address = text.trim();
  return /^[\w.+-]+@[\w-]+(?:\.[\w-]+)+$/.test(address) ? `mailto:${address}` : undefined;
}
