import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, Dialog, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";

interface DefectDialogProps {
  readonly vehicleId: string;
  readonly hireId: string;
  readonly what: string;
  readonly photograph: string | null;
  readonly onClose: () => void;
}
const KINDS = ["comfort", "safety"] as const;

/** A difference that stays on the vehicle: of comfort the next hirer is told and signs, of safety it goes off the road. */
export function DefectDialog({ vehicleId, hireId, what: start, photograph, onClose }: DefectDialogProps) {
  const [kind, setKind] = useState<(typeof KINDS)[number]>("comfort");
  const [what, setWhat] = useState(start);
  const [where, setWhere] = useState("");
  const keep = useMutation({
    mutationFn: () =>
      take(
        client.POST("/api/vehicles/{id}/defects", {
          params: { path: { id: vehicleId } },
          body: { class: kind, what: what.trim(), where: where.trim(), hireId, photograph },
        }),
      ),
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: ["upkeep"] });
      void queries.invalidateQueries({ queryKey: ["today"] });
      onClose();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate();
  };
  return (
    <Dialog title={t("settling.defect.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <ChoiceField
          label={t("settling.defect.kind")}
          note={t("settling.defect.kindNote")}
          value={kind}
          options={KINDS.map((value) => ({ value, label: t("upkeep.defectClass", { class: value }) }))}
          onChange={setKind}
        />
        <TextField
          label={t("upkeep.defectWhat")}
          value={what}
          onChange={setWhat}
          error={problemAt(keep.error, "what")}
        />
        <TextField
          label={t("upkeep.defectWhere")}
          value={where}
          onChange={setWhere}
          error={problemAt(keep.error, "where")}
        />
        <FailureNote failure={keep.error} shown={["what", "where"]} />
        <div className="row row-end">
          <Button
            type="submit"
            look="main"
            isPending={keep.isPending}
            isDisabled={what.trim() === "" || where.trim() === ""}
          >
            {t("settling.defect.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
