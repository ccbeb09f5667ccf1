// What a file of service areas looks like, as far as a shape can say it.
import type { Shape } from '../../key/shape.ts';

const line: Shape = { type: 'string', minLength: 1, maxLength: 200 };
const day: Shape = {
  type: 'string',
  pattern: /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/,
  means: 'a day as YYYY-MM-DD',
};
const tag: Shape = {
  type: 'string',
  pattern: /^[A-Za-z]{2,3}(?:-[A-Za-z\d]{2,8})*$/,
  means: 'a language tag, as en or es-MX',
};
const texts: Shape = {
  type: ['string', 'object'],
  minLength: 1,
  maxLength: 1000,
  maxProperties: 50,
  propertyNames: tag,
  additionalProperties: { type: 'string', minLength: 1, maxLength: 1000 },
};
const contacts: Shape = {
  type: 'array',
  minItems: 1,
  maxItems: 10,
  items: {
    type: 'object',
    additionalProperties: false,
    properties: {
      person: line,
      phone: {
        type: 'string',
        pattern: /^\+?(?=(?:\D*\d){3})[\d\s().-]{3,30}$/,
        means: 'a telephone number of digits, spaces, dots, hyphens and parentheses',
      },
      email: {
        type: 'string',
        maxLength: 200,
        pattern: /^[\w.+-]+@[\w-]+(?:\.[\w-]+)+$/,
        means: 'one mail address',
      },
      form: {
        type: 'string',
        maxLength: 1000,
        pattern: /^https?:\/\/[^\s\p{Cc}"<>\\^`{|}]+$/u,
        means: 'one web address, http or https',
      },
      post: texts,
      hours: texts,
      languages: { type: 'array', maxItems: 20, items: tag },
    },
  },
};

export const programmeShape: Shape = {
  type: 'object',
  additionalProperties: false,
  required: ['programme', 'contacts', 'reviewed'],
  properties: {
    programme: texts,
    organisation: texts,
    statement: texts,
    offers: { type: 'array', maxItems: 20, items: texts },
    contacts,
    until: day,
    reviewed: day,
    review: day,
    plants: { type: 'array', minItems: 1, maxItems: 500, items: line },
  },
};
export const landmarkShape: Shape = {
  type: 'object',
  additionalProperties: false,
  required: ['landmark'],
  properties: { landmark: texts },
};

/** Most features of a file. */
const FEATURES = 500;
/** Members that nobody here knows may stand beside these (RFC 7946, section 6.1). */
export const fileShape: Shape = {
  type: 'object',
  required: ['type', 'features'],
  properties: {
    type: { const: 'FeatureCollection' },
    bbox: { type: 'array', minItems: 4, maxItems: 4, items: { type: 'number' } },
    near: { type: 'number', minimum: 0, maximum: 500 },
    elsewhere: {
      type: 'object',
      additionalProperties: false,
      required: ['name', 'contacts'],
      properties: { name: texts, statement: texts, contacts },
    },
    features: {
      type: 'array',
      minItems: 1,
      maxItems: FEATURES,
      items: {
        type: 'object',
        required: ['type', 'geometry', 'properties'],
        properties: {
          type: { const: 'Feature' },
          id: { type: ['string', 'integer'], minLength: 1, maxLength: 100 },
          geometry: { type: 'object', required: ['type', 'coordinates'] },
          properties: { type: 'object' },
        },
      },
    },
  },
};

const position: Shape = { type: 'array', minItems: 2, maxItems: 3, items: { type: 'number' } };
const polygon: Shape = { type: 'array', minItems: 1, items: { type: 'array', minItems: 4, items: position } };
const course: Shape = { type: 'array', minItems: 2, items: position };
const geometry = (type: string, coordinates: Shape): [string, Shape] => [
  type,
  { type: 'object', properties: { type: { const: type }, coordinates } },
];
/** Kinds of geometry that an area may have, and those of a landmark. */
export const areaShapes: ReadonlyMap<string, Shape> = new Map([
  geometry('Polygon', polygon),
  geometry('MultiPolygon', { type: 'array', minItems: 1, items: polygon }),
]);
export const landmarkShapes: ReadonlyMap<string, Shape> = new Map([
  geometry('Point', position),
  geometry('LineString', course),
  geometry('MultiLineString', { type: 'array', minItems: 1, items: course }),
]);
