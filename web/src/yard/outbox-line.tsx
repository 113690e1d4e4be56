import { useLiveQuery } from "dexie-react-hooks";
import { useSyncExternalStore } from "react";
import { countOutbox } from "../offline/outbox-count.ts";
import { classes } from "../parts/classes.ts";
import { t } from "../parts/words.ts";
import { device } from "./device.ts";

const useOnline = (): boolean =>
  useSyncExternalStore(
    (listener) => {
      addEventListener("online", listener);
      addEventListener("offline", listener);
      return () => {
        removeEventListener("online", listener);
        removeEventListener("offline", listener);
      };
    },
    () => navigator.onLine,
  );

/** What waits to be sent, said plainly, always in sight. */
export function OutboxLine() {
  const { db, flusher } = device();
  const state = useSyncExternalStore(flusher.subscribe, flusher.state);
  const online = useOnline();
  const count = useLiveQuery(() => countOutbox(db));
  if (count === undefined) return null;
  const { waiting, refused } = count;
  const noSignal = !online || (state === "later" && waiting > 0);
  const words = noSignal
    ? t("yard.outbox.noSignal", { waiting })
    : waiting === 0
      ? t("yard.outbox.allSent")
      : state === "signIn"
        ? t("yard.outbox.signIn", { waiting })
        : t("yard.outbox.sending", { waiting });
  return (
    <a href="#/outbox" className={classes("outbox-line", refused > 0 && "outbox-refused")}>
      <span role="status">{refused > 0 ? `${words} · ${t("yard.outbox.refused", { refused })}` : words}</span>
    </a>
  );
}
