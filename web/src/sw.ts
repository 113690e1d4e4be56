/// <reference lib="webworker" />
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";

declare const self: ServiceWorkerGlobalScope;

/** A file to keep; `pages` says which pages need it (see precache-pages.ts). */
interface FileToKeep {
  readonly url: string;
  readonly revision: string | null;
  readonly pages?: readonly string[];
}
const files = self.__WB_MANIFEST as readonly FileToKeep[];

/**
 * One script, registered once for the yard and once for the guide, each under its own path, so that a
 * hirer's phone never fetches the depot's pages. `/api` is never kept here: what is due and what the guide
 * says come from the device's own store.
 */
const page = new URL(self.location.href).searchParams.get("page") === "guide" ? "guide" : "yard";

const mine = files.filter(({ pages }) => pages === undefined || pages.includes(page));
precacheAndRoute(mine.map(({ url, revision }) => ({ url, revision })));
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL(`/${page}.html`), { denylist: [/^\/api\//] }));

// a new version waits until every page of the old one is closed, or until someone asks for it
self.addEventListener("message", (event) => {
  if ((event.data as { type?: string } | null)?.type === "useNewVersion") void self.skipWaiting();
});
// the first version serves the page that registered it, so that it works offline from the first visit
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
