import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, DateTimeField, Dialog, SelectField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import type { DiaryVehicle } from "./diary-model.ts";
import { diaryChanged } from "./use-diary.ts";

type Kind = Schemas["NewVehicleBlock"]["kind"];
const KINDS: readonly Kind[] = ["mot", "service", "repair", "layUp", "other"];

export interface BlockDialogProps {
  readonly vehicle: DiaryVehicle;
  readonly from: string;
  readonly to: string;
  readonly onClose: () => void;
}

/** Takes a vehicle off the road: why, from when, until when. */
export function BlockDialog({ vehicle, from, to, onClose }: BlockDialogProps) {
  const [value, set] = useState({
    kind: "mot" as Kind,
    note: "",
    from: `${from}T08:00`,
    to: `${to}T18:00`,
  });
  const save = useMutation({
    mutationFn: () =>
      take(client.POST("/api/vehicles/{id}/blocks", { params: { path: { id: vehicle.id } }, body: value })),
    onSuccess: () => {
      diaryChanged();
      onClose();
    },
  });
  return (
    <Dialog
      title={t("diary.blockTitle", { name: vehicle.name, registration: vehicle.registration })}
      isOpen
      onClose={onClose}
    >
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          save.mutate();
        }}
      >
        <SelectField
          label={t("diary.blockWhy")}
          value={value.kind}
          options={KINDS.map((kind) => ({ value: kind, label: t("diary.blockKind", { kind }) }))}
          onChange={(kind) => set({ ...value, kind })}
        />
        <DateTimeField
          label={t("diary.blockFrom")}
          value={value.from}
          onChange={(next) => set({ ...value, from: next })}
          error={problemAt(save.error, "from")}
        />
        <DateTimeField
          label={t("diary.blockTo")}
          value={value.to}
          onChange={(next) => set({ ...value, to: next })}
          error={problemAt(save.error, "to")}
        />
        <TextField
          label={t("diary.blockNote")}
          value={value.note}
          onChange={(note) => set({ ...value, note })}
          error={problemAt(save.error, "note")}
        />
        <FailureNote failure={save.error} shown={["from", "to", "note"]} />
        <div className="row row-end">
          <Button type="submit" look="main" isPending={save.isPending}>
            {t("diary.block")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
