/**
 * Keeps the files of the page, and nothing else, so that a card that was opened once can be read
 * without network. What the service answers about trips is never kept here.
 */
const CACHE = "page-@version@";
const FILES = [/* @files@ */];

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(["/", ...FILES]))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== self.location.origin) return;
  if (mode === "navigate" && pathname === "/") {
    // The newest page if there is a network: its files may have changed.
    event.respondWith(fetch(event.request).catch(() => caches.match("/")));
  } else if (FILES.includes(pathname)) {
    event.respondWith(caches.match(pathname).then((kept) => kept ?? fetch(event.request)));
  }
});
