import { addDays } from "@setfair/engine";
import { Link } from "wouter";
import { problemAt } from "../../api/failure.ts";
import { dateText, t } from "../../parts/words.ts";
import { DaysField } from "./days-field.tsx";
import { type Dated, goNow, MORNING } from "./go-now.ts";
import type { PieceProps } from "./piece-props.ts";

const DATED = [
  { id: "preHire", min: 2, max: 60 },
  { id: "dayBefore", min: 1, max: 14 },
  { id: "returnReminder", min: 1, max: 14 },
] as const;

/** When each message goes that hangs on a day. */
export function MessagesCard({ value, kept, change, failure, mayWrite }: PieceProps) {
  const { messageDays } = value;
  const { next, usual } = kept;
  const set = (part: Partial<typeof messageDays>) => change({ messageDays: { ...messageDays, ...part } });
  const follows = (id: Dated) => {
    const days = messageDays[id];
    const end = id === "returnReminder" ? next?.to : next?.from;
    // told where it is about to change only: what is due already goes by itself
    const goes = end === undefined ? "" : `${addDays(end.slice(0, 10), -days)}T${MORNING}`;
    const n = days === kept.figures.messageDays[id] ? 0 : goNow(kept, id, days);
    return (
      <>
        {next !== null && (
          <p className="quiet">
            {goes <= kept.now
              ? t("figures.goesPast", { reference: next.reference })
              : t("figures.goesOn", { reference: next.reference, on: dateText(goes, "dayTime") })}
          </p>
        )}
        {n > 0 && <p role="status">{t("figures.goNow", { n })}</p>}
      </>
    );
  };
  return (
    <section className="card stack" aria-labelledby="messages-title">
      <h2 id="messages-title">{t("figures.messages")}</h2>
      <p className="quiet">{t("figures.messagesNote")}</p>
      <div className="sheet-fields">
        {DATED.map(({ id, min, max }) => (
          <DaysField
            key={id}
            label={t("figures.messageDays", { id })}
            value={messageDays[id]}
            usual={usual.messageDays[id]}
            min={min}
            max={max}
            mayWrite={mayWrite}
            error={problemAt(failure, `messageDays.${id}`)}
            onChange={(days) => set({ [id]: days })}
          >
            {follows(id)}
          </DaysField>
        ))}
        <DaysField
          label={t("figures.messageDays", { id: "statement" })}
          value={messageDays.statement}
          usual={usual.messageDays.statement}
          min={0}
          max={30}
          mayWrite={mayWrite}
          error={problemAt(failure, "messageDays.statement")}
          onChange={(statement) => set({ statement })}
        >
          <p className="quiet">{t("figures.statementGoes", { days: messageDays.statement })}</p>
        </DaysField>
      </div>
      <div>
        <Link href="/messages" className="link-row">
          {t("figures.toMessages")}
        </Link>
      </div>
    </section>
  );
}
