/*
 * Keeps the page's own files on the device, so that it opens without a connection. Its list is written by the build
 * (carried-files.ts). It never keeps or answers anything under /api: what people wrote is kept by the page itself.
 */
const FILES = [];
const VERSION = "none";

const KEPT = `floorworthy-${VERSION}`;
/** A weak signal is worse than none: after this long the kept page is shown, ms. */
const PATIENCE = 4000;

addEventListener("install", (event) => {
  const fill = async () => {
    const kept = await caches.open(KEPT);
    await kept.addAll(FILES.map((path) => new Request(path, { cache: "reload" })));
    await skipWaiting();
  };
  event.waitUntil(fill());
});

/** The files of the version before stay as well, for a page that is still open with them. */
addEventListener("activate", (event) => {
  const tidy = async () => {
    const own = (await caches.keys()).filter((name) => name.startsWith("floorworthy-") && name !== KEPT);
    await Promise.all(own.slice(0, -1).map((name) => caches.delete(name)));
    await clients.claim();
  };
  event.waitUntil(tidy());
});

const keptPage = async () => (await (await caches.open(KEPT)).match("/")) ?? Response.error();

/** The server's page if it answers in good time, else the kept one. */
const page = (request) => {
  const late = new Promise((resolve) => setTimeout(() => resolve(undefined), PATIENCE));
  const fresh = fetch(request).then(
    (reply) => (reply.ok ? reply : undefined),
    () => undefined,
  );
  return Promise.race([fresh, late]).then((reply) => reply ?? keptPage());
};

addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin || pathname.startsWith("/api")) return;
  if (request.mode === "navigate" && pathname === "/") event.respondWith(page(request));
  else if (pathname.startsWith("/assets/") || FILES.includes(pathname))
    event.respondWith(caches.match(request, { ignoreSearch: true }).then((kept) => kept ?? fetch(request)));
});
