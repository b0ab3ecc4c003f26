/** Days after which a week that was kept is shown no more and goes. Source: house rule; a link may have been revoked since. */
const KEPT_DAYS = 14;

/**
 * The worker that a link's pages run beside them: it answers for the garden's own page where there is no network, with the
 * last one seen and the day of it, and for any other page with `offline`, a page that says so. It knows only what lies under
 * its own link, keeps it under that link's name, and forgets it all once the link opens nothing any more.
 */
export function offlineWorker(offline: string): string {
  return `"use strict";
const OFFLINE = ${JSON.stringify(offline).replaceAll("<", "\\u003c")};
const OWN = new URL(self.registration.scope).pathname;
const KEPT = "sowbell " + OWN;
const LOOKS = ["/paper.css", "/icon.svg"];
const LONGEST = ${KEPT_DAYS} * 86400000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(begin()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(request, pathname, event));
  else if (request.method === "GET" && LOOKS.includes(pathname)) event.respondWith(look(request));
});

async function begin() {
  await weekKept();
  const cache = await caches.open(KEPT);
  await cache.addAll(LOOKS).catch(() => {});
  await self.clients.claim();
}

async function page(request, pathname, event) {
  let answer;
  try {
    answer = await fetch(request);
  } catch {
    return withoutNetwork(request, pathname);
  }
  const own = pathname === OWN && request.method === "GET";
  if (own && answer.status === 503) return (await weekKept()) ?? answer;
  if (own && answer.status === 200) event.waitUntil(keep(answer.clone()));
  if (answer.status === 404) event.waitUntil(forgetIfClosed());
  return answer;
}

async function look(request) {
  try {
    const answer = await fetch(request);
    if (answer.ok) await (await caches.open(KEPT)).put(new URL(request.url).pathname, answer.clone());
    return answer;
  } catch {
    return (await (await caches.open(KEPT)).match(new URL(request.url).pathname)) ?? Response.error();
  }
}

async function keep(answer) {
  const headers = new Headers(answer.headers);
  headers.set("kept-at", String(Date.now()));
  await (await caches.open(KEPT)).put(OWN, new Response(await answer.blob(), { headers }));
}

async function weekKept() {
  const cache = await caches.open(KEPT);
  const kept = await cache.match(OWN);
  if (!kept) return null;
  const at = Number(kept.headers.get("kept-at"));
  if (!(Date.now() - at < LONGEST)) {
    await cache.delete(OWN);
    return null;
  }
  const seen = new Date(at).toLocaleString([], { weekday: "long", day: "numeric", month: "long", hour: "2-digit", minute: "2-digit" });
  const note = '<p class="note" role="status">No network. This is the garden as it was on ' + seen.replace(/[<&]/g, "") + ".</p>";
  const text = (await kept.text()).replace("<main>", () => "<main>" + note);
  return new Response(text, { headers: kept.headers });
}

async function withoutNetwork(request, pathname) {
  const kept = request.method === "GET" && pathname === OWN ? await weekKept() : null;
  return kept ?? new Response(OFFLINE, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } });
}

async function forgetIfClosed() {
  const own = await fetch(OWN, { cache: "no-store" }).catch(() => null);
  if (own?.status !== 404) return;
  await caches.delete(KEPT);
  await self.registration.unregister();
}
`;
}
