// What the receiver's answer means.
import type { Fault, WaitReason } from './outcome.ts';

/** No answer is read further than this. */
const MOST_BYTES = 65_536;
const MOST_FAULTS = 20;
const MOST_WORDS = 500;

export type Meaning =
  | { readonly kind: 'arrived'; readonly number?: string; readonly at?: string }
  | { readonly kind: 'later'; readonly reason: WaitReason; readonly after?: number }
  | { readonly kind: 'refused'; readonly moved: boolean; readonly words: string; readonly faults: readonly Fault[] };

/**
 * Statuses after which the same request may do better: the receiver is busy, or still at work on the same key. RFC 9110,
 * RFC 6585 and, for 409, the IETF draft "The Idempotency-Key HTTP Header Field" (all from memory).
 */
const LATER: ReadonlyMap<number, WaitReason> = new Map([
  [408, 'too-slow'],
  [409, 'busy'],
  [425, 'busy'],
  [429, 'busy'],
]);

/**
 * Reads an answer. `now` is in milliseconds, for a `Retry-After` that names a date.
 * @throws what reading the body throws when the connection breaks: then nobody knows, and it must be sent again
 */
export async function meaningOf(response: Response, now: number): Promise<Meaning> {
  const { status, headers, type } = response;
  if (type === 'opaqueredirect' || (status >= 300 && status < 400))
    return { kind: 'refused', moved: true, words: '', faults: [] };
  const text = await readText(response);
  if (response.ok) {
    const at = addressOf(headers.get('location'), response.url);
    const number = numberIn(text) ?? at?.split('/').filter(Boolean).at(-1);
    return { kind: 'arrived', ...(number ? { number } : {}), ...(at ? { at } : {}) };
  }
  const reason = LATER.get(status) ?? (status >= 500 && status !== 501 && status !== 505 ? 'server' : undefined);
  if (reason) {
    const after = waitOf(headers.get('retry-after'), now);
    return { kind: 'later', reason, ...(after === undefined ? {} : { after }) };
  }
  return { kind: 'refused', moved: false, ...problemIn(text) };
}

async function readText({ body }: Response): Promise<string> {
  const reader = body?.getReader();
  if (!reader) return '';
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    bytes += part.value.byteLength;
    text += decoder.decode(part.value, { stream: true });
    if (bytes > MOST_BYTES) {
      await reader.cancel();
      return '';
    }
  }
  return text + decoder.decode();
}

function objectIn(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
const own = (object: Readonly<Record<string, unknown>>, name: string): unknown =>
  Object.hasOwn(object, name) ? object[name] : undefined;
const wordsIn = (value: unknown): string => (typeof value === 'string' ? value.trim().slice(0, MOST_WORDS) : '');

/** The answer's `receipt`, a text or a number. */
function numberIn(text: string): string | undefined {
  const receipt = own(objectIn(text), 'receipt');
  const number = typeof receipt === 'number' ? String(receipt) : wordsIn(receipt).slice(0, 100);
  return number || undefined;
}

/** An http or https address, against the one that answered. */
function addressOf(location: string | null, base: string): string | undefined {
  if (!location || !URL.canParse(location, base || undefined)) return undefined;
  const { protocol, href } = new URL(location, base || undefined);
  return protocol === 'http:' || protocol === 'https:' ? href : undefined;
}

/** Milliseconds of a `Retry-After`, which is seconds or a date (RFC 9110, 10.2.3, from memory). */
function waitOf(header: string | null, now: number): number | undefined {
  const text = header?.trim() ?? '';
  if (/^\d{1,9}$/.test(text)) return Number(text) * 1000;
  const until = Date.parse(text);
  return Number.isNaN(until) ? undefined : Math.max(0, until - now);
}

/**
 * A refusal in words. Problem details as RFC 9457 has them: `detail` or `title`, and in `errors` a `pointer` (`#/place/lat`)
 * with its `detail` (the extension of its section 3 example; from memory).
 */
function problemIn(text: string): { words: string; faults: Fault[] } {
  const problem = objectIn(text);
  const errors = own(problem, 'errors');
  const faults = (Array.isArray(errors) ? errors : []).slice(0, MOST_FAULTS).flatMap((one: unknown): Fault[] => {
    if (typeof one !== 'object' || one === null) return [];
    const words = wordsIn(own(one as Record<string, unknown>, 'detail'));
    const path = wordsIn(own(one as Record<string, unknown>, 'pointer')).replace(/^#/, '');
    return words ? [{ path, words }] : [];
  });
  return { words: wordsIn(own(problem, 'detail')) || wordsIn(own(problem, 'title')), faults };
}
