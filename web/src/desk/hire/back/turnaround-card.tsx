import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { dateText, has, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";

/** What follows for the vehicle before its next hire: the jobs of this return, and which are done. */
export function TurnaroundCard({ hireId }: { readonly hireId: string }) {
  const found = useQuery({
    queryKey: ["turnarounds"],
    queryFn: () => take(client.GET("/api/yard/turnarounds")),
  });
  const turnaround = found.data?.turnarounds.find((each) => each.hireId === hireId);
  if (found.isError) return <FailureNote failure={found.error} />;
  if (turnaround === undefined) return null;
  const left = turnaround.jobs.filter(({ done }) => !done);
  return (
    <section className="card stack-tight" aria-labelledby="turnaround-title">
      <h2 id="turnaround-title">{t("settling.turn.title", { n: left.length })}</h2>
      <p className="quiet">
        {turnaround.nextOut === null
          ? t("settling.turn.free")
          : t("settling.turn.nextOut", { at: dateText(turnaround.nextOut, "fullTime") })}
      </p>
      <details>
        <summary className="fold">{t("settling.turn.show")}</summary>
        <ul>
          {turnaround.jobs.map(({ id, code, done, minutes, skill }) => (
            <li key={id} className="sign-line row spread">
              <span>{has(`turnaround.${code}`) ? say(`turnaround.${code}`) : code}</span>
              <span className="quiet">
                {done ? t("settling.turn.done") : t("yard.turn.job", { minutes, skill })}
              </span>
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
