// Hands repository folders to the demonstration: served as they are in development, copied by a build with its worker.
import { cpSync, existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Connect, Plugin } from 'vite';
import { writeWorker } from './worker/offline.mjs';

/** Sends /gallery to /gallery/, as static hosts do, so that relative addresses on the page hold. */
const addSlash =
  (pages: string): Connect.NextHandleFunction =>
  (request, response, next) => {
    const [path = '', query] = (request.url ?? '').split('?');
    if (!/^\/[\w/-]*[\w-]$/.test(path) || !existsSync(`${pages}${path}/index.html`)) return next();
    response.writeHead(302, { location: `${path}/${query === undefined ? '' : `?${query}`}` }).end();
  };

/**
 * `copied` maps the first part of an address ("keys") to a folder of the repository; `live` maps an address to
 * the source that answers for it in development, so that the partner's page needs no build.
 */
export function folders(copied: Readonly<Record<string, string>>, live: Readonly<Record<string, string>> = {}): Plugin {
  let root = '';
  let outDir = '';
  return {
    name: 'folders',
    configResolved(config) {
      root = config.root;
      outDir = resolve(config.root, config.build.outDir);
    },
    configurePreviewServer(server) {
      server.middlewares.use(addSlash(outDir));
    },
    configureServer(server) {
      server.middlewares.use(addSlash(root));
      server.middlewares.use((request, _response, next) => {
        const [path = '', query] = (request.url ?? '').split('?');
        const [, first = '', rest = ''] = /^\/([^/]+)\/(.*)/.exec(path) ?? [];
        const source = Object.hasOwn(live, path)
          ? live[path]
          : Object.hasOwn(copied, first)
            ? `${copied[first]}/${rest}`
            : undefined;
        // Vite's own file server then answers: it knows the media types and keeps to the allowed folders.
        if (source !== undefined)
          request.url = `/@fs/${resolve(source).replace(/^\//, '')}${query === undefined ? '' : `?${query}`}`;
        next();
      });
    },
    writeBundle() {
      for (const [name, from] of Object.entries(copied))
        if (existsSync(from)) cpSync(from, resolve(outDir, name), { recursive: true });
      writeWorker(outDir);
    },
  };
}
