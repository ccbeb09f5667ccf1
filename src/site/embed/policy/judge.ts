// What a policy does to the addresses that a snippet needs, and the smallest change that lets them through. CSP Level 3:
// fallbacks 6.8, script checks "Script directives pre-request check" (w3c/webappsec-csp, index.bs, read November 2026);
// the order of fallbacks and Trusted Types from memory.
import { listAllows } from './match.ts';
import type { Pasted, Policy } from './parse.ts';

export type Kind = 'script' | 'style' | 'connect' | 'img' | 'frame';

/** An address that is asked for. */
export interface Need {
  readonly kind: Kind;
  readonly url: URL;
  /** Without it everything works, but less well. */
  readonly spare?: boolean;
}

/**
 * `nonce`: the page must write its nonce into the tag. `hash`: only a hash could let it through, which is not judged.
 * `sandbox`, `trusted`: the directive that stops scripts, or Lit's own policy of trusted types.
 */
export type Why = 'source' | 'nonce' | 'hash' | 'sandbox' | 'trusted';

export interface Finding {
  readonly why: Why;
  /** The directive that stops it, as the policy has it. */
  readonly directive: string;
  /** What would stand in its place, whole. */
  readonly change: string;
  readonly needs: readonly Need[];
}

/** Which directives speak for a kind, the nearest first. */
const DIRECTIVES: Readonly<Record<Kind, readonly [string, ...string[]]>> = {
  script: ['script-src-elem', 'script-src', 'default-src'],
  style: ['style-src-elem', 'style-src', 'default-src'],
  connect: ['connect-src', 'default-src'],
  img: ['img-src', 'default-src'],
  frame: ['frame-src', 'child-src', 'default-src'],
};
/** Where a source is added when only default-src speaks. */
const OWN: Readonly<Record<Kind, string>> = {
  script: 'script-src',
  style: 'style-src',
  connect: 'connect-src',
  img: 'img-src',
  frame: 'frame-src',
};

/** Empty: everything that is asked for comes. Of several policies each must let it through. */
export function judge({ policies, meta, reportOnly }: Pasted, needs: readonly Need[], page: URL): Finding[] {
  if (reportOnly) return [];
  return policies.flatMap((policy) => [
    ...sandboxed(policy, meta, needs),
    ...stopped(policy, needs, page),
    ...untrusted(policy, needs),
  ]);
}

function stopped(policy: Policy, needs: readonly Need[], page: URL): Finding[] {
  const findings = new Map<string, { why: Why; directive: string; needs: Need[] }>();
  for (const need of needs) {
    const directive = DIRECTIVES[need.kind].find((name) => policy.has(name));
    if (directive === undefined) continue;
    const why = whyNot(need, policy.get(directive) ?? [], page);
    if (why === undefined) continue;
    const place = `${directive} ${need.kind} ${why}`;
    const found = findings.get(place) ?? { why, directive, needs: [] };
    found.needs.push(need);
    findings.set(place, found);
  }
  return [...findings.values()].map((found) => ({ ...found, change: changeOf(found, policy, page) }));
}

function whyNot({ kind, url }: Need, sources: readonly string[], page: URL): Why | undefined {
  const has = (pattern: RegExp) => sources.some((source) => pattern.test(source));
  // Addresses count for nothing then: the tag needs the page's nonce, or its hash stands in the list.
  if (kind === 'script' && has(/^'strict-dynamic'$/i)) return has(/^'nonce-/i) ? 'nonce' : 'hash';
  if (listAllows(sources, url, page)) return undefined;
  return (kind === 'script' || kind === 'style') && has(/^'nonce-/i) ? 'nonce' : 'source';
}

/** The smallest source that lets an address through: the page itself, a scheme without host, or the host. */
function sourceFor(url: URL, page: URL): string {
  if (listAllows(["'self'"], url, page)) return "'self'";
  return url.host === '' ? url.protocol : url.origin;
}

function changeOf({ why, directive, needs }: Omit<Finding, 'change'>, policy: Policy, page: URL): string {
  const [{ kind }] = needs as [Need];
  if (why === 'nonce') return 'nonce="..."';
  const old = (policy.get(directive) ?? []).filter((source) => source.toLowerCase() !== "'none'");
  const added = why === 'hash' ? ["'nonce-...'"] : needs.map(({ url }) => sourceFor(url, page));
  const name = directive === 'default-src' || directive === 'child-src' ? OWN[kind] : directive;
  return [name, ...new Set([...old, ...added])].join(' ');
}

function sandboxed(policy: Policy, meta: boolean, needs: readonly Need[]): Finding[] {
  const flags = policy.get('sandbox');
  if (flags === undefined || meta) return [];
  const held = flags.map((flag) => flag.toLowerCase());
  const missing = ['allow-scripts', 'allow-same-origin'].filter((flag) => !held.includes(flag));
  if (missing.length === 0) return [];
  return [{ why: 'sandbox', directive: 'sandbox', change: ['sandbox', ...flags, ...missing].join(' '), needs }];
}

/** Lit asks for a policy named `lit-html` when it is loaded; a list without it makes that fail. */
function untrusted(policy: Policy, needs: readonly Need[]): Finding[] {
  const names = policy.get('trusted-types');
  const scripts = needs.filter(({ kind, spare }) => kind === 'script' && spare !== true);
  if (names === undefined || scripts.length === 0 || names.includes('lit-html') || names.includes('*')) return [];
  const old = names.filter((name) => name.toLowerCase() !== "'none'");
  return [
    {
      why: 'trusted',
      directive: 'trusted-types',
      change: ['trusted-types', ...old, 'lit-html'].join(' '),
      needs: scripts,
    },
  ];
}
