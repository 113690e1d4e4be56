import { GUIDE_FIRST, wholeGuide } from "@setfair/words/guide";
import { useEffect, useSyncExternalStore } from "react";
import { speak } from "../parts/words.ts";

// imported before anything that draws: the phone brings its own messages only, those of the first card first
speak(GUIDE_FIRST);

let hasAll = false;
let coming: Promise<void> | undefined;
const listeners = new Set<() => void>();

/** Brings the rest of the guide's messages, once; asked again where there was no signal. */
export function bringWords(): Promise<void> {
  coming ??= wholeGuide().then(
    (catalogue) => {
      speak(catalogue);
      hasAll = true;
      for (const listener of listeners) listener();
    },
    () => {
      coming = undefined;
    },
  );
  return coming;
}

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Whether every message is here; what a page beyond the first card says has to wait for it. */
export function useAllWords(): boolean {
  const isHere = useSyncExternalStore(subscribe, () => hasAll);
  useEffect(() => {
    if (isHere) return;
    addEventListener("online", bringWords);
    return () => removeEventListener("online", bringWords);
  }, [isHere]);
  return isHere;
}
