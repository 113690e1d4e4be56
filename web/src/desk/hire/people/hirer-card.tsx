import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, Dialog, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { KeepRow } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";
import { useSignedIn } from "../../session.ts";
import { keepPart } from "../keep-part.ts";
import { type HirePageData, type PartProps, useHireAct } from "../use-hire.ts";

const FIELDS = [
  { name: "name", type: "text" },
  { name: "telephone", type: "tel" },
  { name: "email", type: "email" },
] as const;
const OVER: readonly string[] = ["closed", "lost", "cancelled", "noShow"];

const fieldsOf = ({ customer: { name, telephone = "", email = "", address = "" } }: HirePageData) => ({
  name,
  telephone,
  email,
  address,
});

/** Who hires, as papers and notices name them; put right at any time. */
export function HirerCard({ page }: PartProps) {
  const { id, stage } = page.hire;
  const { may } = useSignedIn();
  const [isErasing, setErasing] = useState(false);
  const { name } = page.customer;
  const draft = useGuardedDraft(`customer.${id}`, {
    value: fieldsOf(page),
    version: page.versions.customer,
  });
  const { value, set, basedOn } = draft;
  const save = useHireAct(() => {
    const { address: where, ...rest } = value;
    const body = where.trim() === "" ? rest : { ...rest, address: where };
    return keepPart(id, () =>
      take(client.PUT("/api/hires/{id}/customer", { params: { path: { id }, query: { basedOn } }, body })),
    );
  }, draft.done);
  if (name === "") return null;
  return (
    <section className="card sheet" aria-labelledby="hirer-title">
      <h2 id="hirer-title">{t("hirerCard.title")}</h2>
      <p className="quiet">{t("hirerCard.lead")}</p>
      <div className="sheet-fields">
        {FIELDS.map((field) => (
          <TextField
            key={field.name}
            label={t(`hirerCard.${field.name}`)}
            type={field.type}
            value={value[field.name]}
            onChange={(text) => set({ ...value, [field.name]: text })}
            error={problemAt(save.error, field.name)}
            autoComplete="off"
          />
        ))}
      </div>
      <TextField
        label={t("hirerCard.address")}
        note={t("hirerCard.addressNote")}
        lines={2}
        value={value.address}
        onChange={(text) => set({ ...value, address: text })}
        error={problemAt(save.error, "address")}
        autoComplete="off"
      />
      <KeptMeanwhile
        draft={draft}
        failure={save.error}
        onSettled={save.reset}
        shown={["name", "telephone", "email", "address"]}
      />
      <KeepRow label={t("hirerCard.keep")} save={save} draft={draft} />
      {may.includes("customer.erase") && OVER.includes(stage) && (
        <div>
          <Button look="quiet" onPress={() => setErasing(true)}>
            {t("hirerCard.erase")}
          </Button>
        </div>
      )}
      {isErasing && <EraseDialog hireId={id} name={name} onClose={() => setErasing(false)} />}
    </section>
  );
}

interface EraseDialogProps {
  readonly hireId: string;
  readonly name: string;
  readonly onClose: () => void;
}

function EraseDialog({ hireId, name, onClose }: EraseDialogProps) {
  const erase = useMutation({
    mutationFn: () =>
      take(client.POST("/api/hires/{id}/customer/erasure", { params: { path: { id: hireId } } })),
    onSuccess: () => {
      onClose();
      // nothing that was read before may still show the person
      queries.clear();
      window.location.assign("/hires");
    },
  });
  return (
    <Dialog title={t("hirerCard.eraseTitle", { name })} isOpen onClose={onClose}>
      <p>{t("hirerCard.eraseText")}</p>
      <FailureNote failure={erase.error} />
      <div className="row row-end">
        <Button look="danger" onPress={() => erase.mutate()} isPending={erase.isPending}>
          {t("hirerCard.eraseNow")}
        </Button>
      </div>
    </Dialog>
  );
}
