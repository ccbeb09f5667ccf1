// One text for one content, whatever the order in which fields were written.

/** The canonical JSON of RFC 8785: no white space, fields sorted by UTF-16 units, numbers and text as JavaScript writes them. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join()}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([name, field]) => `${JSON.stringify(name)}:${canonicalJson(field)}`).join()}}`;
}
