import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { Button, Dialog, SelectField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { sendSteps } from "../hire/handover/send-records.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { useDraft } from "../use-draft.ts";

const HOLDERS = ["depot", "keySafe", "workshop", "driver"] as const;
type Holder = (typeof HOLDERS)[number];

interface PassKeysDialogProps {
  readonly vehicleId: string;
  readonly onClose: () => void;
}

/** The keys pass to somebody who is no hirer: to whom, and what was seen of the vehicle then. Kept as a record. */
export function PassKeysDialog({ vehicleId, onClose }: PassKeysDialogProps) {
  const { user } = useSignedIn();
  const [at] = useState(() => new Date().toISOString());
  const draft = useDraft<{ holder: Holder; who: string; seen: string }>(`custody.${vehicleId}`, {
    holder: "workshop",
    who: "",
    seen: "",
  });
  const { value, set } = draft;
  const keep = useMutation({
    mutationFn: () =>
      sendSteps({ hireId: null, vehicleId }, [
        {
          kind: "keys",
          content: {
            direction: value.holder === "depot" ? "back" : "out",
            holder: value.holder,
            who: value.who.trim(),
            seen: value.seen.trim(),
            at,
            by: user.name,
          },
        },
      ]),
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: ["custody", vehicleId] });
      draft.done();
      onClose();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate();
  };
  return (
    <Dialog title={t("settling.custody.open")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <SelectField
          label={t("settling.custody.to")}
          value={value.holder}
          options={HOLDERS.map((holder) => ({ value: holder, label: t(`settling.holder.${holder}`) }))}
          onChange={(holder) => set({ ...value, holder })}
        />
        <TextField
          label={t("settling.custody.who")}
          value={value.who}
          onChange={(who) => set({ ...value, who })}
        />
        <TextField
          label={t("settling.custody.what")}
          note={t("settling.custody.whatNote")}
          lines={3}
          value={value.seen}
          onChange={(seen) => set({ ...value, seen })}
        />
        <FailureNote failure={keep.error} />
        <div className="row row-end">
          <Button type="submit" look="main" isPending={keep.isPending} isDisabled={value.who.trim() === ""}>
            {t("settling.custody.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
