import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, Dialog, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import type { Gate } from "../../where.ts";
import { useHireAct } from "../use-hire.ts";

export interface LookedDialogProps {
  readonly hireId: string;
  readonly gate: Gate;
  readonly onClose: () => void;
}

/** A named person looked at a gate that no room decides: what was looked at, and what was seen. */
export function LookedDialog({ hireId, gate, onClose }: LookedDialogProps) {
  const [note, setNote] = useState("");
  const send = useHireAct(
    () =>
      take(
        client.POST("/api/hires/{id}/gate-checks", {
          params: { path: { id: hireId } },
          body: { gate, note },
        }),
      ),
    onClose,
  );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    send.mutate();
  };
  return (
    <Dialog title={t("hire.looked.title", { gate: t(`gate.${gate}`) })} isOpen onClose={onClose}>
      <form className="stack" onSubmit={submit} noValidate>
        <p>{t(`hire.looked.ask.${gate}`)}</p>
        <TextField
          label={t("hire.looked.note")}
          lines={3}
          value={note}
          onChange={setNote}
          error={problemAt(send.error, "note")}
          note={t("hire.looked.kept")}
          autoFocus
        />
        <FailureNote failure={send.error} shown={["note"]} />
        <Button type="submit" look="main" isPending={send.isPending} isDisabled={note.trim() === ""}>
          {t("hire.looked.send")}
        </Button>
      </form>
    </Dialog>
  );
}
