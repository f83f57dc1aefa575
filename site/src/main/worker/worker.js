/* Keeps the whole site, so that it works without a network after the first visit. The list FILES, address to hash, is written above this
   text when the site is built. A new build is fetched beside the old one, only what changed, and waits until a reader asks for it. */
(function () {
  "use strict";

  var CACHE = "loomwright";
  var AT_A_TIME = 6;
  var scope = new URL("./", self.location.href).href;

  /* Files of two builds can lie side by side: each is kept under its hash. */
  function keptAs(address) {
    return scope + "kept/" + FILES[address] + "/" + address;
  }

  /* The file that an address asks for, or null if it is not of this site. */
  function addressOf(url) {
    var plain = url.split("#")[0].split("?")[0];
    if (plain.indexOf(scope) !== 0) {
      return null;
    }
    var address = plain.slice(scope.length);
    if (address === "") {
      return "index.html";
    }
    return address in FILES ? address : address + ".html" in FILES ? address + ".html" : null;
  }

  async function hashOf(bytes) {
    var digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return Array.prototype.map.call(digest.subarray(0, 16), function (each) {
      return (each + 256).toString(16).slice(1);
    }).join("");
  }

  /* While a site is being copied to its server it is of two builds. Such a file is refused, and the next visit tries again. */
  async function fetchOne(cache, address) {
    var answer = await fetch(scope + address, { cache: "no-cache" });
    var bytes = await answer.arrayBuffer();
    if (!answer.ok || (await hashOf(bytes)) !== FILES[address]) {
      throw new Error(address + " is not of this build");
    }
    await cache.put(keptAs(address), new Response(bytes, { headers: { "Content-Type": answer.headers.get("Content-Type") } }));
  }

  async function fetchMissing() {
    var cache = await caches.open(CACHE);
    var kept = new Set((await cache.keys()).map(function (request) { return request.url; }));
    var missing = Object.keys(FILES).filter(function (address) { return !kept.has(keptAs(address)); });
    for (var i = 0; i < missing.length; i += AT_A_TIME) {
      await Promise.all(missing.slice(i, i + AT_A_TIME).map(function (address) { return fetchOne(cache, address); }));
    }
  }

  async function dropOthers() {
    var cache = await caches.open(CACHE);
    var wanted = new Set(Object.keys(FILES).map(keptAs));
    var others = (await cache.keys()).filter(function (request) { return !wanted.has(request.url); });
    await Promise.all(others.map(function (request) { return cache.delete(request); }));
    await self.clients.claim();
  }

  async function answerTo(request, address) {
    var cache = await caches.open(CACHE);
    return (await cache.match(keptAs(address))) || fetch(request);
  }

  self.addEventListener("install", function (event) {
    event.waitUntil(fetchMissing());
  });
  self.addEventListener("activate", function (event) {
    event.waitUntil(dropOthers());
  });
  self.addEventListener("fetch", function (event) {
    var address = event.request.method === "GET" ? addressOf(event.request.url) : null;
    if (address !== null && address in FILES) {
      event.respondWith(answerTo(event.request, address));
    }
  });
  self.addEventListener("message", function (event) {
    if (event.data === "load") {
      self.skipWaiting();
    } else if (event.data === "size") {
      event.ports[0].postMessage({ files: Object.keys(FILES).length, bytes: BYTES });
    }
  });
})();
