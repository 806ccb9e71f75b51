// Keeps the published files, each with its checksum, so that the page opens without a network after the first visit.
self.importScripts("./service-worker-assets.js");
const kept = `frameopt-${self.assetsManifest.version}`;
const wanted = self.assetsManifest.assets.filter(asset => !/(^service-worker.*\.js|\.(br|gz))$/.test(asset.url));

self.addEventListener("install", event => event.waitUntil((async () => {
  const cache = await caches.open(kept);
  await cache.addAll(wanted.map(asset => new Request(asset.url, { integrity: asset.hash, cache: "no-cache" })));
  self.skipWaiting();
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith("frameopt-") && name !== kept) await caches.delete(name);
  await self.clients.claim();
})()));

self.addEventListener("fetch", event => {
  if (event.request.method !== "GET") return;
  event.respondWith((async () => {
    const cache = await caches.open(kept);
    const asked = event.request.mode === "navigate" ? "index.html" : event.request;
    return await cache.match(asked, { ignoreSearch: true }) ?? fetch(event.request);
  })());
});
