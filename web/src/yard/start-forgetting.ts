import type { DeviceDatabase } from "../offline/database.ts";
import type { Flusher } from "../offline/flusher.ts";
import { askWhatToForget } from "../offline/forget.ts";

const EVERY_MS = 600_000;

/**
 * Asks the depot what to forget on start, when the tablet comes online, when the page is looked at again, and every ten
 * minutes; what waits is sent before. Without an answer it is asked again the next time.
 */
export function startForgetting(db: DeviceDatabase, flusher: Flusher): void {
  let isAsking = false;
  const kick = async () => {
    if (isAsking) return;
    isAsking = true;
    try {
      await flusher.now();
      await askWhatToForget(db);
    } catch (error) {
      // another try follows
      console.warn("what to forget", error);
    } finally {
      isAsking = false;
    }
  };
  const ask = () => void kick();
  const seen = () => {
    if (document.visibilityState === "visible") ask();
  };
  setInterval(ask, EVERY_MS);
  addEventListener("online", ask);
  document.addEventListener("visibilitychange", seen);
  ask();
}
