import { useState } from "react";
import type { YardJob } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { dateText, t } from "../parts/words.ts";
import { KeptPicture } from "./kept-picture.tsx";
import { PhotoButton } from "./photo-button.tsx";
import { Press } from "./press.tsx";
import { SHEET, useWalk } from "./use-walk.ts";

/** Before a walk-round done on paper is keyed in: when it was done, by whom, and the sheets themselves. */
export function SheetPage({ job }: { readonly job: YardJob }) {
  const acts = useWalk(job);
  const [doneAt, setDoneAt] = useState("");
  const [doneBy, setDoneBy] = useState("");
  if (acts === null) return <p className="state-box">{t("yard.loading")}</p>;
  const sheets = acts.walk.photographs.get(SHEET) ?? [];
  const walkPage = `#/walk/${encodeURIComponent(job.id)}`;
  const begun = acts.records.some(({ content }) => content.about !== SHEET);
  const waits = begun
    ? t("yard.sheet.begun")
    : doneAt === "" || doneBy.trim() === ""
      ? t("yard.sheet.needWhen")
      : sheets.length === 0
        ? t("yard.sheet.needSheet")
        : null;
  const keyIn = async () => {
    await acts.begin({ doneAt, doneBy: doneBy.trim(), sheets });
    location.hash = walkPage;
  };
  return (
    <>
      <ScrollMain className="yard-main stack">
        <div className="side-head">
          <h1>{t("yard.sheet.title")}</h1>
          <p>
            {t(job.walk === "out" ? "yard.bar.out" : "yard.bar.back", {
              name: job.vehicle.name,
              registration: job.vehicle.registration,
            })}{" "}
            · {dateText(job.due.slice(0, 10), "day")}
          </p>
        </div>
        <p>{t("yard.sheet.help")}</p>
        <section className="card stack-tight">
          <label className="field">
            <span className="field-label">{t("yard.sheet.doneAt")}</span>
            <input
              className="input"
              type="datetime-local"
              value={doneAt}
              onChange={(event) => setDoneAt(event.currentTarget.value.slice(0, 16))}
            />
          </label>
          <label className="field">
            <span className="field-label">{t("yard.sheet.doneBy")}</span>
            <input
              className="input"
              value={doneBy}
              maxLength={120}
              onChange={(event) => setDoneBy(event.currentTarget.value)}
            />
          </label>
        </section>
        <section className="card stack-tight" aria-labelledby="sheets">
          <h2 id="sheets">{t("yard.sheet.sheets", { n: sheets.length })}</h2>
          <div className="row">
            {sheets.map((sha256) => (
              <KeptPicture key={sha256} sha256={sha256} words={t("yard.sheet.picture")} />
            ))}
          </div>
          <PhotoButton
            label={t("yard.sheet.photograph")}
            fromBefore
            onPhoto={(bytes) => acts.photograph(bytes, SHEET, acts.round.steps[0]?.view ?? "nearside", null)}
          />
        </section>
        {waits !== null && <p role="status">{waits}</p>}
      </ScrollMain>
      <footer className="yard-foot">
        <a className="button" href="#/">
          {t("yard.backToList")}
        </a>
        <Press look="main" onPress={keyIn} disabled={waits !== null}>
          {t("yard.sheet.keyIn")}
        </Press>
      </footer>
    </>
  );
}
