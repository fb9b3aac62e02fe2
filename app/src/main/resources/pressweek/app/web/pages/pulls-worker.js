// Keeps the pull page and its files, so that a reload on the floor works without a connection. Lists and ticks are not its business:
// those are kept by the page itself.
const STORE = 'pressweek-pulls';
const FILES = ['/pulls', '/assets/base.css', '/assets/pulls.css', '/assets/icon.svg', '/assets/preact.js', '/assets/shell.js',
  '/assets/api.js', '/assets/clock.js', '/assets/live.js', '/assets/pulls.js', '/assets/pulls-kept.js', '/assets/pulls-send.js',
  '/assets/pulls-scan.js', '/assets/pulls-short.js', '/assets/pulls-row.js', '/assets/pulls-state.js'];
const PATIENCE_MS = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(STORE).then((store) => store.addAll(FILES)).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

function fresh(request) {
  const ending = new AbortController();
  const timer = setTimeout(() => ending.abort(), PATIENCE_MS);
  return fetch(request, { signal: ending.signal }).finally(() => clearTimeout(timer));
}

async function answer(request, path) {
  const store = await caches.open(STORE);
  try {
    const response = await fresh(request);
    if (response.ok && !response.redirected) await store.put(path, response.clone());
    return response;
  } catch (gone) {
    const last = await store.match(path);
    if (last) return last;
    throw gone;
  }
}

self.addEventListener('fetch', (event) => {
  const { pathname, origin } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== self.location.origin || !FILES.includes(pathname)) return;
  event.respondWith(answer(event.request, pathname));
});
