// Whether a list of source expressions lets an address through: CSP Level 3, "URL Matching" (w3c/webappsec-csp, index.bs,
// read November 2026). Redirects are not followed: their paths would not be compared.

const HOST_SOURCE =
  /^(?:([a-z][a-z0-9+.-]*):\/\/)?(\*|(?:\*\.)?[a-z0-9_-]+(?:\.[a-z0-9_-]+)*\.?)(?::(\d+|\*))?(\/.*)?$/i;
const PORTS = new Map([
  ['http', '80'],
  ['ws', '80'],
  ['https', '443'],
  ['wss', '443'],
]);
/** Schemes that a written one stands for beside itself: never a less safe one. */
const UPGRADES = new Map([
  ['http', ['https']],
  ['ws', ['wss', 'http', 'https']],
  ['wss', ['https']],
]);

const schemeOf = (url: URL) => url.protocol.slice(0, -1);
const schemeMatches = (written: string, scheme: string) =>
  written === scheme || (UPGRADES.get(written)?.includes(scheme) ?? false);

/** `page` is the address of the page whose policy it is. */
export function listAllows(sources: readonly string[], url: URL, page: URL): boolean {
  return sources.some((source) => sourceAllows(source, url, page));
}

function sourceAllows(source: string, url: URL, page: URL): boolean {
  const scheme = schemeOf(url);
  if (source === '*') return scheme === 'http' || scheme === 'https' || scheme === schemeOf(page);
  const [, schemeOnly] = /^([a-z][a-z0-9+.-]*):$/i.exec(source) ?? [];
  if (schemeOnly !== undefined) return schemeMatches(schemeOnly.toLowerCase(), scheme);
  if (source.toLowerCase() === "'self'") return isSelf(url, page);
  const [, written, host, port, path] = HOST_SOURCE.exec(source) ?? [];
  if (host === undefined || url.hostname === '') return false;
  return (
    schemeMatches(written?.toLowerCase() ?? schemeOf(page), scheme) &&
    hostMatches(host.toLowerCase(), url.hostname) &&
    portMatches(port, url) &&
    (path === undefined || pathMatches(path.replace(/[?#].*$/s, ''), url.pathname))
  );
}

function isSelf(url: URL, page: URL): boolean {
  if (url.origin !== 'null' && url.origin === page.origin) return true;
  const usual = url.port === '' && page.port === '';
  return (
    url.hostname !== '' &&
    url.hostname === page.hostname &&
    (usual || url.port === page.port) &&
    schemeMatches(schemeOf(page), schemeOf(url))
  );
}

function hostMatches(written: string, host: string): boolean {
  if (written.startsWith('*')) return host.endsWith(written.slice(1));
  // Numbers instead of a name do not count, but for the device itself.
  return written === host && (!/^\d+(\.\d+){3}$/.test(written) || written === '127.0.0.1');
}

function portMatches(written: string | undefined, url: URL): boolean {
  const usual = PORTS.get(schemeOf(url)) ?? '';
  return written === '*' || (written ?? usual) === (url.port || usual);
}

function pathMatches(written: string, path: string): boolean {
  if (written === '') return true;
  const [ours, theirs] = [written.split('/'), path.split('/')];
  if (written.endsWith('/')) ours.pop();
  else if (ours.length !== theirs.length) return false;
  return ours.length <= theirs.length && ours.every((piece, at) => decoded(piece) === decoded(theirs[at] ?? ''));
}

function decoded(piece: string): string {
  try {
    return decodeURIComponent(piece);
  } catch {
    return piece;
  }
}
