import { NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { Amount, chargeName, VatField } from "./amount-field.tsx";
import { RowList } from "./row-list.tsx";
import type { PieceProps } from "./terms-draft.ts";

/** What is in every price: charges on each hire, going abroad, drivers beyond those included. */
export function AlwaysFields({ value, change }: Pick<PieceProps, "value" | "change">) {
  const { compulsory, abroad, drivers } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.always")}</legend>
      <p className="quiet">{t("rateMore.alwaysNote")}</p>
      <RowList<PieceProps["value"]["compulsory"][number]>
        rows={compulsory}
        onChange={(rows) => change({ compulsory: rows })}
        fresh={{ id: "", pence: 0, vat: "standard" }}
        addText={t("rateMore.addCharge")}
        removeText={({ id }) => t("rates.remove", { name: chargeName(id) })}
        fields={({ id, pence, vat }, set) => (
          <>
            <TextField
              label={t("rateMore.chargeName")}
              note={chargeName(id) === id ? "" : chargeName(id)}
              value={id}
              onChange={(next) => set({ id: next })}
            />
            <Amount label={t("rates.price")} pence={pence} onChange={(next) => set({ pence: next })} />
            <VatField value={vat} onChange={(next) => set({ vat: next })} />
          </>
        )}
      />
      <div className="sheet-fields">
        <Amount
          label={t("rates.abroadCharge")}
          pence={abroad.pence}
          onChange={(pence) => change({ abroad: { ...abroad, pence } })}
        />
        <VatField
          label={t("rateMore.vatAbroad")}
          value={abroad.vat}
          onChange={(vat) => change({ abroad: { ...abroad, vat } })}
        />
        <NumberField
          label={t("rateMore.driversIncluded")}
          value={drivers.included}
          min={1}
          max={8}
          stepper
          onChange={(n) => change({ drivers: { ...drivers, included: n ?? 1 } })}
        />
        <Amount
          label={t("rates.driverEach", { n: drivers.included })}
          pence={drivers.extraPenceEach}
          onChange={(extraPenceEach) => change({ drivers: { ...drivers, extraPenceEach } })}
        />
      </div>
    </fieldset>
  );
}
