import type { Difference } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import type { PartProps } from "../use-hire.ts";
import { differenceTitle } from "./difference-line.tsx";

/** What of a difference can have been written wrongly: the record and the field that a correction takes. */
interface Correctable {
  readonly recordId: string;
  readonly field: "value" | "found" | "sizeMm";
  readonly unit: string;
  /** a share is typed as per cent */
  readonly times: number;
  readonly label: string;
}

function correctable(difference: Difference): readonly Correctable[] {
  const title = differenceTitle(difference);
  const last = (ids: readonly string[]) => ids.slice(-1);
  const line = (recordId: string, field: Correctable["field"], unit: string, when: "out" | "back") => ({
    recordId,
    field,
    unit: unit === "share" ? "%" : unit,
    times: unit === "share" ? 100 : 1,
    label: t("proof.correct.which", { title, when }),
  });
  switch (difference.kind) {
    case "reading": {
      const { unit } = difference.back;
      return [
        ...last(difference.backRecords).map((id) => line(id, "value", unit, "back")),
        ...last(difference.outRecords).map((id) => line(id, "value", unit, "out")),
      ];
    }
    case "count":
      return last(difference.backRecords).map((id) => line(id, "found", "", "back"));
    case "mark":
      return last(difference.backRecords).map((id) => line(id, "sizeMm", "mm", "back"));
    default:
      return [];
  }
}

/** Puts a reading, a count or the size of a mark right, with a reason; the first entry stays beside it for ever. */
export function CorrectCard({ page }: PartProps) {
  const { id } = page.hire;
  const found = useQuery({
    queryKey: ["differences", id],
    queryFn: () => take(client.GET("/api/hires/{id}/differences", { params: { path: { id } } })),
  });
  // the server sends the engine's own difference
  const lines = (found.data?.differences ?? []).flatMap(({ difference }) =>
    correctable(difference as Difference),
  );
  const [which, setWhich] = useState("");
  const [value, setValue] = useState<number | null>(null);
  const [why, setWhy] = useState("");
  const line = lines.find(({ recordId }) => recordId === which);
  const save = useMutation({
    mutationFn: (body: { recordId: string; instead: Record<string, number>; why: string }) =>
      take(client.POST("/api/hires/{id}/corrections", { params: { path: { id } }, body })),
    onSuccess: () => {
      setWhich("");
      setValue(null);
      setWhy("");
      for (const key of ["differences", "hire", "settlement"])
        void queries.invalidateQueries({ queryKey: [key, id] });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (line !== undefined && value !== null)
      save.mutate({ recordId: line.recordId, instead: { [line.field]: value / line.times }, why });
  };
  if (lines.length === 0) return null;
  return (
    <form className="card stack" aria-labelledby="correct-title" onSubmit={submit} noValidate>
      <h2 id="correct-title">{t("proof.correct.title")}</h2>
      <p className="quiet">{t("proof.correct.lead")}</p>
      <div className="sheet-fields">
        <SelectField
          label={t("proof.correct.what")}
          value={which}
          options={lines.map(({ recordId, label }) => ({ value: recordId, label }))}
          onChange={setWhich}
        />
        <NumberField
          label={t("proof.correct.holds")}
          {...(line === undefined || line.unit === "" ? {} : { unit: line.unit })}
          min={0}
          max={1_000_000}
          value={value}
          error={line === undefined ? undefined : problemAt(save.error, `instead.${line.field}`)}
          onChange={setValue}
        />
        <TextField
          label={t("proof.correct.why")}
          value={why}
          error={problemAt(save.error, "why")}
          onChange={setWhy}
        />
      </div>
      <FailureNote failure={save.error} shown={["why"]} />
      <div>
        <Button
          type="submit"
          isPending={save.isPending}
          isDisabled={line === undefined || value === null || why.trim() === ""}
        >
          {t("proof.correct.act")}
        </Button>
      </div>
    </form>
  );
}
