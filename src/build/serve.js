import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, resolve, sep } from 'node:path';

/** @type {Readonly<Record<string, string>>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/**
 * The file that answers a path, as any static host would find it; undefined when there is none.
 *
 * @param {string} root
 * @param {string} path decoded path of the request, beginning with a slash
 * @returns {Promise<string | undefined>}
 */
async function fileFor(root, path) {
  const wanted = normalize(join(root, path));
  if (wanted !== root && !wanted.startsWith(root + sep)) return undefined;
  for (const file of [wanted, join(wanted, 'index.html')]) {
    try {
      if ((await stat(file)).isFile()) return file;
    } catch {
      continue;
    }
  }
  return undefined;
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @returns {Promise<number>} the port that was got
 */
function listen(server, port) {
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', failed);
      const address = server.address();
      done(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

/**
 * Serves a folder of static files on this machine only.
 *
 * @param {string} folder
 * @param {number} port 0 takes any free one; another one that is taken makes way for the next free one
 * @returns {Promise<{ address: string, port: number, close: () => Promise<void> }>} `address` ends in a slash
 */
export async function serve(folder, port) {
  const root = resolve(folder);
  const server = createServer(async (request, response) => {
    let path;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    } catch {
      response.writeHead(400, { 'content-type': 'text/plain; charset=utf-8' });
      response.end('The address cannot be read.\n');
      return;
    }
    const file = await fileFor(root, path);
    const isFolder = file !== undefined && file.endsWith('index.html') && !path.endsWith('.html');
    if (isFolder && !path.endsWith('/')) {
      response.writeHead(301, { location: `${path}/` });
      response.end();
      return;
    }
    const shown = file ?? (await fileFor(root, '/404.html'));
    if (shown === undefined) {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' });
      response.end('There is no page at this address.\n');
      return;
    }
    response.writeHead(file === undefined ? 404 : 200, {
      'content-type': types[extname(shown)] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(shown).pipe(response);
  });

  let got = -1;
  for (let tried = port; got < 0; tried += 1) {
    try {
      got = await listen(server, tried);
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!taken || port === 0 || tried >= port + 50) throw error;
    }
  }
  return {
    address: `http://localhost:${got}/`,
    port: got,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
