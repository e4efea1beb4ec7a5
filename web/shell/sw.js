// Keeps one complete version of the page, so that it opens without a network.
// The build writes the two lines below; see `cargo xtask stamp`.
const VERSION = 'unstamped';
const FILES = {};

// Other copies of the page at the same origin keep their own caches.
const OURS = `ampwright ${self.registration.scope} `;
const CACHE = OURS + VERSION;
const START = self.registration.scope;

// All or nothing: one file that is missing or not as it was built, and the
// version before stays.
self.addEventListener('install', (event) => event.waitUntil(fill()));

async function fill() {
  const wanted = Object.entries(FILES).map(
    ([path, integrity]) => new Request(path, { cache: 'no-cache', integrity }),
  );
  try {
    await (await caches.open(CACHE)).addAll(wanted);
  } catch (reason) {
    await caches.delete(CACHE);
    throw reason;
  }
}

let takingOver = false;
self.addEventListener('message', (event) => {
  if (event.data === 'tidy') event.waitUntil(tidy());
  if (event.data !== 'take-over') return;
  takingOver = true;
  self.skipWaiting();
});

self.addEventListener('activate', (event) => {
  if (takingOver) event.waitUntil(self.clients.claim());
});

const others = async () =>
  (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== CACHE);

// Earlier versions go once a single window is open: in another one they may
// still be at work, and ask for more of their files. One that comes stays.
async function tidy() {
  const now = self.registration;
  const { active } = now;
  const open = await self.clients.matchAll({ includeUncontrolled: true, type: 'window' });
  const names = await others();
  if (open.length > 1 || now.installing || now.waiting || now.active !== active) return;
  await Promise.all(names.map((name) => caches.delete(name)));
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  if (new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(request.mode === 'navigate' ? page(request) : part(request));
});

const find = (address, cacheName) => caches.match(address, { cacheName, ignoreVary: true });

async function kept(address) {
  let found = await find(address, CACHE);
  for (const name of found ? [] : await others()) found ??= await find(address, name);
  return found;
}

async function part(request) {
  return (await kept(request)) ?? fetch(request);
}

async function page(request) {
  const { origin, pathname, search } = new URL(request.url);
  if ([START, `${START}index.html`].includes(origin + pathname)) {
    const found = await kept(START);
    // A host may have led from the folder to a file: no browser takes that for
    // the answer to its own question.
    if (found?.redirected) return new Response(found.body, found);
    return found ?? fetch(request);
  }
  // Somebody else's page below our folder, or none: without a network, ours.
  return fetch(request).catch(() => Response.redirect(START + search));
}
