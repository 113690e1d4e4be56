import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, ChoiceField, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PieceProps, useKeep } from "./use-keep.ts";

/** Defects of a vehicle, newest first: of safety or comfort, who was told of each, and who closed it and how. */
export function DefectsList({ id, upkeep }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="defects-title">
      <h2 id="defects-title">{t("upkeep.defectList")}</h2>
      {upkeep.defects.length === 0 && <p className="quiet">{t("upkeep.noDefects")}</p>}
      <ul className="stack">
        {upkeep.defects.map((defect) => (
          <li key={defect.id}>
            <strong>{t("upkeep.defectClass", { class: defect.class })}</strong>:{" "}
            {t("upkeep.defectLine", {
              what: defect.what,
              where: defect.where,
              who: defect.notedBy,
              at: dateText(defect.at.slice(0, 10), "short"),
            })}
            {defect.photograph !== null && (
              <a href={`/api/photos/${defect.photograph}?size=original`} target="_blank" rel="noreferrer">
                {" "}
                {t("settling.defect.photograph")}
              </a>
            )}
            {defect.told.map(({ hireId, reference, signer, at }) => (
              <div key={hireId} className="quiet">
                {t("settling.defect.told", { reference, signer, at: dateText(at.slice(0, 10), "short") })}
              </div>
            ))}
            {defect.closed === null ? (
              <CloseDefect id={id} defectId={defect.id} />
            ) : (
              <div className="quiet">
                {t("settling.defect.closed", {
                  at: dateText(defect.closed.at.slice(0, 10), "short"),
                  by: defect.closed.by,
                  how: defect.closed.how,
                })}
              </div>
            )}
          </li>
        ))}
      </ul>
      <NoteDefect id={id} />
    </section>
  );
}

function CloseDefect({ id, defectId }: { readonly id: string; readonly defectId: string }) {
  const [how, setHow] = useState("");
  const keep = useKeep(id, () =>
    take(client.POST("/api/defects/{id}/close", { params: { path: { id: defectId } }, body: { how } })),
  );
  return (
    <details>
      <summary className="fold">{t("upkeep.close")}</summary>
      <div className="stack">
        <TextField label={t("upkeep.closeHow")} value={how} onChange={setHow} required />
        <FailureNote failure={keep.error} />
        <Button isDisabled={how.trim() === "" || keep.isPending} onPress={() => keep.mutate(undefined)}>
          {t("upkeep.close")}
        </Button>
      </div>
    </details>
  );
}

function NoteDefect({ id }: { readonly id: string }) {
  const [kind, setKind] = useState<"safety" | "comfort">("safety");
  const [what, setWhat] = useState("");
  const [where, setWhere] = useState("");
  const keep = useKeep(id, () =>
    take(
      client.POST("/api/vehicles/{id}/defects", {
        params: { path: { id } },
        body: { class: kind, what, where },
      }),
    ),
  );
  return (
    <details>
      <summary className="fold">{t("upkeep.noteDefect")}</summary>
      <div className="stack">
        <ChoiceField
          label={t("upkeep.noteDefect")}
          value={kind}
          options={(["safety", "comfort"] as const).map((value) => ({
            value,
            label: t("upkeep.defectClass", { class: value }),
          }))}
          onChange={setKind}
        />
        <TextField label={t("upkeep.defectWhat")} value={what} onChange={setWhat} required />
        <TextField label={t("upkeep.defectWhere")} value={where} onChange={setWhere} required />
        <FailureNote failure={keep.error} />
        <Button
          isDisabled={what.trim() === "" || where.trim() === "" || keep.isPending}
          onPress={() =>
            keep.mutate(undefined, {
              onSuccess: () => {
                setWhat("");
                setWhere("");
              },
            })
          }
        >
          {t("upkeep.keep")}
        </Button>
      </div>
    </details>
  );
}
