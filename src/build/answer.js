import { createHash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { extname } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

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
 * What every answer says; the README asks the same of any other host. All that is served is public, and nothing of it
 * depends on who asks: a script of another site may read it. So may a frame that its page has cut off from every site,
 * which else could not fetch the code of the part that it shows.
 */
const always = /** @type {const} */ ({
  'access-control-allow-origin': '*',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
});

/** @typedef {'alone' | 'framed'} Standing whether a page stands for itself, or may stand in a page of another site */

/**
 * The headers of every answer of a standing.
 *
 * @param {Standing} standing
 * @returns {Record<string, string>}
 */
export function headersOf(standing) {
  if (standing === 'framed') return { ...always, 'content-security-policy': 'frame-ancestors *' };
  return {
    ...always,
    'content-security-policy': "frame-ancestors 'none'",
    'x-frame-options': 'DENY',
  };
}

/**
 * The parts for pages of other sites stand below `embed/`, each in a folder of its own; nothing else may be framed.
 *
 * @param {string} path decoded path of the request
 * @returns {Standing}
 */
export function standingOf(path) {
  return /^\/embed\/[a-z0-9-]+\/(?:index\.html)?$/.test(path) ? 'framed' : 'alone';
}

/** Packed once and kept, so a level that takes a while costs each file only once. */
const packings = /** @type {const} */ ({
  br: (/** @type {Buffer} */ body) =>
    promisify(brotliCompress)(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }),
  gzip: (/** @type {Buffer} */ body) => promisify(gzip)(body),
});

/** @typedef {keyof typeof packings} Packing */
/** @typedef {{ changed: number, body: Buffer, hash: string, packed: Map<Packing, Promise<Buffer>> }} Kept */

/** @type {Map<string, Kept>} */
const files = new Map();

/**
 * A file as it is now; read again only when it has changed.
 *
 * @param {string} path
 * @returns {Promise<Kept>} `changed` is the time of its last change, in whole seconds as headers say it [ms]
 */
async function read(path) {
  const { mtimeMs } = await stat(path);
  const changed = Math.floor(mtimeMs / 1000) * 1000;
  const known = files.get(path);
  if (known?.changed === changed) return known;
  const body = await readFile(path);
  const hash = createHash('sha256').update(body).digest('base64url').slice(0, 22);
  const kept = { changed, body, hash, packed: new Map() };
  files.set(path, kept);
  return kept;
}

/**
 * The packing to send a file in; undefined for one that does not get smaller, or where the reader takes none.
 *
 * @param {string} path
 * @param {string | undefined} accepted the header Accept-Encoding
 * @returns {Packing | undefined}
 */
function packingFor(path, accepted = '') {
  if (/\.(?:png|woff2|pagefind|pf_[a-z]+)$/.test(path)) return undefined;
  const taken = accepted
    .split(',')
    .map((one) => one.trim().toLowerCase())
    .filter((one) => !/;\s*q=0(?:\.0*)?$/.test(one))
    .map((one) => one.replace(/\s*;.*/, ''));
  return /** @type {const} */ (['br', 'gzip']).find((packing) => taken.includes(packing));
}

/**
 * True when the reader has this very state of a file.
 *
 * @param {import('node:http').IncomingHttpHeaders} asked
 * @param {string} tag
 * @param {number} changed [ms]
 */
function isKnown(asked, tag, changed) {
  const tags = asked['if-none-match'];
  if (tags !== undefined)
    return tags.split(',').some((one) => ['*', tag].includes(one.trim().replace(/^W\//, '')));
  const since = Date.parse(asked['if-modified-since'] ?? '');
  return since >= changed;
}

/**
 * The answer that a file is: packed where the reader takes it so, and 304 where the reader has it already.
 *
 * @param {string} path
 * @param {import('node:http').IncomingHttpHeaders} asked
 * @param {200 | 404} code 404 for the page that stands for one that is not there
 * @param {Standing} standing
 * @returns {Promise<{ code: number, headers: Record<string, string | number>, body: Buffer | undefined }>}
 */
export async function answer(path, asked, code, standing) {
  const { body, changed, hash, packed } = await read(path);
  const packing = packingFor(path, asked['accept-encoding']);
  const tag = `"${hash}${packing === undefined ? '' : `-${packing}`}"`;
  const headers = {
    ...headersOf(standing),
    'cache-control': 'no-cache',
    etag: tag,
    'last-modified': new Date(changed).toUTCString(),
    vary: 'accept-encoding',
  };
  if (code === 200 && isKnown(asked, tag, changed)) return { code: 304, headers, body: undefined };
  if (packing !== undefined && !packed.has(packing)) packed.set(packing, packings[packing](body));
  const sent = packing === undefined ? body : ((await packed.get(packing)) ?? body);
  return {
    code,
    headers: {
      ...headers,
      ...(packing === undefined ? {} : { 'content-encoding': packing }),
      'content-type': types[extname(path)] ?? 'application/octet-stream',
      'content-length': sent.length,
    },
    body: sent,
  };
}
