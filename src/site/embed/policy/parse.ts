// Reads a content security policy as it was pasted: CSP Level 3, 2.2.1 and 2.2.2 (w3c/webappsec-csp, index.bs, read
// November 2026; the parsing steps themselves from memory).

/** Directives by name in lower case, each with its source expressions as written. */
export type Policy = ReadonlyMap<string, readonly string[]>;

export interface Pasted {
  readonly policies: readonly Policy[];
  /** It came as a `meta` tag, in which `sandbox` and `frame-ancestors` count for nothing. */
  readonly meta: boolean;
  /** It only reports, and stops nothing. */
  readonly reportOnly: boolean;
}

/** A header with or without its name, a `meta` tag, or the bare policy; several are separated by commas or by lines with the name. */
export function parsePolicy(pasted: string): Pasted {
  const meta = /<meta\b/i.test(pasted);
  const text = meta ? (/\bcontent\s*=\s*(?:"([^"]*)"|'([^']*)')/i.exec(pasted)?.slice(1).find(Boolean) ?? '') : pasted;
  const reportOnly = /content-security-policy-report-only/i.test(pasted);
  const policies = text
    .replace(/content-security-policy(-report-only)?\s*:?/gi, ',')
    .split(',')
    .map(parseOne)
    .filter((policy) => policy.size > 0);
  return { policies, meta, reportOnly };
}

function parseOne(text: string): Policy {
  const directives = new Map<string, readonly string[]>();
  for (const part of text.split(';')) {
    const [name, ...sources] = part.split(/[\t\n\f\r ]+/).filter((word) => word !== '');
    // The first of a name counts; those after it are ignored.
    if (name !== undefined && /^[\w-]+$/.test(name) && !directives.has(name.toLowerCase()))
      directives.set(name.toLowerCase(), sources);
  }
  return directives;
}
