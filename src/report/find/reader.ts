// Readers of loose values: each gives the strict one, or notes where it is not what it should be.
import { list, type Path, printPath, show } from '../../key/path.ts';

/** One fault of a find, and where: `trail[2].seconds`; empty for the file as a whole. */
export interface FindProblem {
  readonly path: string;
  readonly expected: string;
  /** What stands there, cut short. */
  readonly found: string;
  /** Line of the file, where known. */
  readonly line?: number;
}

/** Faults that are told one by one; of the rest only the number. */
const MOST = 100;

/** Gathers faults. */
export class Faults {
  readonly problems: FindProblem[] = [];
  /** Where each of them is. */
  readonly places: Path[] = [];
  more = 0;
  note(at: Path, expected: string, found: string): undefined {
    if (this.problems.length < MOST) {
      this.problems.push({ path: printPath(at), expected, found });
      this.places.push(at);
    } else this.more++;
    return undefined;
  }
  wrong(at: Path, expected: string, value: unknown): undefined {
    return this.note(at, expected, show(value));
  }
}

/** Gives undefined only after noting a fault. */
export type Reader<T> = (value: unknown, at: Path, faults: Faults) => T | undefined;

/** Text of `least` to `most` UTF-16 units that `fits`. */
export const text =
  (most: number, least = 1, fits?: (text: string) => boolean, form = 'text'): Reader<string> =>
  (value, at, faults) => {
    const size = least > 0 ? `${form} of ${least} to ${most} signs` : `${form} of at most ${most} signs`;
    if (typeof value !== 'string' || value.length < least || value.length > most) return faults.wrong(at, size, value);
    return fits === undefined || fits(value) ? value : faults.wrong(at, form, value);
  };

/** Text of a form: nothing is said of its length. */
export const textThat = (fits: (text: string) => boolean, form: string, most = 200): Reader<string> =>
  text(most, 0, fits, form);

export const oneOf =
  <const T extends string | number | boolean>(values: readonly T[]): Reader<T> =>
  (value, at, faults) =>
    values.includes(value as T) ? (value as T) : faults.wrong(at, `one of ${list(values.map(String))}`, value);

export const flag: Reader<boolean> = (value, at, faults) =>
  typeof value === 'boolean' ? value : faults.wrong(at, 'true or false', value);

/** A number from `least` to `most`; `over` instead of a least one is a bound that is not reached itself. */
export const number =
  (range: {
    readonly least?: number;
    readonly over?: number;
    readonly most: number;
    readonly whole?: true;
  }): Reader<number> =>
  (value, at, faults) => {
    const { least, over, most, whole } = range;
    const fits =
      typeof value === 'number' &&
      value <= most &&
      (least === undefined || value >= least) &&
      (over === undefined || value > over) &&
      (whole === undefined || Number.isInteger(value));
    if (fits) return value === 0 ? 0 : value;
    const from = over === undefined ? `from ${least} to` : `above ${over}, at most`;
    return faults.wrong(at, `a ${whole ? 'whole ' : ''}number ${from} ${most}`, value);
  };

export const listOf =
  <T>(item: Reader<T>, most: number, least = 0): Reader<readonly T[]> =>
  (value, at, faults) => {
    if (!Array.isArray(value) || value.length > most || value.length < least)
      return faults.wrong(at, `a list of ${least} to ${most}`, value);
    return value.flatMap((one, i) => item(one, [...at, i], faults) ?? []);
  };

/** A field that may be left out. */
export interface Optional<T> {
  readonly optional: Reader<T>;
}
export const maybe = <T>(optional: Reader<T>): Optional<T> => ({ optional });

type Fields<T> = {
  readonly [K in keyof T]-?: undefined extends T[K] ? Optional<Exclude<T[K], undefined>> : Reader<T[K]>;
};

/**
 * An object with these fields and no others, given back with its fields in this order; `agree` looks at how they go
 * together, once each is right by itself.
 */
export const object = <T extends object>(
  fields: Fields<T>,
  agree?: (value: T, at: Path, faults: Faults) => void,
): Reader<T> => {
  const all = Object.entries(fields) as [string, Reader<unknown> | Optional<unknown>][];
  return (value, at, faults) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      return faults.wrong(at, 'an object', value);
    const before = faults.problems.length + faults.more;
    for (const [name, one] of Object.entries(value))
      if (one !== undefined && !Object.hasOwn(fields, name))
        faults.note([...at, name], `only ${all.map(([known]) => known).join(', ')}`, 'a field that is not known');
    const read = all.flatMap(([name, field]) => {
      const given = Object.hasOwn(value, name) ? (value as Record<string, unknown>)[name] : undefined;
      if (typeof field !== 'function' && given === undefined) return [];
      const one = (typeof field === 'function' ? field : field.optional)(given, [...at, name], faults);
      return one === undefined ? [] : [[name, one] as const];
    });
    if (faults.problems.length + faults.more > before) return undefined;
    const whole = Object.fromEntries(read) as T;
    agree?.(whole, at, faults);
    return whole;
  };
};
