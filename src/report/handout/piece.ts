// A page as plain data, put down in two ways: as text for a file, and as nodes for a page that allows no markup from text.
import { html } from '../sheet/escape.ts';

/** Text, or an element with attributes and what stands in it. Lower-case tags only. */
export type Piece = string | Tagged;
export interface Tagged {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly inside: readonly Piece[];
}

/** `p('quiet')('Text')` is a paragraph of the class quiet. */
export const tag =
  (name: string, attributes: string | Readonly<Record<string, string>> = {}) =>
  (...inside: readonly Piece[]): Tagged => ({
    tag: name,
    attributes: typeof attributes === 'string' ? { class: attributes } : attributes,
    inside,
  });

const BLOCKS = new Set(['article', 'aside', 'div', 'footer', 'h1', 'h2', 'header', 'li', 'ol', 'p', 'section', 'ul']);

/** HTML in which all text and every attribute's value is escaped; blocks begin a new line. */
export function asText(piece: Piece): string {
  if (typeof piece === 'string') return html(piece);
  const { tag: name, attributes, inside } = piece;
  const given = Object.entries(attributes).map(([attribute, value]) => ` ${attribute}="${html(value)}"`);
  return `${BLOCKS.has(name) ? '\n' : ''}<${name}${given.join('')}>${inside.map(asText).join('')}</${name}>`;
}

const SVG = new Set(['svg', 'g', 'path']);

/** What a document must be able to do; the browser's own can. */
export interface Maker<Made> {
  readonly createElementNS: (
    space: string,
    name: string,
  ) => Made & {
    setAttribute(name: string, value: string): void;
    append(...inside: (Made | string)[]): void;
  };
}

/** The same as nodes of a document: nothing is read as markup. */
export function asNode<Made>(piece: Tagged, maker: Maker<Made>): Made {
  const space = SVG.has(piece.tag) ? 'http://www.w3.org/2000/svg' : 'http://www.w3.org/1999/xhtml';
  const made = maker.createElementNS(space, piece.tag);
  for (const [name, value] of Object.entries(piece.attributes)) made.setAttribute(name, value);
  made.append(...piece.inside.map((one) => (typeof one === 'string' ? one : asNode(one, maker))));
  return made;
}
