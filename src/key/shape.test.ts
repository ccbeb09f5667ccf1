import { readFileSync } from 'node:fs';
import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MODULES, readSchemas, shapesModule } from '../../tests/support/build-validators.mjs';
import { anyValue, changed, changesTo } from '../../tests/support/mutate.ts';
import { smallContent } from '../../tests/support/small-key.ts';
import { bundleShape } from './generated/shapes.js';
import type { Path } from './path.ts';
import { compare, type Shape } from './shape.ts';

type Schema = Readonly<Record<string, unknown>>;
const schemas: ReadonlyMap<string, Schema> = readSchemas();

/** The common JSON Schema validator, as reference: strict, so that a keyword in the wrong place is an error. */
const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  ownProperties: true,
  allowUnionTypes: true,
  strictRequired: false,
});
for (const schema of schemas.values()) ajv.addSchema(schema);
const reference = ajv.getSchema('https://example.org/leadwort/key/1/bundle.json');
if (!reference) throw new Error('the bundle schema has another id');

function misfits(value: unknown, shape: Shape = bundleShape): Path[] {
  const found: Path[] = [];
  compare(value, shape, (at) => found.push(at));
  return found;
}

describe('the schemas', () => {
  test.each([...schemas])('%s is a valid schema of JSON Schema 2020-12', (_, schema) => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(ajv.validateSchema(schema)).toBe(true);
    expect(ajv.errors ?? []).toEqual([]);
  });

  test.each([...schemas])('%s is named by its own file, so that references hold beside it', (name, schema) => {
    expect(schema.$id).toBe(`https://example.org/leadwort/key/1/${name}`);
  });

  test('have a title and a description for every field, for the editor shows them', () => {
    const without: string[] = [];
    const walk = (schema: unknown, place: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      for (const [keyword, value] of Object.entries(schema)) {
        if (keyword === 'if' || keyword === 'then' || keyword === 'else') continue;
        if (keyword === 'properties')
          for (const [name, field] of Object.entries(value as Record<string, Schema>)) {
            const described = 'title' in field && 'description' in field;
            if (!described && !name.startsWith('$')) without.push(`${place}/${name}`);
          }
        walk(value, `${place}/${keyword}`);
      }
    };
    for (const [name, schema] of schemas) walk(schema, name);
    expect(without).toEqual([]);
  });

  test('refuse fields that they do not name, everywhere but in maps by id, language or sentence', () => {
    const open: string[] = [];
    const walk = (schema: unknown, place: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      if ('type' in schema && schema.type === 'object' && !('additionalProperties' in schema)) open.push(place);
      for (const [keyword, value] of Object.entries(schema)) walk(value, `${place}/${keyword}`);
    };
    for (const [name, schema] of schemas) walk(schema, name);
    expect(open).toEqual([]);
  });

  test('bound every text and every list, so that no file can hold an endless one', () => {
    const endless: string[] = [];
    const bounded = ['maxLength', 'enum', 'const', 'maxItems'];
    const walk = (schema: unknown, place: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      if ('type' in schema && (schema.type === 'string' || schema.type === 'array')) {
        const fixed = 'pattern' in schema && typeof schema.pattern === 'string' && !/[*+]/.test(schema.pattern);
        if (!fixed && !('$ref' in schema) && !bounded.some((keyword) => keyword in schema)) endless.push(place);
      }
      for (const [keyword, value] of Object.entries(schema)) walk(value, `${place}/${keyword}`);
    };
    for (const [name, schema] of schemas) walk(schema, name);
    expect(endless).toEqual([]);
  });
});

test.each([...MODULES])(
  'generated/%s.js is made of the schemas as they are: else run `npm run validators`',
  (name, roots) => {
    expect(readFileSync(new URL(`generated/${name}.js`, import.meta.url), 'utf8')).toBe(shapesModule(schemas, roots));
  },
);

test('a schema with a keyword that compare does not know is refused when shapes are made', () => {
  const other = new Map(schemas).set('text.json', { ...schemas.get('text.json'), minProperties: 1 });
  expect(() => shapesModule(other)).toThrow('text.json: src/key/shape.ts does not know the keyword "minProperties"');
});

