/**
 * The service worker: it keeps every file of the build on the device and answers from there, so that the site works
 * without a connection after one visit. The build puts the list of files in (offline.js).
 */
import {
  addPlugins,
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';

const canPack = 'CompressionStream' in self;
const mark = 'x-packed';

/** The same answer with another body; of its headers a page needs no more than the type. */
function answer({ status, headers }, body, marks) {
  const type = headers.get('content-type') ?? 'application/octet-stream';
  return new Response(body, { status, headers: { 'content-type': type, ...marks } });
}

/** HTML and script take a sixth of their room when packed, and a phone has little to spare. Some files are packed. */
addPlugins([
  {
    cacheWillUpdate: async ({ response }) => {
      if (response.status !== 200) return null;
      if (
        !canPack ||
        response.body === null ||
        /font|octet-stream|png/.test(response.headers.get('content-type'))
      )
        return response;
      const packed = response.body.pipeThrough(new CompressionStream('gzip'));
      return answer(response, packed, { [mark]: 'gzip' });
    },
    cachedResponseWillBeUsed: async ({ cachedResponse }) =>
      cachedResponse?.headers.has(mark)
        ? answer(cachedResponse, cachedResponse.body.pipeThrough(new DecompressionStream('gzip')))
        : cachedResponse,
  },
]);
cleanupOutdatedCaches();
precacheAndRoute(self.__WB_MANIFEST, {
  // No page of the site reads a query: whatever stands there, the page is the same.
  ignoreURLParametersMatching: [/./],
  // An address typed without its last slash is the same page.
  urlManipulation: ({ url }) =>
    url.pathname.endsWith('/') ? [] : [new URL(`${url.pathname}/`, url)],
});

const noSuchPage = createHandlerBoundToURL(new URL('404.html', self.location.href).pathname);
registerRoute(
  ({ request }) => request.mode === 'navigate',
  async (context) => {
    try {
      return await fetch(context.request);
    } catch {
      const shown = await noSuchPage(context);
      return new Response(shown.body, { status: 404, headers: shown.headers });
    }
  },
);

// A version that is newer than the page waits until its reader asks for it.
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') void self.skipWaiting();
});
// The page of the first visit is answered from here as well: what it has not fetched yet may be wanted offline.
self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});
