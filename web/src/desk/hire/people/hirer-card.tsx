import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { KeepRow } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { keepPart } from "../keep-part.ts";
import { type HirePageData, type PartProps, useHireAct } from "../use-hire.ts";

const FIELDS = [
  { name: "name", type: "text" },
  { name: "telephone", type: "tel" },
  { name: "email", type: "email" },
] as const;

const fieldsOf = ({ customer: { name, telephone = "", email = "", address = "" } }: HirePageData) => ({
  name,
  telephone,
  email,
  address,
});

/** Who hires, as papers and notices name them; put right at any time. */
export function HirerCard({ page }: PartProps) {
  const { id } = page.hire;
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
    </section>
  );
}
