/// <reference lib="webworker" />
import { cleanupOutdatedCaches, PrecacheController } from "workbox-precaching";
import { treat, withPolicyHeader } from "./answers.ts";

declare const self: ServiceWorkerGlobalScope;

const files = new PrecacheController();
files.addToCacheList(self.__WB_MANIFEST);

// Removes what an older library kept under another name for this folder, and nothing else: Cache
// storage also holds things that are not ours to delete.
cleanupOutdatedCaches();

/** True from the very first install until it is active; false when the worker was stopped between. */
let isFirstInstall = false;

// One file that cannot be had fails the whole install, and the build before stays in charge: half a
// build offline would be a white page in the field. Nothing here skips the waiting by itself.
self.addEventListener("install", (event) => {
  isFirstInstall = self.registration.active === null;
  event.waitUntil(files.install(event));
});

// Pages are claimed after the very first install alone, so that the first visit is safe offline at
// once. Claiming after an update would put new files under a page of the build before it that had
// been loaded past the worker.
self.addEventListener("activate", (event) => {
  event.waitUntil(files.activate(event).then(() => (isFirstInstall ? self.clients.claim() : undefined)));
});

self.addEventListener("message", (event) => {
  const said: unknown = event.data;
  if (typeof said === "object" && said !== null && "type" in said && said.type === "SKIP_WAITING") {
    event.waitUntil(self.skipWaiting());
  }
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const treatment = treat(
    {
      url: request.url,
      method: request.method,
      mode: request.mode,
      destination: request.destination,
      scope: self.registration.scope,
    },
    (url) => files.getCacheKeyForURL(url) !== undefined,
  );
  switch (treatment.kind) {
    case "refused":
      event.respondWith(Response.error());
      return;
    case "sent-home":
      event.respondWith(Response.redirect(self.registration.scope, 302));
      return;
    case "file":
      event.respondWith(answer(request, treatment.url, treatment.withPolicy));
      return;
    case "left-alone":
      return;
  }
});

/** The file from the precache, else (the browser may have thrown it out) from the host. */
async function answer(request: Request, url: string, withPolicy: boolean): Promise<Response> {
  const found = (await files.matchPrecache(url)) ?? (await fetch(request));
  return withPolicy ? withPolicyHeader(found) : found;
}
