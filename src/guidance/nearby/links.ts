// Links that open a telephone or a mail program with something prepared; nothing is dialled or sent by them.

/** `tel:` with digits only; undefined where there are not three of them (RFC 3966, the form from memory). */
export function phoneLink(phone: string): string | undefined {
  const digits = phone.replace(/\D/g, '');
  return digits.length < 3 ? undefined : `tel:${phone.trim().startsWith('+') ? '+' : ''}${digits}`;
}

/** `mailto:` with a subject and lines of text; undefined for what is no single address (RFC 6068, the form from memory). */
export function mailLink(email: string, subject: string, lines: readonly string[]): string | undefined {
  if (!/^[\w.+-]+@[\w-]+(?:\.[\w-]+)+$/.test(email)) return undefined;
  // What comes from a key may hold anything, half a pair of surrogates too.
  const encode = (text: string) => encodeURIComponent(text.replace(/\p{Cs}/gu, '\uFFFD'));
  const address = encode(email).replace('%40', '@');
  return `mailto:${address}?subject=${encode(subject.replace(/\s+/g, ' ').trim())}&body=${encode(lines.join('\r\n'))}`;
}
