/*
 * The script of the worker, as it is given to browsers: written by hand, in the plain language of today's browsers, and small. It looks after /field
 * alone; the desk's pages never pass through it.
 *
 * One cache holds the document and every file of its list, also those that are fetched later (scanner, camera). A newer document takes the place of the
 * older only when all of its files are here; the files of the last builds stay, so that a page that is still open finds its own. The document is given
 * from the cache at once, and looked after behind it.
 */
export const fieldWorker = `"use strict";
const shell = "kinrow-field-shell";
const page = "/field";
const files = "/field/files/";
const list = files + "list";
const beside = ["/manifest.webmanifest", "/icon.svg", "/field/icon/192"];
const builds = "/field?builds";
const keepBuilds = 3;

self.addEventListener("install", (event) => {
  event.waitUntil(keep(true));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (request.mode === "navigate" && url.pathname === page) {
    event.respondWith(openPage(request));
    event.waitUntil(keep(false).catch(() => undefined));
  } else if (url.pathname !== list && [files, "/photos/"].some((begin) => url.pathname.startsWith(begin))) {
    event.respondWith(kept(request));
  } else if (beside.includes(url.pathname)) {
    event.respondWith(kept(request));
  }
});

async function openPage(request) {
  return (await caches.match(page)) || fetch(request);
}

async function kept(request) {
  return (await caches.match(request, { ignoreSearch: true })) || fetch(request);
}

/* Fetches the document and its list; where they are others than the kept ones, all files first, then the document. */
async function keep(first) {
  const cache = await caches.open(shell);
  const [answer, listed] = await Promise.all([fetch(page, { cache: "no-store" }), fetch(list, { cache: "no-store" })]);
  const right = answer.ok && !answer.redirected && listed.ok && (answer.headers.get("content-type") || "").includes("text/html");
  const wanted = right ? await listed.json() : null;
  /* between two builds the two may not belong together */
  if (!wanted || !(await answer.clone().text()).includes(wanted.script)) {
    if (first) throw new Error("the field's page did not come");
    return;
  }
  const all = wanted.all.map((name) => files + name);
  const known = await cache.match(builds);
  const before = known ? await known.json() : [];
  const same = before.length > 0 && before[0].join() === all.join();
  if (same && !first) return;
  await Promise.all(all.map((file) => keepFile(cache, file)));
  await cache.put(page, answer);
  await Promise.allSettled(beside.map((file) => cache.add(file)));
  await forget(cache, all, same ? before.slice(1) : before);
  if (before.length > 0 && !same) for (const client of await self.clients.matchAll()) client.postMessage("newer field page");
}

/* A file has its contents in its name: what is here is right. Throws where it does not come. */
async function keepFile(cache, file) {
  if (!(await cache.match(file))) await cache.add(file);
}

/* Files that none of the last builds names go. */
async function forget(cache, all, before) {
  const last = [all, ...before].slice(0, keepBuilds);
  await cache.put(builds, new Response(JSON.stringify(last)));
  const wanted = new Set([page, ...beside, ...last.flat()]);
  for (const request of await cache.keys()) {
    const url = new URL(request.url);
    if (!wanted.has(url.pathname)) await cache.delete(request);
  }
}
`;
