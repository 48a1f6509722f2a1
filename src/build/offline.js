import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { injectManifest } from 'workbox-build';

/** The worker's file in the root of the site; `components/offline` registers it by this name. */
const name = 'offline.js';

/**
 * Writes the service worker that keeps a built site on the device.
 *
 * @param {string} folder of the built site
 * @param {string} base path that the site is served under, with a slash at both ends
 * @returns {Promise<{ count: number, size: number }>} the files it keeps, and their bytes before packing
 */
export async function writeWorker(folder, base) {
  const workshop = mkdtempSync(join(tmpdir(), 'throwbook-offline-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      define: { 'process.env.NODE_ENV': '"production"' },
      build: {
        outDir: workshop,
        target: 'es2022',
        rolldownOptions: {
          input: fileURLToPath(new URL('offline-worker.js', import.meta.url)),
          // One plain script: not every browser takes a module here.
          output: { format: 'iife', entryFileNames: name },
        },
      },
    });
    const { count, size, warnings } = await injectManifest({
      swSrc: join(workshop, name),
      swDest: join(folder, name),
      globDirectory: folder,
      globPatterns: [
        '**/*.{css,html,js,json,svg,webmanifest,woff2,pagefind,pf_fragment,pf_index,pf_meta}',
      ],
      // Files and frames for others than the reader.
      globIgnores: ['data/**/*.json', 'embed/*/*'],
      // Their names change with what they hold.
      dontCacheBustURLsMatching: /_astro\/|\.pf_(?:fragment|index|meta)$/,
      manifestTransforms: [
        (entries) => ({
          manifest: entries.map((entry) => ({ ...entry, url: base + pagePath(entry.url) })),
        }),
      ],
    });
    if (warnings.length > 0) throw new Error(warnings.join('\n'));
    return { count, size };
  } finally {
    rmSync(workshop, { recursive: true, force: true });
  }
}

/**
 * The address of a page is its folder's: hosts send whoever asks for its file on to there.
 *
 * @param {string} file
 */
function pagePath(file) {
  return file.replace(/(^|\/)index\.html$/, '$1');
}

/** A worker that goes away: the port of a development server may have served a built site before. */
const farewell = `self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', async () => {
  await self.registration.unregister();
  for (const client of await self.clients.matchAll()) client.navigate(client.url);
});
`;

/**
 * Astro integration: the site keeps itself on the device of whoever has visited it. Only what is built does; a
 * development server takes back what an earlier site on its port has kept.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function offline() {
  let base = '/';
  return {
    name: 'throwbook-offline',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = `/${config.base}/`.replace(/\/+/g, '/');
      },
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          if (!request.url?.endsWith(`/${name}`)) return next();
          response.setHeader('content-type', 'text/javascript');
          response.end(farewell);
        });
      },
      'astro:build:done': async ({ dir, logger }) => {
        const { count, size } = await writeWorker(fileURLToPath(dir), base);
        logger.info(`${count} files, ${(size / 1e6).toFixed(1)} MB before packing, kept offline`);
      },
    },
  };
}
