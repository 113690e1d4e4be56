import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Button } from "react-aria-components";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Loading } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import type { PartProps } from "../use-hire.ts";
import type { ChangeKind } from "./change-draft.ts";
import { ChangeSheet } from "./change-sheet.tsx";
import { ChangesDone } from "./changes-done.tsx";
import "./change.css";

/** What has changed? One list; each opens a sheet that shows what it does before anything is written. */
export default function ChangePart({ page }: PartProps) {
  const { id } = page.hire;
  const [kind, open] = useState<ChangeKind | null>(null);
  const changes = useQuery({
    queryKey: ["changes", id, page.version],
    queryFn: () => take(client.GET("/api/hires/{id}/changes", { params: { path: { id } } })),
  });
  if (changes.isPending) return <Loading />;
  if (changes.isError) return <FailureNote failure={changes.error} onAgain={() => void changes.refetch()} />;
  const { possible, vehicles, done } = changes.data;
  return (
    <>
      <section className="card stack-tight" aria-labelledby="changes-title">
        <h2 id="changes-title">{t("changes.title")}</h2>
        <p className="quiet">{t(possible.length === 0 ? "changes.none" : "changes.intro")}</p>
        <ul className="change-kinds">
          {possible.map((each) => (
            <li key={each}>
              <Button className="change-kind" onPress={() => open(each)}>
                <strong>{t(`changes.kind.${each}`)}</strong>
                <span className="quiet">{t(`changes.about.${each}`)}</span>
              </Button>
            </li>
          ))}
        </ul>
      </section>
      <ChangesDone hireId={id} done={done} />
      {kind !== null && (
        <ChangeSheet key={kind} kind={kind} page={page} vehicles={vehicles} onClose={() => open(null)} />
      )}
    </>
  );
}
