import { Link } from "wouter";
import type { Schemas } from "../../../api/client.ts";
import { dateText, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { placeOfHire } from "../../where.ts";
import { lineText } from "./effects-view.tsx";

type Done = Schemas["HireChanges"]["done"][number];

/** What changed so far, newest first, with its papers and what was to be done. */
export function ChangesDone({ hireId, done }: { readonly hireId: string; readonly done: readonly Done[] }) {
  const { depot } = useSignedIn();
  if (done.length === 0) return null;
  return (
    <section className="card" aria-labelledby="changes-done">
      <h2 id="changes-done">{t("changes.done")}</h2>
      <ul className="change-done">
        {done.map((each) => (
          <li key={each.id} className="stack-tight">
            <p>
              <strong>{t(`changes.kind.${each.kind}`)}</strong>{" "}
              <span className="quiet">
                {t("changes.doneAt", {
                  by: each.by,
                  at: dateText(each.at, "dayTime", depot.timeZone),
                })}
              </span>
            </p>
            <Papers hireId={hireId} change={each} />
            {each.continuedBy !== null && (
              <p>
                <Link href={placeOfHire(each.continuedBy.hireId)}>
                  {t("changes.continuedBy", { reference: each.continuedBy.reference })}
                </Link>
              </p>
            )}
            {each.toDo.length > 0 && (
              <details>
                <summary className="fold">{t("changes.toDo")}</summary>
                <ul className="change-lines">
                  {each.toDo.map((task) => (
                    <li key={task.code + JSON.stringify(task.facts)}>{lineText("todo", task)}</li>
                  ))}
                </ul>
              </details>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Papers({ hireId, change }: { readonly hireId: string; readonly change: Done }) {
  if (change.papers.length === 0) return null;
  const path = `/api/hires/${encodeURIComponent(hireId)}/changes/${encodeURIComponent(change.id)}/papers`;
  return (
    <p className="row">
      {change.papers.map((paper) => (
        <a key={paper} href={`${path}/${paper}`} target="_blank" rel="noreferrer">
          {t(paper === "letter" ? "changes.paper.letterLink" : "changes.paper.agreementLink")}
        </a>
      ))}
    </p>
  );
}
