// The demonstration without a connection. `NAME` and `FILES` stand before this text when it is built (see offline.mjs).
/* global NAME, FILES */
const PREFIX = 'leadwort-demonstration-';
/** Photographs that were looked at; they outlast a version. */
const PICTURES = 'leadwort-pictures';
/** Milliseconds that a weak signal gets before what is kept is shown. */
const PATIENCE = 4000;
/** Files whose name changes with what is in them. */
const HASHED = /-[\w-]{8}\.\w+$/;

self.addEventListener('install', (event) => event.waitUntil(fill()));

/** All or nothing: a part of a version is of no use without the rest. */
async function fill() {
  const cache = await caches.open(PREFIX + NAME);
  try {
    await cache.addAll(FILES.map((file) => new Request(file, { cache: 'no-cache' })));
  } catch (error) {
    await caches.delete(PREFIX + NAME);
    throw error;
  }
}

// The browser calls this once the new version is whole and no page of an older one is open.
self.addEventListener('activate', (event) =>
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys())
        if (name.startsWith(PREFIX) && name !== PREFIX + NAME) await caches.delete(name);
      await self.clients.claim();
    })(),
  ),
);

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  // Reports and whatever else is sent go their own way, and so does every other host.
  if (request.method !== 'GET' || address.origin !== location.origin) return;
  const below = address.href.slice(self.registration.scope.length).split(/[?#]/)[0];
  if (below.startsWith('images/')) event.respondWith(pictured(request));
  else if (FILES.includes(`./${below}`)) event.respondWith(HASHED.test(below) ? kept(request) : newest(request));
});

const find = async (request) =>
  (await caches.open(PREFIX + NAME)).match(request, { ignoreSearch: true, ignoreVary: true });

async function kept(request) {
  return (await find(request)) ?? fetch(request);
}

/** From the network while it answers in time; else what is kept, so that guidance is as fresh as it can be. */
async function newest(request) {
  const fetched = fetch(request).then((response) => (response.ok ? response : undefined));
  const late = new Promise((done) => setTimeout(done, PATIENCE));
  const first = await Promise.race([fetched, late]).catch(() => undefined);
  return first ?? (await find(request)) ?? fetch(request);
}

async function pictured(request) {
  const cache = await caches.open(PICTURES);
  const before = await cache.match(request);
  if (before) return before;
  const response = await fetch(request);
  // Without room the picture is still shown.
  if (response.ok) await cache.put(request, response.clone()).catch(() => undefined);
  return response;
}
