import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Dialog, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";

type Firm = Schemas["FirmOnInvoices"];

interface FirmDialogProps {
  readonly firm: Firm | null;
  readonly onClose: () => void;
}

function FirmDialog({ firm, onClose }: FirmDialogProps) {
  const [name, setName] = useState(firm?.name ?? "");
  const [address, setAddress] = useState(firm?.address ?? "");
  const [vatNumber, setVatNumber] = useState(firm?.vatNumber ?? "");
  const save = useMutation({
    mutationFn: () =>
      take(
        client.PUT("/api/money/firm", {
          body: {
            name: name.trim(),
            address: address.trim(),
            vatNumber: vatNumber.trim() === "" ? null : vatNumber.replaceAll(" ", "").toUpperCase(),
          },
        }),
      ),
    onSuccess: (page) => {
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
          onChange={setName}
          error={problemAt(save.error, "name")}
        />
        <TextField
          label={t("firm.address")}
          lines={3}
          value={address}
          onChange={setAddress}
          error={problemAt(save.error, "address")}
        />
        <TextField
          label={t("firm.vatNumber")}
          note={t("firm.vatNumberNote")}
          value={vatNumber}
          onChange={setVatNumber}
          error={problemAt(save.error, "vatNumber")}
        />
        <FailureNote failure={save.error} shown={["name", "address", "vatNumber"]} />
        <div className="row row-end">
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
  readonly mayChange: boolean;
}

/** The firm as it stands on its invoices from today on. */
export function FirmCard({ firm, mayChange }: FirmCardProps) {
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
      {isOpen && <FirmDialog firm={firm} onClose={() => setOpen(false)} />}
    </section>
  );
}
