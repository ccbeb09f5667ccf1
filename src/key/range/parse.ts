import { readUnit, type Unit } from '../units.ts';
import { type BoundsRead, readBounds } from './bounds.ts';
import { Cursor } from './cursor.ts';
import { RangeNotationError } from './error.ts';
import { type Extent, optional, type Range } from './range.ts';

/** Longest text that is looked at, in UTF-16 units. */
const LONGEST = 300;

const UNITS = 'a unit (mm, cm, m, in or ft)';

/** One dimension as read; its unit may be still to come. */
interface Part {
  readonly read: BoundsRead;
  readonly unit: Unit | undefined;
}

/**
 * Reads botanical range notation: `(1-)2-6(-8) cm`, `2–6 × 1–2 cm`, `to 4 m`, `ca. 10 m`, `5(or 10)`, `3--5-lobed`,
 * `1 1/2-4 in`, `5 ft 6 in`. Values stay in the unit they are given in; feet with inches become inches.
 * `unit` is taken where the text names none. Throws a RangeNotationError, which names the column, and nothing else.
 * Source: contributor guides of Flora of China and Flora of Nepal; US units and words such as "about" are ours.
 */
export function parseRange(text: string, unit: Unit = 'count'): Range {
  if (text.length > LONGEST) {
    throw new RangeNotationError(text, LONGEST + 1, `at most ${LONGEST} characters`, `${text.length}`);
  }
  const cursor = new Cursor(text);
  const along = readPart(cursor);
  const suffix = along.unit === undefined ? cursor.take('suffix') : undefined;
  if (suffix !== undefined) return Object.freeze({ ...finish(cursor, along, 'count', 'the end'), suffix: suffix.text });
  if (!cursor.take('times')) return Object.freeze(finish(cursor, along, unit));
  const start = cursor.peek();
  const across = readPart(cursor);
  if (across.unit === undefined && along.unit !== undefined) cursor.fail(UNITS);
  if (across.read.feet && along.unit === undefined) cursor.fail('the unit of the length before feet and inches', start);
  const width = Object.freeze(finish(cursor, across, unit));
  return Object.freeze({ ...extentOf(cursor, along, along.unit ?? width.unit), across: width });
}

function readPart(cursor: Cursor): Part {
  const read = readBounds(cursor);
  if (read.feet) return { read, unit: 'in' };
  const { kind, text } = cursor.peek();
  const unit = kind === 'word' ? readUnit(text) : undefined;
  if (unit !== undefined) cursor.take('word');
  return { read, unit };
}

/** The last dimension, behind which nothing may stand; in `unit` if it names none. */
function finish(
  cursor: Cursor,
  part: Part,
  unit: Unit,
  expected = part.unit ? 'the end' : `${UNITS} or the end`,
): Extent {
  cursor.expect('end', expected);
  return extentOf(cursor, part, part.unit ?? unit);
}

function extentOf(cursor: Cursor, { read }: Part, unit: Unit): Extent {
  if (unit === 'count' && read.strict) cursor.fail('"to" or "at least", which include the count itself', read.strict);
  return { ...read.bounds, unit, ...optional('approximate', read.approximate || undefined) };
}
