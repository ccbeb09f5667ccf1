// What a course schedules: its plants, its look-alikes, the characters that tell them apart, and cover.
import type { Course, TaskKind } from '../../key/courses/index.ts';
import type { Lookalike, PreparedKey } from '../../key/index.ts';
import { pairItem } from '../judge/judge.ts';
import type { ItemId } from '../types.ts';

export type Parsed =
  | { readonly of: 'taxon'; readonly taxon: string }
  | { readonly of: 'character'; readonly character: string }
  | { readonly of: 'pair'; readonly pair: readonly [string, string] }
  | { readonly of: 'cover'; readonly cover: string };

/** An item's text taken apart; undefined for what is none. */
export function parseItem(item: string): Parsed | undefined {
  const [, of, rest = ''] = /^(taxon|character|pair|cover):(.+)$/.exec(item) ?? [];
  if (of === 'taxon') return { of, taxon: rest };
  if (of === 'character') return { of, character: rest };
  if (of === 'cover') return { of, cover: rest };
  const [a, b, ...more] = rest.split('+');
  return of === 'pair' && a && b && more.length === 0 ? { of, pair: [a, b] } : undefined;
}

/** The look-alikes of which both are in the course. */
export const pairsOf = ({ key }: PreparedKey, { taxa }: Course): readonly Lookalike[] =>
  key.lookalikes.filter(({ taxa: [a, b] }) => taxa.includes(a) && taxa.includes(b));

/** Ids of the characters that a course reads: its own, or those that its look-alikes are told apart by. */
export function charactersOf(prepared: PreparedKey, course: Course): string[] {
  const asked = prepared.key.characters.filter((one) => one.asked && one.effort !== 'dig').map(({ id }) => id);
  if (course.characters) return asked.filter((id) => course.characters?.includes(id));
  const telling = new Set(pairsOf(prepared, course).flatMap((one) => one.separate.map(({ character }) => character)));
  return asked.filter((id) => telling.has(id));
}

/** How dear a mistake is between two plants: between native and invasive most. */
function weightOf({ key, taxonIndex }: PreparedKey, ids: readonly string[]): number {
  const standings = new Set(ids.map((id) => key.taxa[taxonIndex.get(id) ?? -1]?.status));
  return standings.has('native') && standings.has('invasive') ? 2 : standings.size > 1 ? 1 : 0;
}

/** All items of a course, in the order in which they are met first: pairs of native and invasive, then their plants. */
export function itemsOf(prepared: PreparedKey, course: Course): ItemId[] {
  const { kinds } = course;
  const has = (...some: TaskKind[]) => some.some((kind) => kinds.includes(kind));
  const pairs = [...pairsOf(prepared, course)].sort((a, b) => weightOf(prepared, b.taxa) - weightOf(prepared, a.taxa));
  const items: ItemId[] = [];
  const put = (item: ItemId) => items.includes(item) || items.push(item);
  for (const { taxa, separate } of pairs) {
    for (const taxon of taxa) if (has('name', 'standing', 'run')) put(`taxon:${taxon}`);
    if (has('pair')) put(pairItem(...taxa));
    const own = charactersOf(prepared, course);
    for (const { character } of separate) if (has('read') && own.includes(character)) put(`character:${character}`);
  }
  for (const taxon of course.taxa) if (has('name', 'standing', 'run')) put(`taxon:${taxon}`);
  for (const character of charactersOf(prepared, course)) if (has('read')) put(`character:${character}`);
  if (has('cover')) for (const cover of ['1', '2', '3', '4', '5', '6']) put(`cover:${cover}`);
  return items;
}

/** The kinds of task that an item can be asked by in a course. */
export function kindsOf({ kinds }: Course, item: ItemId): TaskKind[] {
  const of = parseItem(item)?.of;
  if (of === 'taxon') return (['name', 'standing', 'run'] as const).filter((kind) => kinds.includes(kind));
  if (of === 'pair') return ['pair'];
  return of === 'character' ? ['read'] : of === 'cover' ? ['cover'] : [];
}
