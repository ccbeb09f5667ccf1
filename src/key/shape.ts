// Compares a value with a JSON Schema. Ours, since the common library's compiled validators weigh 13 kB gzip for these
// schemas, and a page loads them before its first question. Its tests hold it against that library.
import { list, type Path, show } from './path.ts';
import type { ErrorCode } from './problem.ts';

type Type = 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean';

/** The part of JSON Schema 2020-12 that the schemas of a key use; made from them by tests/support/build-validators.mjs. */
export interface Shape {
  readonly type?: Type | readonly Type[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly pattern?: RegExp;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: Shape;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Shape | false>>;
  readonly additionalProperties?: Shape | false;
  readonly propertyNames?: Shape;
  readonly maxProperties?: number;
  readonly dependentRequired?: Readonly<Record<string, readonly string[]>>;
  readonly oneOf?: readonly Shape[];
  readonly anyOf?: readonly Shape[];
  readonly if?: Shape;
  readonly then?: Shape;
  readonly else?: Shape;
  /** What a value of this shape is, for messages: the schema's description. */
  readonly means?: string;
}

/** Called for each misfit: where, what kind, what was expected, what was found. */
export type Report = (at: Path, code: ErrorCode, expected: string, found: string) => void;

const TYPES: Readonly<Record<Type, string>> = {
  object: 'an object in braces',
  array: 'a list in square brackets',
  string: 'text in double quotes',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
};

/** Reports everything in which the value, as parsed from JSON, differs from the shape. */
export function compare(value: unknown, shape: Shape | false, report: Report): void {
  new Comparison(report).value(value, shape);
}

class Comparison {
  /** Where the comparison stands: one list for all, since there are many values and few reports. */
  readonly #at: (string | number)[] = [];
  readonly #report: Report;

  constructor(report: Report) {
    this.#report = report;
  }

  value(value: unknown, shape: Shape | false): void {
    if (shape === false) {
      this.#wrong('unknown-field', 'no such field here', value);
      return;
    }
    const { type } = shape;
    if (
      type !== undefined &&
      !(typeof type === 'string' ? isType(value, type) : type.some((one) => isType(value, one)))
    ) {
      this.#wrong(
        'type',
        [type]
          .flat()
          .map((one) => TYPES[one])
          .join(' or '),
        value,
      );
      return;
    }
    if (shape.const !== undefined && value !== shape.const) this.#wrong('value', String(shape.const), value);
    if (shape.enum && !shape.enum.includes(value))
      this.#wrong('value', `one of ${list(shape.enum.map(String))}`, value);
    if (typeof value === 'string') this.#text(value, shape);
    else if (typeof value === 'number') this.#number(value, shape);
    else if (Array.isArray(value)) this.#list(value, shape);
    else if (typeof value === 'object' && value !== null) this.#object(value as Fields, shape);
    if (shape.oneOf || shape.anyOf || shape.if) this.#together(value, shape);
  }

  #text(value: string, { pattern, minLength = 0, maxLength, means = 'text of another form' }: Shape): void {
    // JSON Schema counts characters, not UTF-16 units.
    if (value.length < minLength) this.#wrong('length', 'some text', value);
    if (maxLength !== undefined && value.length > maxLength && [...value].length > maxLength) {
      this.#wrong('length', `at most ${maxLength} characters`, value);
    } else if (pattern && !pattern.test(value)) {
      this.#wrong('form', means, value);
    }
  }

  #number(value: number, { minimum, maximum, exclusiveMinimum, exclusiveMaximum }: Shape): void {
    if (minimum !== undefined && !(value >= minimum)) this.#wrong('bounds', `at least ${minimum}`, value);
    if (maximum !== undefined && !(value <= maximum)) this.#wrong('bounds', `at most ${maximum}`, value);
    if (exclusiveMinimum !== undefined && !(value > exclusiveMinimum)) {
      this.#wrong('bounds', `more than ${exclusiveMinimum}`, value);
    }
    if (exclusiveMaximum !== undefined && !(value < exclusiveMaximum)) {
      this.#wrong('bounds', `less than ${exclusiveMaximum}`, value);
    }
  }

  #list(value: readonly unknown[], { items, minItems = 0, maxItems = Number.POSITIVE_INFINITY }: Shape): void {
    if (value.length < minItems) this.#wrong('length', `at least ${minItems} in the list`, value);
    if (value.length > maxItems) this.#wrong('length', `at most ${maxItems} in the list`, value);
    if (items) for (let i = 0; i < value.length; i++) this.#below(i, value[i], items);
  }

  #object(value: Fields, shape: Shape): void {
    const { properties = {}, additionalProperties, propertyNames, required, maxProperties, dependentRequired } = shape;
    if (required) this.#required(value, required);
    for (const name in dependentRequired) {
      if (Object.hasOwn(value, name)) this.#required(value, dependentRequired[name] ?? []);
    }
    const names = Object.keys(value);
    if (maxProperties !== undefined && names.length > maxProperties) {
      this.#report([...this.#at], 'length', `at most ${maxProperties} fields`, `${names.length}`);
    }
    for (const name of names) {
      if (propertyNames) this.#below(name, name, propertyNames);
      if (Object.hasOwn(properties, name)) this.#below(name, value[name], properties[name] as Shape | false);
      else if (additionalProperties) this.#below(name, value[name], additionalProperties);
      else if (additionalProperties === false) {
        const known = Object.keys(properties).filter((one) => !one.startsWith('$'));
        this.#report([...this.#at, name], 'unknown-field', `one of the fields ${list(known)}`, show(name));
      }
    }
  }

  #required(value: Fields, names: readonly string[]): void {
    for (const name of names) {
      if (Object.hasOwn(value, name)) continue;
      this.#report([...this.#at, name], 'missing-field', `the field "${name}"`, 'nothing');
    }
  }

  /** oneOf, anyOf and if: what lies below them counts as a whole. */
  #together(value: unknown, shape: Shape): void {
    const { oneOf, anyOf, means = 'another form' } = shape;
    if (oneOf && oneOf.filter((one) => fits(value, one)).length !== 1) this.#wrong('form', means, value);
    if (anyOf && !anyOf.some((one) => fits(value, one))) this.#wrong('form', means, value);
    if (shape.if) {
      const next = fits(value, shape.if) ? shape.then : shape.else;
      if (next) this.value(value, next);
    }
  }

  #below(step: string | number, value: unknown, shape: Shape | false): void {
    this.#at.push(step);
    this.value(value, shape);
    this.#at.pop();
  }

  #wrong(code: ErrorCode, expected: string, value: unknown): void {
    this.#report([...this.#at], code, expected, show(value));
  }
}

type Fields = Readonly<Record<string, unknown>>;

function isType(value: unknown, type: Type): boolean {
  if (type === 'array') return Array.isArray(value);
  if (type === 'object') return typeof value === 'object' && value !== null && !Array.isArray(value);
  if (type === 'integer') return Number.isInteger(value);
  return typeof value === type;
}

function fits(value: unknown, shape: Shape): boolean {
  let fine = true;
  compare(value, shape, () => {
    fine = false;
  });
  return fine;
}
