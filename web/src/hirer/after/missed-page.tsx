import type { VehicleDescription } from "@setfair/engine";
import type { Guide, KeptRecord } from "../../offline/database.ts";
import { ScrollMain } from "../../parts/scroll-main.tsx";
import { dateText, has, say, t } from "../../parts/words.ts";
import { CallLink } from "../call-link.tsx";
import { useRecords } from "../use-records.ts";
import { MissedForm } from "./missed-form.tsx";
import { partWords } from "./part-words.ts";
import { isOpen } from "./window.ts";

/** Marks that were there already and that nobody saw: added within the window that was signed for. */
export default function MissedPage({ token, guide }: { readonly token: string; readonly guide: Guide }) {
  const own = useRecords(`${guide.hireId}.missed`);
  const { additions } = guide;
  const until = additions == null ? "" : dateText(additions.until, "dayTime");
  const { name, telephone } = guide.depot;
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.missed.title")}</h1>
      {additions == null || !isOpen(additions, new Date()) ? (
        <>
          <p>{t("hirer.missed.over", { until, depot: name, telephone })}</p>
          <CallLink guide={guide} onCall={() => undefined} />
        </>
      ) : (
        <>
          <p>{t("hirer.missed.why", { until })}</p>
          <MissedForm
            token={token}
            hireId={guide.hireId}
            vehicleId={guide.vehicle.id}
            vehicle={guide.vehicle.description as VehicleDescription}
            name={guide.vehicle.name}
          />
          <p className="guide-caution">{t("hirer.missed.drive")}</p>
        </>
      )}
      <Added own={own} telephone={telephone} />
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

const partOf = (part: unknown): string => {
  const id = `part.${String(part)}`;
  return has(id) ? partWords(id) : String(part);
};

/** What this phone added, and how far it has come. */
function Added({ own, telephone }: { readonly own: readonly KeptRecord[]; readonly telephone: string }) {
  const marks = own.filter(({ record }) => record.kind === "mark");
  if (marks.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="added" aria-live="polite">
      <h2 id="added">{t("hirer.missed.added")}</h2>
      <ul className="stack-tight">
        {marks.map(({ id, record, state, problem }) => (
          <li key={id}>
            <p>
              {t("hirer.missed.one", {
                kind: say(`hirer.missed.kind.${String(record.content.markKind)}`),
                part: partOf(record.content.part),
                words: String(record.content.note ?? ""),
              })}
            </p>
            <p className={state === "refused" ? "field-error" : "quiet"}>
              {t(`hirer.missed.state.${state}`, { problem: problem ?? "", telephone })}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
