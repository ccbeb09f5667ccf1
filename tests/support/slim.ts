// Takes out of lit's templates what only their author sees: comments and indentation. One Vite plugin for the builds.
import MagicString from 'magic-string';
import type { Plugin } from 'vite';
import { slimCss, slimHtml } from './slim-text.ts';

const SLIM = new Map([
  ['css', slimCss],
  ['html', slimHtml],
  ['svg', slimHtml],
]);

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}
interface Tagged extends Node {
  readonly tag: { readonly name?: string };
  readonly quasi: { readonly quasis: readonly Node[] };
}

function* tagged(node: unknown): Generator<Tagged> {
  if (typeof node !== 'object' || node === null) return;
  if ('type' in node && node.type === 'TaggedTemplateExpression') yield node as Tagged;
  for (const child of Object.values(node)) yield* tagged(child);
}

/** The plugin, for every build of `src`. */
export function slim(): Plugin {
  return {
    name: 'slim-templates',
    transform: {
      filter: { id: /\/src\/.*\.ts$/, code: /\b(css|html|svg)`/ },
      handler(code) {
        const slimmer = new MagicString(code);
        for (const { tag, quasi } of tagged(this.parse(code))) {
          const shorten = SLIM.get(tag.name ?? '');
          for (const { start, end } of shorten ? quasi.quasis : [])
            if (end > start) slimmer.update(start, end, shorten?.(code.slice(start, end)) ?? '');
        }
        return { code: slimmer.toString(), map: slimmer.generateMap({ hires: 'boundary' }) };
      },
    },
  };
}
