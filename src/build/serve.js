import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join, normalize, resolve, sep } from 'node:path';
import { answer, headersOf, standingOf } from './answer.js';

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
 * @param {import('node:http').ServerResponse} response
 * @param {number} code
 * @param {string} words
 * @param {Record<string, string>} [headers]
 */
function say(response, code, words, headers = {}) {
  response.writeHead(code, {
    ...headersOf('alone'),
    'content-type': 'text/plain; charset=utf-8',
    ...headers,
  });
  response.end(`${words}\n`);
}

/**
 * @param {string} root
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function respond(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    say(response, 405, 'The pages can be read, and nothing else.', { allow: 'GET, HEAD' });
    return;
  }
  let path;
  try {
    path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
  } catch {
    say(response, 400, 'The address cannot be read.');
    return;
  }
  const file = await fileFor(root, path);
  const isFolder = file !== undefined && file.endsWith('index.html') && !path.endsWith('.html');
  if (isFolder && !path.endsWith('/')) {
    response.writeHead(301, { ...headersOf('alone'), location: encodeURI(`${path}/`) });
    response.end();
    return;
  }
  const shown = file ?? (await fileFor(root, '/404.html'));
  if (shown === undefined) {
    say(response, 404, 'There is no page at this address.');
    return;
  }
  const { code, headers, body } = await answer(
    shown,
    request.headers,
    file === undefined ? 404 : 200,
    file === undefined ? 'alone' : standingOf(path),
  );
  response.writeHead(code, headers);
  response.end(request.method === 'HEAD' ? undefined : body);
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
  const server = createServer((request, response) => {
    respond(root, request, response).catch(() => {
      // A file that went while it was read: a build is running.
      if (!response.headersSent) say(response, 503, 'The file cannot be read just now.');
      response.end();
    });
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
