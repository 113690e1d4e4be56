import { t } from "../../parts/words.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { CalendarFile } from "./calendar-file.tsx";
import { CalendarLinks } from "./calendar-links.tsx";
import { ListImport } from "./list-import.tsx";
import { VehicleDrafts } from "./vehicle-drafts.tsx";
import "./import.css";

const EXPORTS = ["customers", "hires"] as const;

function ListsOut() {
  return (
    <section className="card stack" aria-labelledby="export-title">
      <h2 id="export-title">{t("import.export")}</h2>
      <p className="quiet">{t("import.exportNote")}</p>
      <div className="row">
        {EXPORTS.map((kind) => (
          <a key={kind} className="button" href={`/api/export/${kind}`} download>
            {t("import.exportKind", { kind })}
          </a>
        ))}
      </div>
    </section>
  );
}

/** Lists and calendars, in and out. */
export default function ImportPage() {
  usePageTitle(t("import.title"));
  const { may } = useSignedIn();
  return (
    <>
      <div className="page-head">
        <h1>{t("import.title")}</h1>
      </div>
      <div className="stack">
        {may.includes("vehicle.write") && <VehicleDrafts />}
        {may.includes("terms.write") && <ListImport />}
        {may.includes("terms.write") && <ListsOut />}
        {may.includes("link.create") && <CalendarLinks />}
        {may.includes("hire.write") && <CalendarFile />}
      </div>
    </>
  );
}
