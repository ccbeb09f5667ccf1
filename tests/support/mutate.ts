// Content that is almost right, for properties: one to three places of a JSON value are lost, renamed or replaced.
import fc from 'fast-check';

type Step = string | number;
type Json = Record<Step, unknown>;

/** Any JSON value, with the values that readers stumble over. */
export const anyValue = () =>
  fc.oneof(
    fc.constantFrom<unknown>(
      null,
      true,
      false,
      0,
      -1,
      1,
      1e308,
      0.5,
      '',
      ' ',
      'a',
      'x'.repeat(2000),
      [],
      {},
      [[]],
      'a\u0007b',
    ),
    fc.constantFrom<unknown>(
      'javascript:alert(1)',
      '<script>alert(1)</script>',
      'constructor',
      '3-11',
      '13',
      '2026-02-30',
      '(2-)3-10 m',
    ),
    fc.jsonValue({ maxDepth: 2 }),
  );

/** Every place in a value, the top left out. */
export function placesOf(value: unknown, at: readonly Step[] = []): (readonly Step[])[] {
  if (typeof value !== 'object' || value === null) return at.length > 0 ? [at] : [];
  const steps: Step[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [...(at.length > 0 ? [at] : []), ...steps.flatMap((step) => placesOf((value as Json)[step], [...at, step]))];
}

interface Change {
  readonly at: readonly Step[];
  readonly how: 'lose' | 'rename' | 'replace' | 'copy' | 'repeat';
  /** For `replace` the new value, for `copy` the place to copy from, for `rename` the new name. */
  readonly to: unknown;
  readonly from: readonly Step[];
  readonly name: string;
}

const NAMES = 'x id state states $comment to usually range applies toString valueOf'.split(' ');

/** One to three changes that can be made to the value. */
export function changesTo(value: unknown): fc.Arbitrary<Change[]> {
  const place = fc.constantFrom(...placesOf(value));
  const how = fc.constantFrom<Change['how'][]>('lose', 'rename', 'replace', 'copy', 'repeat');
  const name: fc.Arbitrary<string> = fc.constantFrom(...NAMES);
  return fc.array(fc.record({ at: place, how, to: anyValue(), from: place, name }), { minLength: 1, maxLength: 3 });
}

/** A copy of the value with the changes made, one after the other; those that an earlier one made impossible are left out. */
export function changed(value: unknown, changes: readonly Change[]): unknown {
  const copy = structuredClone(value);
  for (const { at, how, to, from, name } of changes) {
    const holder = inside(copy, at.slice(0, -1));
    const step = at.at(-1) ?? '';
    if (typeof holder !== 'object' || holder === null || !Object.hasOwn(holder, step)) continue;
    const fields = holder as Json;
    if (how === 'replace') fields[step] = structuredClone(to);
    else if (how === 'copy') fields[step] = structuredClone(inside(value, from));
    else if (Array.isArray(holder)) {
      if (how === 'repeat') holder.push(structuredClone(holder[Number(step)]));
      else holder.splice(Number(step), 1);
    } else {
      if (how !== 'lose') fields[name] = structuredClone(fields[step]);
      if (how !== 'repeat') delete fields[step];
    }
  }
  return copy;
}

const inside = (value: unknown, at: readonly Step[]): unknown =>
  at.reduce<unknown>(
    (inner, step) => (typeof inner === 'object' && inner !== null ? (inner as Json)[step] : undefined),
    value,
  );
