// A receiver of reports for tests: it fails, stalls, answers twice and refuses as the address asks, and keeps one report a key.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

interface Seen {
  readonly key: string;
  readonly find: unknown;
  readonly photos: readonly { readonly name: string; readonly type: string; readonly size: number }[];
  readonly headers: Readonly<Record<string, unknown>>;
}
export interface Run {
  readonly seen: Seen[];
  /** Receipt by key: what was kept. */
  readonly kept: Map<string, string>;
}

/**
 * What it does at a step:
 * a number answers with that status; `later` is 503 and asks for a second; `far` for an hour; `stall` never answers; `lost` keeps the
 * report and breaks off before it answers; `half` breaks off within its answer; `refuse` finds two faults; `moved` leads elsewhere;
 * `bare` says nothing but 204; `where` only a Location.
 */
type Step = string;

/** POST to `/receiver/RUN/STEP,STEP,...`: one step a request, the last for all that follow. GET `/receiver/RUN` tells what came. */
export class Receiver {
  readonly runs = new Map<string, Run>();

  readonly handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    response.setHeader('Access-Control-Allow-Origin', '*');
    response.setHeader('Access-Control-Allow-Headers', 'Idempotency-Key, Content-Type');
    response.setHeader('Access-Control-Expose-Headers', 'Location, Retry-After');
    if (request.method === 'OPTIONS') {
      response.writeHead(204).end();
      return;
    }
    const [name = '', steps = '201'] = (request.url ?? '').replace(/^\/receiver\//, '').split('/');
    const run: Run = this.runs.get(name) ?? { seen: [], kept: new Map() };
    this.runs.set(name, run);
    if (request.method === 'GET') {
      answer(response, 200, { seen: run.seen, kept: [...run.kept] });
      return;
    }
    const all = steps.split(',');
    const step = all[Math.min(run.seen.length, all.length - 1)] ?? '201';
    const seen = await read(request);
    run.seen.push(seen);
    act(step, seen, run, response);
  };

  /** Listens on a free port until `close`. */
  async listen(): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
    const server = createServer(this.handle);
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    return {
      address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/receiver`,
      close: () =>
        new Promise((done) => {
          server.closeAllConnections();
          server.close(() => done());
        }),
    };
  }
}

async function read(request: IncomingMessage): Promise<Seen> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  const type = String(request.headers['content-type']);
  const form = await new Response(Buffer.concat(parts), { headers: { 'content-type': type } }).formData();
  const find = form.get('find') as File;
  return {
    key: String(request.headers['idempotency-key']),
    find: JSON.parse(await find.text()),
    photos: (form.getAll('photo') as File[]).map(({ name, type: of, size }) => ({ name, type: of, size })),
    headers: request.headers,
  };
}

function act(step: Step, { key }: Seen, { kept }: Run, response: ServerResponse): void {
  const keep = () => {
    const receipt = kept.get(key) ?? `R-${kept.size + 1}`;
    kept.set(key, receipt);
    return receipt;
  };
  const status = Number(step);
  if (step === 'later') response.writeHead(503, { 'Retry-After': '1' }).end();
  else if (step === 'far') response.writeHead(429, { 'Retry-After': '3600' }).end();
  else if (step === 'moved') response.writeHead(302, { Location: 'https://elsewhere.example/' }).end();
  else if (step === 'lost') {
    keep();
    response.destroy();
  } else if (step === 'half') {
    response.writeHead(201, { 'Content-Type': 'application/json', 'Content-Length': '400' });
    response.write(`{"receipt":"${keep()}`, () => response.destroy());
  } else if (step === 'refuse') answer(response, 422, REFUSAL);
  else if (step === 'bare') {
    keep();
    response.writeHead(204).end();
  } else if (step === 'where') response.writeHead(201, { Location: `/reports/${keep()}` }).end();
  else if (step !== 'stall')
    answer(response, status, status < 300 ? { receipt: keep() } : { title: `As asked: ${status}` });
}

const REFUSAL = {
  title: 'Not taken',
  detail: 'Two things are wrong.',
  errors: [
    { detail: 'The place is not in this county.', pointer: '#/place/lat' },
    { detail: 'Who are you?', pointer: '#/contact' },
  ],
};

function answer(response: ServerResponse, status: number, body: unknown): void {
  const type = status < 400 ? 'application/json' : 'application/problem+json';
  response.writeHead(status, { 'Content-Type': type }).end(JSON.stringify(body));
}
