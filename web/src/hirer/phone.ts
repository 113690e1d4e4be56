import type { PhoneStore } from "./phone-store.ts";

let opening: Promise<PhoneStore> | undefined;

/** This phone's own store, brought and opened once, when it is first asked for; asked again after a failure. */
export function phone(): Promise<PhoneStore> {
  opening ??= import("./phone-store.ts").then(({ openPhoneStore }) => openPhoneStore());
  opening.catch(() => {
    opening = undefined;
  });
  return opening;
}

/** Whether a visit before left its files here, so that the store costs no time on the line. */
export const wasHereBefore = (): boolean => navigator.serviceWorker?.controller != null;

/** Once what is now in the page has been drawn. */
export function afterPaint(act: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(act, 0);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
