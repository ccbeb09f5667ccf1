// A second, slower minifying pass over what the bundler has made smaller already. One Vite plugin, for the standalone build.
import { minify } from 'terser';
import type { Plugin } from 'vite';

/** The plugin. It runs when the bundler is done, since its own minifier would undo a part of this; maps are carried on. */
export function terse(): Plugin {
  return {
    name: 'terse',
    async generateBundle(_options, bundle) {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk') continue;
        const map = bundle[`${chunk.fileName}.map`];
        const content = map?.type === 'asset' ? String(map.source) : undefined;
        const less = await minify(chunk.code, {
          module: true,
          ecma: 2020,
          compress: { passes: 2 },
          ...(content === undefined
            ? {}
            : { sourceMap: { content, ...(chunk.isEntry ? { url: `${chunk.fileName}.map` } : {}) } }),
        });
        if (less.code === undefined) throw new Error(`${chunk.fileName}: nothing left`);
        chunk.code = less.code;
        if (map?.type === 'asset') map.source = String(less.map);
      }
    },
  };
}
