import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useState } from "react";
import type { DeviceCare } from "../offline/device.ts";
import { tryRefusedAgain } from "../offline/flush.ts";
import { countOutbox } from "../offline/outbox-count.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { has, say, t } from "../parts/words.ts";
import { device } from "./device.ts";
import { ForgottenNote } from "./forgotten-note.tsx";
import { Press } from "./press.tsx";

/** What the browser answered about keeping our store; null until it has. */
export function useCare(): DeviceCare | null {
  const [care, setCare] = useState<DeviceCare | null>(null);
  useEffect(() => {
    void device().care.then(setCare);
  }, []);
  return care;
}

/** What is kept here and not at the depot yet, and what the server would not take. */
export function OutboxPage() {
  const { db, flusher } = device();
  const count = useLiveQuery(() => countOutbox(db));
  const refused = useLiveQuery(() => db.records.where("state").equals("refused").toArray());
  const pictures = useLiveQuery(() => db.photographs.where("state").equals("refused").toArray());
  const id = useLiveQuery(async () => (await db.settings.get("deviceId"))?.value);
  const care = useCare();
  const again = async () => {
    await tryRefusedAgain(db);
    await flusher.now();
  };
  return (
    <ScrollMain className="yard-main stack">
      <h1>{t("yard.outbox.title")}</h1>
      <section className="card stack-tight">
        <p>{t("yard.outbox.kept", { waiting: count?.waiting ?? 0 })}</p>
        {care?.storage === "refused" && <p>{t("yard.care.refused")}</p>}
        {care?.storage === "granted" && <p>{t("yard.care.granted")}</p>}
        {care?.storage === "unknown" && <p>{t("yard.care.unknown")}</p>}
        <Press onPress={() => flusher.now()}>{t("yard.outbox.sendNow")}</Press>
        <ForgottenNote isForGood />
        {typeof id === "string" && <p>{t("forget.tablet", { id: id.slice(0, 8) })}</p>}
      </section>
      {(refused?.length ?? 0) + (pictures?.length ?? 0) > 0 && (
        <section className="card stack-tight" aria-labelledby="refused">
          <h2 id="refused">{t("yard.outbox.refusedTitle")}</h2>
          <p>{t("yard.outbox.refusedHelp")}</p>
          <ul className="stack-tight">
            {refused?.map(({ id, record, problem }) => (
              <li key={id} className="problem">
                <strong>
                  {has(`yard.kind.${record.kind}`) ? say(`yard.kind.${record.kind}`) : record.kind}
                </strong>
                <div>{problem}</div>
                <small>{id}</small>
              </li>
            ))}
            {pictures?.map(({ sha256, problem }) => (
              <li key={sha256} className="problem">
                <strong>{t("yard.kind.photograph")}</strong>
                <div>{problem}</div>
                <small>{sha256.slice(0, 12)}</small>
              </li>
            ))}
          </ul>
          <Press onPress={again}>{t("yard.outbox.tryAgain")}</Press>
        </section>
      )}
      <a className="button" href="#/">
        {t("yard.backToList")}
      </a>
    </ScrollMain>
  );
}
