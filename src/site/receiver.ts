// The stewards' inbox, for the demonstration: takes reports while the server runs, and forgets them when it stops.
import type { IncomingMessage } from 'node:http';
import type { Connect, Plugin } from 'vite';

/** No report is read further than this. */
const MOST_BYTES = 60_000_000;

interface Kept {
  readonly receipt: string;
  readonly bytes: number;
}

async function bytesOf(request: IncomingMessage): Promise<number> {
  let bytes = 0;
  for await (const part of request) {
    bytes += (part as Buffer).length;
    if (bytes > MOST_BYTES) return Number.POSITIVE_INFINITY;
  }
  return bytes;
}

/**
 * Answers POST at `address` with a receipt, the same one however often a report comes under one key, and GET with the
 * receipts given so far.
 */
export function inbox(address: string): Connect.NextHandleFunction {
  const kept = new Map<string, Kept>();
  return (request, response, next) => {
    const [path] = (request.url ?? '').split('?');
    if (!path?.endsWith(address)) return next();
    const answer = (status: number, body: object) =>
      response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body));
    if (request.method === 'GET') return void answer(200, { kept: [...kept.values()] });
    if (request.method !== 'POST') return void answer(405, { title: 'Only POST and GET are answered here.' });
    const key = String(request.headers['idempotency-key'] ?? '');
    void bytesOf(request).then((bytes) => {
      const known = kept.get(key);
      if (known) return answer(200, { receipt: known.receipt });
      if (key === '') return answer(400, { title: 'The report has no key.' });
      if (bytes > MOST_BYTES) return answer(413, { title: 'The report is too large.' });
      const receipt = `SF-${String(kept.size + 1).padStart(4, '0')}`;
      kept.set(key, { receipt, bytes });
      return answer(201, { receipt });
    });
  };
}

/** The inbox at `address`, in development and in preview. */
export function receiver(address: string): Plugin {
  return {
    name: 'receiver',
    configureServer: (server) => void server.middlewares.use(inbox(address)),
    configurePreviewServer: (server) => void server.middlewares.use(inbox(address)),
  };
}
