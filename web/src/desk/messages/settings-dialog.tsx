import { useMutation, useQuery } from "@tanstack/react-query";
import type { FormEvent } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Dialog, Loading, TextField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { DropDraft } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";

type Settings = Schemas["MessageSettings"];
const KINDS = ["booking", "preHire", "dayBefore", "returnReminder", "statement"] as const;
const FIELDS = ["fromName", "fromAddress", "replyTo"] as const;

interface SettingsFormProps {
  readonly kept: Settings;
  readonly days: Schemas["DepotFigures"]["figures"]["messageDays"];
  readonly onClose: () => void;
}

function SettingsForm({ kept, days, onClose }: SettingsFormProps) {
  const draft = useGuardedDraft<Settings>("messageSettings", { value: kept, version: kept.version });
  const { value, set, basedOn } = draft;
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () => take(client.PUT("/api/message-settings", { body: { ...value, version: Number(basedOn) } })),
        () => queries.invalidateQueries({ queryKey: ["messageSettings"] }),
      ),
    onSuccess: (saved) => {
      draft.done();
      queries.setQueryData(["messageSettings"], saved);
      void queries.invalidateQueries({ queryKey: ["messages"] });
      onClose();
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  const turn = (kind: (typeof KINDS)[number], isOn: boolean) =>
    set({
      ...value,
      automatic: KINDS.filter((each) => (each === kind ? isOn : value.automatic.includes(each))),
    });
  return (
    <form className="message-settings" onSubmit={submit} noValidate>
      {FIELDS.map((field) => (
        <TextField
          key={field}
          label={t(`messages.${field}`)}
          value={value[field]}
          onChange={(text) => set({ ...value, [field]: text })}
          error={problemAt(save.error, field)}
          type={field === "fromName" ? "text" : "email"}
        />
      ))}
      <fieldset className="stack-tight message-kinds">
        <legend>{t("messages.automatic")}</legend>
        <p className="quiet">{t("messages.automaticNote")}</p>
        {KINDS.map((kind) => (
          <TickField key={kind} value={value.automatic.includes(kind)} onChange={(isOn) => turn(kind, isOn)}>
            {t("message.kind", { kind })}:{" "}
            {t("messages.moment", { kind, days: kind === "booking" ? 0 : days[kind] })}
          </TickField>
        ))}
        <Link href="/depot/figures" className="link-row">
          {t("messages.changeDays")}
        </Link>
      </fieldset>
      <KeptMeanwhile
        draft={draft}
        failure={save.error}
        onSettled={save.reset}
        shown={FIELDS}
        ownFields={["version"]}
      />
      <div className="row">
        <Button type="submit" look="main" isPending={save.isPending}>
          {t("messages.save")}
        </Button>
        <DropDraft draft={draft} />
      </div>
    </form>
  );
}

/** Who messages come from, and which of them go out by themselves. */
export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const kept = useQuery({
    queryKey: ["messageSettings"],
    queryFn: () => take(client.GET("/api/message-settings")),
    staleTime: 0,
  });
  const figures = useQuery({
    queryKey: ["depotFigures"],
    queryFn: () => take(client.GET("/api/depot/figures")),
  });
  return (
    <Dialog title={t("messages.settings")} isOpen onClose={onClose}>
      {(kept.isPending || figures.isPending) && <Loading />}
      <FailureNote failure={kept.error} onAgain={() => void kept.refetch()} />
      <FailureNote failure={figures.error} onAgain={() => void figures.refetch()} />
      {kept.isSuccess && figures.isSuccess && (
        <SettingsForm kept={kept.data} days={figures.data.figures.messageDays} onClose={onClose} />
      )}
    </Dialog>
  );
}
