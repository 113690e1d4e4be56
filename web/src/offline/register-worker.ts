/// <reference types="vite/client" />
const SCOPES = { yard: "/yard", guide: "/g/" } as const;

/**
 * Registers the service worker of a page, where the browser has one and the page is secure. A new version
 * waits until all pages of the old one are closed: a half-filled walk-round is never reloaded.
 */
export function registerWorker(page: keyof typeof SCOPES): void {
  if (import.meta.env.DEV || !globalThis.isSecureContext || !("serviceWorker" in navigator)) return;
  addEventListener("load", () => {
    navigator.serviceWorker
      .register(`/sw.js?page=${page}`, { scope: SCOPES[page] })
      .catch((error: unknown) => {
        console.warn("offline worker", error);
      });
  });
}
