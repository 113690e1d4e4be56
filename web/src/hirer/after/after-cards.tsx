import type { Guide } from "../../offline/database.ts";
import { dateText, t } from "../../parts/words.ts";
import { isOpen } from "./window.ts";

/** The way to the statement, once it was shown, before everything else. */
export function StatementCard({ guide }: { readonly guide: Guide }) {
  if (guide.statementAt == null) return null;
  return (
    <section className="card matters" aria-labelledby="statement-card">
      <h2 id="statement-card">{t("hirer.after.statement")}</h2>
      <p>{t("hirer.after.statementSub")}</p>
      <a className="button button-main button-wide" href="#statement">
        {t("hirer.after.statementOpen")}
      </a>
    </section>
  );
}

/** The way to add what both missed, while that is open. */
export function MissedLine({ guide }: { readonly guide: Guide }) {
  const { additions } = guide;
  if (additions == null || !isOpen(additions, new Date())) return null;
  return (
    <a className="day-link missed-link" href="#missed">
      <strong className="day-name">{t("hirer.after.missed")}</strong>
      <span className="day-sub">
        {t("hirer.after.missedUntil", { until: dateText(additions.until, "dayTime") })}
      </span>
    </a>
  );
}

/** Once that is over: whom to ring. */
export function MissedOver({ guide }: { readonly guide: Guide }) {
  const { additions, depot } = guide;
  if (additions == null || isOpen(additions, new Date())) return null;
  const until = dateText(additions.until, "dayTime");
  return <p className="quiet">{t("hirer.after.missedOver", { until, telephone: depot.telephone })}</p>;
}
