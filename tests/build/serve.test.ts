import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { request, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../src/build/serve.js';

const page = `<!doctype html><title>A page</title>${'<p>words and words</p>'.repeat(200)}`;
const folder = mkdtempSync(join(tmpdir(), 'throwbook-serve-'));
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, '404.html'), '<!doctype html><title>No such page</title>');
  for (const part of ['embed', 'embed/bobweight']) {
    mkdirSync(join(folder, part));
    writeFileSync(join(folder, part, 'index.html'), '<!doctype html><title>A part</title>');
  }
  writeFileSync(join(folder, 'font.woff2'), Buffer.alloc(900, 7));
  server = await serve(folder, 0);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly code: number | undefined;
  readonly headers: IncomingMessage['headers'];
  readonly body: Buffer;
}

/** As the wire carries it: nothing is unpacked on the way. */
function ask(path: string, headers: Record<string, string> = {}, method = 'GET'): Promise<Answer> {
  return new Promise((done, failed) => {
    request(new URL(path, server.address), { headers, method }, (answer) => {
      const parts: Buffer[] = [];
      answer.on('data', (part: Buffer) => parts.push(part));
      answer.on('end', () => {
        done({ code: answer.statusCode, headers: answer.headers, body: Buffer.concat(parts) });
      });
    })
      .on('error', failed)
      .end();
  });
}

describe('every answer', () => {
  it.each([
    ['a page', '', 200],
    ['no page', 'nowhere', 404],
    ['an address that cannot be read', '%E0%A4%A', 400],
  ])('%s is not to be sniffed at, framed, or told of to others', async (_, path, code) => {
    const answer = await ask(path);
    expect(answer.code).toBe(code);
    expect(answer.headers).toMatchObject({
      'content-security-policy': "frame-ancestors 'none'",
      'referrer-policy': 'no-referrer',
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'access-control-allow-origin': '*',
    });
  });

  it.each([
    ['a part', 'embed/bobweight/'],
    ['a part, by its file', 'embed/bobweight/index.html'],
  ])('%s may stand in a page of another site', async (_, path) => {
    const { code, headers } = await ask(path);
    expect(code).toBe(200);
    expect(headers['content-security-policy']).toBe('frame-ancestors *');
    expect(headers['x-frame-options']).toBeUndefined();
    expect(headers['access-control-allow-origin']).toBe('*');
  });

  it.each([
    ['the list of parts', 'embed/', 200],
    ['a part that is not there', 'embed/nothing/', 404],
    ['a page by a roundabout way', 'embed/bobweight/../../', 200],
    ['a page by a hidden way', 'embed/bobweight/%2e%2e/%2e%2e/', 200],
    ['a page by an escaped way', 'embed/bobweight%2f..%2f..%2f', 200],
  ])('%s may not', async (_, path, code) => {
    const answer = await ask(path);
    expect(answer.code).toBe(code);
    expect(answer.headers).toMatchObject({
      'content-security-policy': "frame-ancestors 'none'",
      'x-frame-options': 'DENY',
    });
  });

  it('is to a question: the server takes nothing', async () => {
    const answer = await ask('', {}, 'POST');
    expect(answer.code).toBe(405);
    expect(answer.headers.allow).toBe('GET, HEAD');
  });
});

describe('a file is packed as the reader takes it', () => {
  it.each([
    ['br, gzip', 'br', brotliDecompressSync],
    ['gzip, deflate', 'gzip', gunzipSync],
    ['br;q=0, gzip;q=0.5', 'gzip', gunzipSync],
  ])('%s: %s', async (accepted, packing, unpack) => {
    const { headers, body } = await ask('', { 'accept-encoding': accepted });
    expect(headers['content-encoding']).toBe(packing);
    expect(headers.vary).toBe('accept-encoding');
    expect(Number(headers['content-length'])).toBe(body.length);
    expect(body.length).toBeLessThan(page.length / 10);
    expect(unpack(body).toString()).toBe(page);
  });

  it('and not at all where it is not asked for or does not get smaller', async () => {
    const plain = await ask('');
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.body.toString()).toBe(page);
    const font = await ask('font.woff2', { 'accept-encoding': 'br' });
    expect(font.headers['content-encoding']).toBeUndefined();
    expect(font.body).toHaveLength(900);
  });
});

describe('a file that the reader has', () => {
  it('is not sent again: by its tag, in the same packing', async () => {
    const packed = { 'accept-encoding': 'br' };
    const { headers } = await ask('', packed);
    const tag = headers.etag ?? '';
    expect(tag).toMatch(/^"[\w-]+"$/);
    const again = await ask('', { ...packed, 'if-none-match': `"another", W/${tag}` });
    expect(again.code).toBe(304);
    expect(again.body).toHaveLength(0);
    expect(again.headers).toMatchObject({ etag: tag, 'x-content-type-options': 'nosniff' });
    expect((await ask('', { 'if-none-match': tag })).code).toBe(200);
  });

  it('is not sent again: by its date, unless a tag says otherwise', async () => {
    const date = (await ask('')).headers['last-modified'] ?? '';
    expect((await ask('', { 'if-modified-since': date })).code).toBe(304);
    const both = { 'if-modified-since': date, 'if-none-match': '"another"' };
    expect((await ask('', both)).code).toBe(200);
    const before = new Date(Date.parse(date) - 1000).toUTCString();
    expect((await ask('', { 'if-modified-since': before })).code).toBe(200);
  });

  it('is sent once it has changed', async () => {
    const path = join(folder, 'changing.txt');
    writeFileSync(path, 'before');
    utimesSync(path, 1_700_000_000, 1_700_000_000);
    const { etag = '' } = (await ask('changing.txt')).headers;
    writeFileSync(path, 'after');
    const after = await ask('changing.txt', { 'if-none-match': etag });
    expect(after.code).toBe(200);
    expect(after.body.toString()).toBe('after');
  });

  it('the page for what is not there is always sent', async () => {
    const { etag = '' } = (await ask('nowhere')).headers;
    const again = await ask('nowhere', { 'if-none-match': etag });
    expect(again.code).toBe(404);
    expect(again.body.length).toBeGreaterThan(20);
  });
});

it('a question for the head is answered without the body', async () => {
  const { headers, body } = await ask('', {}, 'HEAD');
  expect(Number(headers['content-length'])).toBe(page.length);
  expect(body).toHaveLength(0);
});
