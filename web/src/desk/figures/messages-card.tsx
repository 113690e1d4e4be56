import { addDays } from "@setfair/engine";
import { Link } from "wouter";
import { problemAt } from "../../api/failure.ts";
import { dateText, t } from "../../parts/words.ts";
import { DaysField } from "./days-field.tsx";
import type { PieceProps } from "./piece-props.ts";

const MORNING = "09:00";
const DATED = [
  { id: "preHire", min: 2, max: 60 },
  { id: "dayBefore", min: 1, max: 14 },
  { id: "returnReminder", min: 1, max: 14 },
] as const;
type Dated = (typeof DATED)[number]["id"];

/** How many go out as soon as these days hold: their moment would have come, and they were turned on before it. */
function goNow({ unsent, now }: PieceProps["kept"], id: Dated, days: number): number {
  const one = unsent.find(({ kind }) => kind === id);
  if (one === undefined) return 0;
  return one.days
    .map((day) => `${addDays(day, -days)}T${MORNING}`)
    .filter((moment) => moment <= now && moment >= one.since).length;
}

/** When each message goes that hangs on a day. */
export function MessagesCard({ value, kept, change, failure, mayWrite }: PieceProps) {
  const { messageDays } = value;
  const { next, usual } = kept;
  const set = (part: Partial<typeof messageDays>) => change({ messageDays: { ...messageDays, ...part } });
  const follows = (id: Dated) => {
    const days = messageDays[id];
    const end = id === "returnReminder" ? next?.to : next?.from;
    // told where it is about to change only: what is due already goes by itself
    const n = days === kept.figures.messageDays[id] ? 0 : goNow(kept, id, days);
    return (
      <>
        {next !== null && end !== undefined && (
          <p className="quiet">
            {t("figures.goesOn", {
              reference: next.reference,
              on: dateText(`${addDays(end.slice(0, 10), -days)}T${MORNING}`, "dayTime"),
            })}
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
          {messageDays.statement === 0 && <p className="quiet">{t("figures.atOnce")}</p>}
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
