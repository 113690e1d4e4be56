import { t } from "../../parts/words.ts";
import { useSignedIn } from "../session.ts";

/** Papers of the day as PDFs, for the evening before and for a day on which nothing else works. */
export function DayPapers({ date }: { readonly date: string }) {
  const isDesk = useSignedIn().may.includes("customer.see");
  const link = (path: string, words: string) => (
    <a className="button" href={`/api/${path}?date=${date}`} target="_blank" rel="noreferrer">
      {words}
    </a>
  );
  return (
    <section className="card" aria-label={t("today.papers")}>
      <p className="row">
        {link("day-sheet", t("today.daySheet"))}
        {isDesk && link("day-pack", t("today.dayPack"))}
      </p>
      {isDesk && <p className="quiet">{t("today.dayPackHelp")}</p>}
    </section>
  );
}
