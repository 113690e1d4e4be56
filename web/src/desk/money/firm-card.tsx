import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Dialog, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { DropDraft } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";

type Firm = Schemas["FirmOnInvoices"];

interface FirmDialogProps {
  readonly firm: Firm | null;
  /** what a change is based on */
  readonly version: string;
  readonly onClose: () => void;
}

function FirmDialog({ firm, version, onClose }: FirmDialogProps) {
  const draft = useGuardedDraft("firmOnInvoices", {
    value: { name: firm?.name ?? "", address: firm?.address ?? "", vatNumber: firm?.vatNumber ?? "" },
    version,
  });
  const { value, basedOn } = draft;
  const { name, address, vatNumber } = value;
  const change = (field: keyof typeof value) => (text: string) => draft.set({ ...value, [field]: text });
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/money/firm", {
              params: { query: { basedOn } },
              body: {
                name: name.trim(),
                address: address.trim(),
                vatNumber: vatNumber.trim() === "" ? null : vatNumber.replaceAll(" ", "").toUpperCase(),
              },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["money"] }),
      ),
    onSuccess: (page) => {
      draft.done();
      queries.setQueryData(["money"], page);
      onClose();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <Dialog title={t("firm.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <TextField
          label={t("firm.name")}
          value={name}
          onChange={change("name")}
          error={problemAt(save.error, "name")}
        />
        <TextField
          label={t("firm.address")}
          lines={3}
          value={address}
          onChange={change("address")}
          error={problemAt(save.error, "address")}
        />
        <TextField
          label={t("firm.vatNumber")}
          note={t("firm.vatNumberNote")}
          value={vatNumber}
          onChange={change("vatNumber")}
          error={problemAt(save.error, "vatNumber")}
        />
        <KeptMeanwhile
          draft={draft}
          failure={save.error}
          onSettled={save.reset}
          shown={["name", "address", "vatNumber"]}
        />
        <div className="row row-end">
          <DropDraft draft={draft} />
          <Button type="submit" look="main" isPending={save.isPending}>
            {t("firm.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}

interface FirmCardProps {
  readonly firm: Firm | null;
  readonly version: string;
  readonly mayChange: boolean;
}

/** The firm as it stands on its invoices from today on. */
export function FirmCard({ firm, version, mayChange }: FirmCardProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="card stack-tight" aria-labelledby="money-firm">
      <h2 id="money-firm">{t("firm.title")}</h2>
      {firm === null ? (
        <p>{t("firm.none")}</p>
      ) : (
        <p>
          {firm.name}, {firm.address}
          <br />
          {firm.vatNumber === null ? t("firm.noVat") : t("firm.vat", { number: firm.vatNumber })}
        </p>
      )}
      {mayChange && (
        <div>
          <Button onPress={() => setOpen(true)}>{t("firm.change")}</Button>
        </div>
      )}
      {isOpen && <FirmDialog firm={firm} version={version} onClose={() => setOpen(false)} />}
    </section>
  );
}
