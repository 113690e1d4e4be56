import type { LineKind } from "@setfair/engine";
import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, Dialog, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { newId, useMoneyAct } from "./use-money.ts";

const KINDS = ["charge", "credit"] as const;
/** what the deposit and a cancellation cost is not charged by hand */
const BY_HAND = [
  "fine",
  "toll",
  "administration",
  "damage",
  "kit",
  "cleaning",
  "fuel",
  "mileage",
  "late",
  "extra",
  "hire",
] as const satisfies readonly LineKind[];

interface ChargeDialogProps {
  readonly hireId: string;
  readonly onClose: () => void;
}

/** Charges something beyond the price, or takes something off; the kind of line decides the VAT. */
export function ChargeDialog({ hireId, onClose }: ChargeDialogProps) {
  const { today } = useSignedIn();
  const [id] = useState(newId);
  const [kind, setKind] = useState<(typeof KINDS)[number]>("charge");
  const [line, setLine] = useState<LineKind>("fine");
  const [pounds, setPounds] = useState<number | null>(null);
  const [note, setNote] = useState("");
  const save = useMoneyAct(
    hireId,
    () =>
      take(
        client.POST("/api/hires/{id}/money/charges", {
          params: { path: { id: hireId } },
          body: { id, kind, line, pence: Math.round((pounds ?? 0) * 100), on: today, note: note.trim() },
        }),
      ),
    onClose,
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <Dialog title={t("charge.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <ChoiceField
          label={t("charge.which")}
          value={kind}
          options={KINDS.map((value) => ({ value, label: t(`payment.${value}`) }))}
          onChange={setKind}
        />
        <div className="sheet-fields">
          <SelectField
            label={t("charge.line")}
            note={t("charge.lineNote")}
            value={line}
            options={BY_HAND.map((value) => ({ value, label: t(`lineKind.${value}`) }))}
            onChange={setLine}
          />
          <NumberField
            label={t("charge.amount")}
            unit="£"
            min={0.01}
            max={50_000}
            format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
            value={pounds}
            onChange={setPounds}
            error={problemAt(save.error, "pence")}
          />
          <TextField
            label={t("charge.note")}
            note={t("charge.noteNote")}
            value={note}
            onChange={setNote}
            error={problemAt(save.error, "note")}
          />
        </div>
        <FailureNote failure={save.error} shown={["pence", "note"]} />
        <div className="row row-end">
          <Button
            type="submit"
            look="main"
            isPending={save.isPending}
            isDisabled={pounds === null || note.trim() === ""}
          >
            {t("charge.send")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
