// Keeps one complete version of the page, so that it opens without a network.
// The build writes the two lines below; see `cargo xtask stamp`.
const VERSION = 'unstamped';
const FILES = [];

// Other copies of the page at the same origin keep their own caches.
const OURS = `ampwright ${self.registration.scope} `;
const CACHE = OURS + VERSION;
const START = './';

// All or nothing: one missing file, and the version before stays.
self.addEventListener('install', (event) => {
  const wanted = FILES.map((path) => new Request(path, { cache: 'no-cache' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(wanted)));
});

let takingOver = false;
self.addEventListener('message', (event) => {
  if (event.data?.type !== 'take-over') return;
  takingOver = true;
  self.skipWaiting();
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => names.filter((name) => name.startsWith(OURS) && name !== CACHE))
      .then((old) => Promise.all(old.map((name) => caches.delete(name))))
      .then(() => takingOver && self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  if (new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const cache = await caches.open(CACHE);
  if (request.mode !== 'navigate') return (await cache.match(request)) ?? fetch(request);
  const wanted = new URL(request.url);
  // The start page finds its parts only from its own folder.
  if (new URL(START, wanted).href !== self.registration.scope) {
    return Response.redirect(self.registration.scope + wanted.search);
  }
  return (await cache.match(START)) ?? fetch(request);
}