describe('compare', () => {
  test('finds nothing in the fixture, and neither does the reference', () => {
    expect(misfits(smallContent())).toEqual([]);
    expect(reference(smallContent())).toBe(true);
  });

  test('accepts and refuses what the reference does, and names the same places', () => {
    fc.assert(
      fc.property(changesTo(smallContent()), (changes) => {
        const value = changed(smallContent(), changes);
        const here = new Set(misfits(value).map(pointer));
        expect(here.size === 0).toBe(reference(value));
        const there = new Set((reference.errors ?? []).filter(isWhole).map(placeOf));
        expect(here).toEqual(there);
      }),
      { numRuns: 600 },
    );
  });

  test('accepts and refuses what the reference does, whatever the JSON', () => {
    fc.assert(
      fc.property(anyValue(), (value) => {
        expect(misfits(value).length === 0).toBe(reference(value));
      }),
    );
  });

  // Single keywords, against the reference one by one: a mutation of the fixture may never reach their edges.
  test.each<[Schema, unknown[]]>([
    [{ type: 'integer' }, [1, 1.0, 1.5, -0, 1e20, '1', true, null]],
    [{ type: 'number', minimum: 1, maximum: 2 }, [0.99, 1, 2, 2.01]],
    [{ type: 'number', exclusiveMinimum: 1, exclusiveMaximum: 2 }, [1, 1.01, 1.99, 2]],
    [{ type: 'string', minLength: 1, maxLength: 2 }, ['', 'a', 'ab', 'abc', '🌱🌱', '🌱🌱🌱']],
    [
      { type: 'array', minItems: 1, maxItems: 2, items: { type: 'boolean' } },
      [[], [true], [true, 1], [true, true, true]],
    ],
    [
      { type: ['string', 'array'], maxLength: 1, maxItems: 1, items: { type: 'string' } },
      ['a', 'ab', ['a'], ['a', 'b'], 1],
    ],
    [{ enum: ['a', 1, true] }, ['a', 1, true, 'b', '1', null, {}]],
    [{ const: false }, [false, 0, '', null]],
    [{ type: 'object', required: ['toString'] }, [{}, { toString: 1 }]],
    [
      { type: 'object', properties: { constructor: { type: 'number' } } },
      [{}, { constructor: 'x' }, { constructor: 1 }],
    ],
    [
      { type: 'object', additionalProperties: { type: 'number' }, maxProperties: 2 },
      [{ a: 1 }, { a: '' }, { a: 1, b: 2, c: 3 }],
    ],
    [{ type: 'object', propertyNames: { type: 'string', maxLength: 1 } }, [{ a: 1 }, { ab: 1 }]],
    [{ type: 'object', dependentRequired: { a: ['b'] } }, [{}, { a: 1 }, { b: 1 }, { a: 1, b: 1 }]],
    [{ oneOf: [{ required: ['a'] }, { required: ['b'] }] }, [{}, { a: 1 }, { b: 1 }, { a: 1, b: 1 }, 1]],
    [{ anyOf: [{ required: ['a'] }, { required: ['b'] }] }, [{}, { a: 1 }, { b: 1 }, { a: 1, b: 1 }]],
    [
      JSON.parse('{"if":{"properties":{"a":{"const":1}}},"then":{"required":["b"]},"else":{"properties":{"b":false}}}'),
      [{}, { a: 1 }, { a: 1, b: 1 }, { a: 2, b: 1 }, { a: 2 }],
    ],
  ])('judges by %j as the reference does', (schema, values) => {
    const judge = new Ajv2020({ strict: false, ownProperties: true }).compile(schema);
    for (const value of values)
      expect([value, misfits(value, schema as Shape).length === 0]).toEqual([value, judge(value)]);
  });
});

/** Errors of the branches of oneOf, anyOf and if, and those within a field's name, are not told one by one. */
const isWhole = ({ schemaPath, keyword, propertyName }: ErrorObject) =>
  !/\/(?:oneOf|anyOf)\/\d|\/if\//.test(schemaPath) && keyword !== 'if' && propertyName === undefined;

/** The place that an error of the reference is about: of a field that is missing or one too many, the field. */
function placeOf({ instancePath, params }: ErrorObject): string {
  const field = params.missingProperty ?? params.additionalProperty ?? params.propertyName;
  return field === undefined ? instancePath : `${instancePath}/${escapeStep(field)}`;
}

const escapeStep = (step: string) => step.replaceAll('~', '~0').replaceAll('/', '~1');
const pointer = (path: Path) => path.map((step) => `/${escapeStep(String(step))}`).join('');
