// Vitest's settings, kept out of vite.config.ts so that a build never loads Vitest or looks for a browser.
import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import type { Plugin } from 'vite';
import type { ViteUserConfig } from 'vitest/config';
import { ensureBrowser } from './find-browser.mjs';
import { Receiver } from './receiver.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Reports are sent to a real server: the one that serves the tests. */
function receiving(): Plugin {
  const receiver = new Receiver();
  return {
    name: 'receiver',
    configureServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        if (request.url?.startsWith('/receiver/')) void receiver.handle(request, response);
        else next();
      });
    },
  };
}

export async function vitest(): Promise<ViteUserConfig> {
  const chromium = process.env.ENGINES !== 'none';
  const executablePath = chromium ? (await ensureBrowser()).path : '';
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return {
    // Found late, these would reload the page under a running test.
    optimizeDeps: {
      include: [
        'lit/directives/repeat.js',
        'lit/directives/keyed.js',
        'lit/directives/live.js',
        'fuse.js/min-basic',
        'exifr/src/core.mjs',
        'exifr/src/file-parsers/heif.mjs',
        'exifr/src/file-parsers/jpeg.mjs',
        'exifr/src/segment-parsers/tiff-exif.mjs',
        'idb',
        'point-in-polygon-hao',
      ],
    },
    resolve: { alias: { '@esm-bundle/chai': here('one-chai.ts') } },
    test: {
      attachmentsDir: 'node_modules/.vitest-attachments',
      // These end what hangs. They are no measure of speed: a busy machine may be ten times slower than an idle one.
      testTimeout: 60_000,
      hookTimeout: 120_000,
      expect: { poll: { timeout: 15_000 } },
      coverage: {
        provider: 'v8',
        include: ['src/**/*.ts'],
        exclude: ['**/*.{test,bench}.ts', 'src/site/**', '**/generated/**'],
        reporter: ['text', 'json-summary'],
      },
      projects: [
        {
          extends: true,
          test: {
            name: 'node',
            environment: 'node',
            include: ['{src,tests}/**/*.test.ts'],
            exclude: ['**/*.browser.test.ts'],
          },
        },
        ...(chromium
          ? [
              {
                extends: true as const,
                plugins: [receiving()],
                test: {
                  name: 'chromium',
                  include: ['{src,tests}/**/*.browser.test.ts'],
                  setupFiles: [here('setup-browser.ts')],
                  browser: {
                    enabled: true,
                    headless: true,
                    screenshotFailures: false,
                    // One picture for every machine: what differs between them is let pass by the comparison.
                    expect: {
                      toMatchScreenshot: {
                        resolveScreenshotPath: ({ arg, ext, root }: Readonly<Record<'arg' | 'ext' | 'root', string>>) =>
                          `${root}/tests/pictures/looked-at/${arg}${ext}`,
                      },
                    },
                    instances: [{ browser: 'chromium' as const }],
                    provider: playwright({ launchOptions: { executablePath, args } }),
                  },
                },
              },
            ]
          : []),
      ],
    },
  };
}
