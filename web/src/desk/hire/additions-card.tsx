import { useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { dateText, has, say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { Photos } from "./back/photos.tsx";

const told = (id: string, otherwise: string): string => (has(id) ? say(id) : otherwise);

/** Marks that the hirer added from their own phone after the keys, with both clocks; nothing before the keys. */
export function AdditionsCard({ hireId }: { readonly hireId: string }) {
  const { depot } = useSignedIn();
  const asked = useQuery({
    queryKey: ["additions", hireId],
    queryFn: () => take(client.GET("/api/hires/{id}/additions", { params: { path: { id: hireId } } })),
  });
  if (asked.data?.until == null) return <FailureNote failure={asked.error} />;
  const { until, isOver, additions } = asked.data;
  const at = (instant: string) => dateText(instant, "dayTime", depot.timeZone);
  return (
    <section className="card stack-tight" aria-labelledby="additions-title">
      <h2 id="additions-title">{t("additions.title")}</h2>
      <p className="quiet">{t(isOver ? "additions.over" : "additions.open", { until: at(until) })}</p>
      {additions.length === 0 ? (
        <p>{t("additions.none")}</p>
      ) : (
        <>
          <ul className="stack-tight">
            {additions.map((mark) => {
              const name = t("additions.mark", {
                kind: told(`yard.markKind.${mark.markKind}`, mark.markKind),
                part: told(`part.${mark.part}`, mark.part),
                view: told(`view.${mark.view}`, mark.view),
              });
              return (
                <li key={mark.recordId} className="stack-tight">
                  <strong>{name}</strong>
                  <span>{mark.note}</span>
                  <span className="quiet">
                    {t("additions.at", { at: at(mark.at), received: at(mark.receivedAt) })}
                  </span>
                  {mark.isLate && <span>{t("additions.late")}</span>}
                  <Photos hashes={mark.photographs} label={name} small />
                </li>
              );
            })}
          </ul>
          <p className="quiet">{t("additions.counts")}</p>
        </>
      )}
    </section>
  );
}
