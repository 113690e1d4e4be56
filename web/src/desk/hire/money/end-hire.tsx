import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, Dialog, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";

const ENDS = ["lost", "cancelled", "noShow"] as const;
const ENDABLE = ["enquiry", "quote", "booked"];

/** Lost, cancelled or no-show, with the reason. */
export function EndHire({ page }: PartProps) {
  const { id, stage } = page.hire;
  const [isOpen, setOpen] = useState(false);
  const [as, setAs] = useState<(typeof ENDS)[number]>(stage === "booked" ? "cancelled" : "lost");
  const [reason, setReason] = useState("");
  const end = useHireAct(
    () => take(client.POST("/api/hires/{id}/end", { params: { path: { id } }, body: { as, reason } })),
    () => setOpen(false),
  );
  if (!ENDABLE.includes(stage)) return null;
  const send = (event: FormEvent) => {
    event.preventDefault();
    end.mutate();
  };
  return (
    <>
      <div>
        <Button look="quiet" onPress={() => setOpen(true)}>
          {t("end.open")}
        </Button>
      </div>
      <Dialog title={t("end.title")} isOpen={isOpen} onClose={() => setOpen(false)}>
        <form className="stack" onSubmit={send} noValidate>
          <ChoiceField
            label={t("end.as")}
            value={as}
            options={ENDS.map((value) => ({ value, label: t(`stage.${value}`) }))}
            onChange={setAs}
          />
          <TextField
            label={t("end.reason")}
            lines={3}
            value={reason}
            onChange={setReason}
            error={problemAt(end.error, "reason")}
          />
          <FailureNote failure={end.error} shown={["reason"]} />
          <Button type="submit" look="danger" isPending={end.isPending} isDisabled={reason.trim() === ""}>
            {t("end.send")}
          </Button>
        </form>
      </Dialog>
    </>
  );
}
