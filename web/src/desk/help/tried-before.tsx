import type { Schemas } from "../../api/client.ts";
import {
  answerText,
  causeText,
  faultCheckText,
  outcomeText,
  symptomText,
} from "../../parts/finder/fault-words.ts";
import { dateText, t } from "../../parts/words.ts";

/** What was tried on this hire so far, the newest first: on the hirer's phone, and told from the desk. */
export function TriedBefore({ entries }: { readonly entries: readonly Schemas["HelpEntry"][] }) {
  if (entries.length === 0) return null;
  return (
    <section className="card stack" aria-labelledby="before">
      <h2 id="before">{t("desk.help.before")}</h2>
      <ul className="stack">
        {entries.toReversed().map((entry) => (
          <li key={entry.recordId} className="stack-tight">
            <p>
              <strong>{symptomText(entry.symptom)}</strong> · {outcomeText(entry.outcome)}
              {entry.causes.length > 0 && `: ${entry.causes.map(causeText).join(" / ")}`}
            </p>
            <p className="quiet">
              {t(`desk.help.by.${entry.by}`)} · {dateText(entry.at, "dayTime")}
            </p>
            {entry.answers.length > 0 && (
              <ol className="tried">
                {entry.answers.map(({ check, answer }) => (
                  <li key={check}>
                    {faultCheckText(check)} <strong>{answerText(answer)}.</strong>
                  </li>
                ))}
              </ol>
            )}
            {entry.note !== null && <p>{entry.note}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
