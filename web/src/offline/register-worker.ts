/// <reference types="vite/client" />
const SCOPES = { yard: "/yard", guide: "/g/" } as const;

let refuse: () => void = () => undefined;
const refused = new Promise<false>((resolve) => {
  refuse = () => resolve(false);
});

/**
 * True once the files of this page are kept and a worker answers for it, so that it opens with no signal; false where
 * the browser has none or refused it. What was kept in the store alone does not open by itself.
 */
export const opensWithoutSignal = (): Promise<boolean> =>
  "serviceWorker" in navigator
    ? Promise.race([navigator.serviceWorker.ready.then(() => true), refused])
    : Promise.resolve(false);

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
        refuse();
      });
  });
}
