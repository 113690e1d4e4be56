import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, Dialog, FindingText, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { useDraft } from "../../use-draft.ts";
import type { Gate } from "../../where.ts";
import { useHireAct } from "../use-hire.ts";

type GateFinding = Schemas["GateFinding"];

export interface OverrideDialogProps {
  readonly hireId: string;
  readonly gate: Gate;
  readonly entry: GateFinding;
  readonly onClose: () => void;
}

const SHOWN = ["reason", "insurer.reference", "insurer.acceptedBy", "insurer.on"];

function useOverride({ hireId, gate, entry, onClose }: OverrideDialogProps) {
  const { today } = useSignedIn();
  const { finding } = entry;
  const draft = useDraft(`override.${hireId}.${finding.code}.${finding.about ?? ""}`, {
    reason: "",
    reference: "",
    acceptedBy: "",
    on: today,
  });
  const { reason, ...insurer } = draft.value;
  const send = useHireAct(
    () =>
      take(
        client.POST("/api/hires/{id}/overrides", {
          params: { path: { id: hireId } },
          body: {
            gate,
            code: finding.code,
            ...(finding.about === undefined ? {} : { about: finding.about }),
            reason,
            ...(entry.overridable === "insurer" ? { insurer } : {}),
          },
        }),
      ),
    () => {
      draft.done();
      onClose();
    },
  );
  return { draft, send };
}

/** Lets one finding pass: by the insurer's recorded acceptance, or by a named person with a reason, kept for ever. */
export function OverrideDialog(props: OverrideDialogProps) {
  const { entry, onClose } = props;
  const { draft, send } = useOverride(props);
  const { value, set } = draft;
  const [tooShort, setTooShort] = useState(false);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTooShort(value.reason.trim().length < 3);
    if (value.reason.trim().length >= 3) send.mutate();
  };
  const reasonError = tooShort ? t("hire.override.reasonNeeded") : problemAt(send.error, "reason");
  return (
    <Dialog title={t("hire.override.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={submit} noValidate>
        <p>
          <FindingText finding={entry.finding} />
        </p>
        <p className="quiet">
          {t(entry.overridable === "insurer" ? "hire.override.coverNote" : "hire.override.policyNote")}
        </p>
        {entry.overridable === "insurer" && (
          <div className="sheet-fields">
            <TextField
              label={t("hire.override.reference")}
              value={value.reference}
              onChange={(reference) => set({ ...value, reference })}
              error={problemAt(send.error, "insurer.reference")}
            />
            <TextField
              label={t("hire.override.acceptedBy")}
              value={value.acceptedBy}
              onChange={(acceptedBy) => set({ ...value, acceptedBy })}
              error={problemAt(send.error, "insurer.acceptedBy")}
            />
            <DateField
              label={t("hire.override.on")}
              value={value.on}
              onChange={(on) => set({ ...value, on })}
              error={problemAt(send.error, "insurer.on")}
            />
          </div>
        )}
        <TextField
          label={t("hire.override.reason")}
          lines={3}
          value={value.reason}
          onChange={(reason) => set({ ...value, reason })}
          error={reasonError}
          autoFocus
        />
        <FailureNote failure={send.error} shown={SHOWN} />
        <Button type="submit" look="main" isPending={send.isPending}>
          {t(send.isPending ? "desk.sending" : "hire.override.send")}
        </Button>
      </form>
    </Dialog>
  );
}
