import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { dateText, findingText, t } from "../../../parts/words.ts";
import { placeOfHire } from "../../where.ts";
import "./notes.css";

/** On Today: notes whose moment has come, drivers whose check code is to be asked for, what must be got for countries. */
export function Reminders({ date }: { readonly date: string }) {
  const reminders = useQuery({
    queryKey: ["reminders", date],
    queryFn: () => take(client.GET("/api/reminders", { params: { query: { date } } })),
    refetchInterval: 60_000,
  });
  const { notes = [], askForCode = [], toGet = [] } = reminders.data ?? {};
  if (notes.length + askForCode.length + toGet.length === 0) return null;
  return (
    <section className="card" aria-labelledby="reminders-title">
      <h2 id="reminders-title">{t("notes.today")}</h2>
      <ul className="notes">
        {notes.map(({ note, customer, registration }) => (
          <li key={note.id} className="note note-due">
            <div>
              {note.kind === "promise" && <strong>{t("notes.promise")}: </strong>}
              {note.text}
              <div className="quiet">
                <Link href={`${placeOfHire(note.hireId)}/notes`} className="link-row">
                  {customer}
                </Link>{" "}
                {registration}
                {note.owner !== null && ` · ${t("notes.for", { name: note.owner.name })}`}
              </div>
            </div>
          </li>
        ))}
        {askForCode.map((ask) => (
          <li key={`${ask.hireId} ${ask.driverId}`} className="note">
            <div>
              <Link href={`${placeOfHire(ask.hireId)}/people`} className="link-row">
                {t("notes.askForCode", { driver: ask.driver, keys: dateText(ask.keys, "short") })}
              </Link>
              {ask.driver !== ask.customer && <span className="quiet"> {ask.customer}</span>}
            </div>
          </li>
        ))}
        {toGet.map((each) => (
          <li key={`${each.hireId} ${each.finding.code} ${each.finding.about ?? ""}`} className="note">
            <div>
              {findingText(each.finding)}{" "}
              <Link href={`${placeOfHire(each.hireId)}/abroad`} className="link-row">
                {each.customer}
              </Link>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
