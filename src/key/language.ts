// Which of the languages at hand serves somebody who asks for one: tags of BCP 47.

/**
 * Lookup of RFC 4647, section 3.4: subtags are dropped from the right, a single letter with what followed it, until one
 * of the languages at hand is met. Case does not matter; the tag is given as it is held. (The rules from memory.)
 */
export function lookupLanguage(wanted: string, held: readonly string[]): string | undefined {
  const subtags = wanted.toLowerCase().split('-');
  while (subtags.length > 0) {
    const tag = subtags.join('-');
    const found = held.find((one) => one.toLowerCase() === tag);
    if (found !== undefined) return found;
    subtags.pop();
    if (subtags.at(-1)?.length === 1) subtags.pop();
  }
  return undefined;
}

/** The same, and then, which lookup never does, any held language with the same first subtag: `es-US` for `es`. */
export function matchLanguage(wanted: string, held: readonly string[]): string | undefined {
  const primary = (tag: string) => tag.toLowerCase().split('-')[0];
  return lookupLanguage(wanted, held) ?? held.find((one) => primary(one) === primary(wanted));
}
