import { clientsClaim } from 'workbox-core';
import { PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute, setCatchHandler } from 'workbox-routing';
import { NetworkFirst } from 'workbox-strategies';

/** What of a service worker's surroundings is used here; the other modules of the site are typed for pages. */
type LongEvent = Event & { waitUntil(work: Promise<unknown>): void };
declare const self: EventTarget & {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: { matchAll(): Promise<readonly unknown[]> };
  skipWaiting(): Promise<void>;
};

/** Filled in by the build. A file whose name changes with its content needs no checksum. */
declare const FILES: readonly (readonly [url: string, sha256?: string])[];
declare const VERSION: string;

const TAKE_OVER = 'take over';
const VISITED = `visited ${VERSION}`;

/** A server may say that its answer depends on what the asker sent. Those of a static site don't. */
const ignoreVary = true;

/**
 * Lets the waiting version take over, then asks for the page again, by its whole address. It asks for nothing else:
 * what is under way to the old version holds the new one up. If it is held up all the same, it tries again.
 */
const handOverPage = `<!doctype html>
<title>A new version</title>
<meta name="color-scheme" content="light dark">
<link rel="icon" href="data:,">
<script>
navigator.serviceWorker.oncontrollerchange = () => location.reload();
navigator.serviceWorker.ready.then(({ waiting }) => waiting ? waiting.postMessage('${TAKE_OVER}') : location.reload());
setTimeout(() => location.reload(), 5000);
</script>`;

/**
 * A new version waits while pages of the old one are open, so that no page is made of both. It takes over when the
 * last of them is left for another.
 */
async function handOver(event: Event, response: Response | undefined) {
  const asksForPage = 'request' in event && (event.request as Request).mode === 'navigate';
  if (!asksForPage || !self.registration.waiting) return response;
  if ((await self.clients.matchAll()).length > 1) return response;
  return new Response(handOverPage, { headers: { 'content-type': 'text/html' } });
}

self.addEventListener('message', ({ data }: Event & { data?: unknown }) => {
  if (data === TAKE_OVER) self.skipWaiting();
});

const kept = new PrecacheController({
  plugins: [{ cachedResponseWillBeUsed: ({ event, cachedResponse }) => handOver(event, cachedResponse) }],
});
kept.strategy.matchOptions = { ignoreVary };
kept.precache(
  FILES.map(([url, sha256]) =>
    // A file of another build is refused, and with it the whole version: the next visit tries again.
    sha256 ? { url, revision: sha256, integrity: `sha256-${sha256}` } : { url, revision: null },
  ),
);
registerRoute(
  new PrecacheRoute(kept, {
    // The figures of a calculator stand in the address of its page.
    ignoreURLParametersMatching: [/^/],
    urlManipulation: ({ url }) => [new URL(`${url.pathname}/`, url)],
  }),
);

// Pages too large to keep unasked are kept when they are read.
registerRoute(
  new NavigationRoute(
    new NetworkFirst({ cacheName: VISITED, matchOptions: { ignoreVary, ignoreSearch: true } }),
  ),
);
setCatchHandler(async ({ request }) => {
  const page = request.mode === 'navigate' && (await kept.matchPrecache('/offline/'));
  return page || Response.error();
});

self.addEventListener('activate', (event) =>
  (event as LongEvent).waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => /^visited /.test(name) && name !== VISITED)
            .map((name) => caches.delete(name)),
        ),
      ),
  ),
);
clientsClaim();
