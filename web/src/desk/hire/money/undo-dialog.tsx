import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, DateField, Dialog, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { type HireMoney, newId, useMoneyAct } from "./use-money.ts";

const WHY = ["failed", "correction"] as const;

interface UndoDialogProps {
  readonly hireId: string;
  readonly entry: HireMoney["entries"][number];
  /** money moved, so it may not have arrived */
  readonly mayFail: boolean;
  readonly onClose: () => void;
}

/** Undoes an entry by a counter-entry; both stay. */
export function UndoDialog({ hireId, entry, mayFail, onClose }: UndoDialogProps) {
  const { today } = useSignedIn();
  const [id] = useState(newId);
  const [kind, setKind] = useState<(typeof WHY)[number]>(mayFail ? "failed" : "correction");
  const [on, setOn] = useState(today);
  const [reason, setReason] = useState("");
  const save = useMoneyAct(
    hireId,
    () =>
      take(
        client.POST("/api/hires/{id}/money/undo", {
          params: { path: { id: hireId } },
          body: { id, entryId: entry.id, kind, on, reason: reason.trim() },
        }),
      ),
    onClose,
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <Dialog title={t("undo.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <p>
          {t("undo.lead", {
            kind: t(`payment.${entry.kind}`),
            money: entry.amount,
            on: dateText(entry.on, "short"),
          })}
        </p>
        {mayFail && (
          <ChoiceField
            label={t("undo.why")}
            value={kind}
            options={WHY.map((value) => ({ value, label: t(`undo.${value}`) }))}
            onChange={setKind}
          />
        )}
        <div className="sheet-fields">
          <DateField label={t("money.on")} value={on} onChange={setOn} error={problemAt(save.error, "on")} />
          <TextField
            label={t("refund.reason")}
            value={reason}
            onChange={setReason}
            error={problemAt(save.error, "reason")}
          />
        </div>
        <FailureNote failure={save.error} shown={["on", "reason"]} />
        <div className="row row-end">
          <Button type="submit" look="danger" isPending={save.isPending} isDisabled={reason.trim() === ""}>
            {t("undo.send")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
