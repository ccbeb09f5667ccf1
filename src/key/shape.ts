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
export function compare(value: unknown, shape: Shape | false, report: Report, at: Path = []): void {
  if (shape === false) {
    report(at, 'unknown-field', 'no such field here', show(value));
    return;
  }
  const wrong = (code: ErrorCode, expected: string) => report(at, code, expected, show(value));
  const types = shape.type === undefined ? [] : [shape.type].flat();
  if (types.length > 0 && !types.some((type) => isType(value, type))) {
    wrong('type', types.map((type) => TYPES[type]).join(' or '));
    return;
  }
  if (shape.const !== undefined && value !== shape.const) wrong('value', String(shape.const));
  if (shape.enum && !shape.enum.includes(value)) wrong('value', `one of ${list(shape.enum.map(String))}`);
  if (typeof value === 'string') compareText(value, shape, wrong);
  if (typeof value === 'number') compareNumber(value, shape, wrong);
  if (Array.isArray(value)) {
    const { items, minItems = 0, maxItems = Number.POSITIVE_INFINITY } = shape;
    if (value.length < minItems) wrong('length', `at least ${minItems} in the list`);
    if (value.length > maxItems) wrong('length', `at most ${maxItems} in the list`);
    if (items) for (const [i, item] of value.entries()) compare(item, items, report, [...at, i]);
  } else if (typeof value === 'object' && value !== null) {
    compareObject(value as Readonly<Record<string, unknown>>, shape, report, at);
  }
  compareTogether(value, shape, report, at);
}

function isType(value: unknown, type: Type): boolean {
  if (type === 'array') return Array.isArray(value);
  if (type === 'object') return typeof value === 'object' && value !== null && !Array.isArray(value);
  if (type === 'integer') return Number.isInteger(value);
  return typeof value === type;
}

function compareText(
  value: string,
  { pattern, minLength = 0, maxLength, means }: Shape,
  wrong: (code: ErrorCode, expected: string) => void,
): void {
  // JSON Schema counts characters, not UTF-16 units.
  if (value.length < minLength) wrong('length', 'some text');
  if (maxLength !== undefined && value.length > maxLength && [...value].length > maxLength) {
    wrong('length', `at most ${maxLength} characters`);
  } else if (pattern && !pattern.test(value)) {
    wrong('form', means ?? 'text of another form');
  }
}

function compareNumber(value: number, shape: Shape, wrong: (code: ErrorCode, expected: string) => void): void {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum } = shape;
  if (minimum !== undefined && !(value >= minimum)) wrong('bounds', `at least ${minimum}`);
  if (maximum !== undefined && !(value <= maximum)) wrong('bounds', `at most ${maximum}`);
  if (exclusiveMinimum !== undefined && !(value > exclusiveMinimum)) wrong('bounds', `more than ${exclusiveMinimum}`);
  if (exclusiveMaximum !== undefined && !(value < exclusiveMaximum)) wrong('bounds', `less than ${exclusiveMaximum}`);
}

function compareObject(value: Readonly<Record<string, unknown>>, shape: Shape, report: Report, at: Path): void {
  const {
    properties = {},
    additionalProperties,
    propertyNames,
    required = [],
    maxProperties,
    dependentRequired,
  } = shape;
  const missing = (name: string) => {
    if (!Object.hasOwn(value, name)) report([...at, name], 'missing-field', `the field "${name}"`, 'nothing');
  };
  required.forEach(missing);
  const names = Object.keys(value);
  for (const [name, needed] of Object.entries(dependentRequired ?? {})) {
    if (Object.hasOwn(value, name)) needed.forEach(missing);
  }
  if (maxProperties !== undefined && names.length > maxProperties) {
    report(at, 'length', `at most ${maxProperties} fields`, `${names.length}`);
  }
  for (const name of names) {
    const here = [...at, name];
    if (propertyNames) compare(name, propertyNames, report, here);
    if (Object.hasOwn(properties, name)) {
      compare(value[name], properties[name] as Shape | false, report, here);
    } else if (additionalProperties === false) {
      report(
        here,
        'unknown-field',
        `one of the fields ${list(Object.keys(properties).filter((known) => !known.startsWith('$')))}`,
        show(name),
      );
    } else if (additionalProperties) {
      compare(value[name], additionalProperties, report, here);
    }
  }
}

/** oneOf, anyOf and if: what lies below them counts as a whole. */
function compareTogether(value: unknown, shape: Shape, report: Report, at: Path): void {
  const { oneOf, anyOf, means } = shape;
  if (oneOf && oneOf.filter((one) => fits(value, one)).length !== 1)
    report(at, 'form', means ?? 'another form', show(value));
  if (anyOf && !anyOf.some((one) => fits(value, one))) report(at, 'form', means ?? 'another form', show(value));
  if (shape.if) {
    const next = fits(value, shape.if) ? shape.then : shape.else;
    if (next) compare(value, next, report, at);
  }
}

function fits(value: unknown, shape: Shape): boolean {
  let fine = true;
  compare(value, shape, () => {
    fine = false;
  });
  return fine;
}
