/** A sentence's beginning as a piece of a line: its first letter small, unless it is more than a first letter ("V-shaped"). */
export function asClause(text: string, language: string): string {
  const [first = '', second = ''] = text;
  return /[\p{Ll}\s]/u.test(second) ? first.toLocaleLowerCase(language) + text.slice(first.length) : text;
}
