import { Button, NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { Amount, chargeName, VatField } from "./amount-field.tsx";
import type { PieceProps } from "./terms-draft.ts";

/** What is in every price: charges on each hire, going abroad, drivers beyond those included. */
export function AlwaysFields({ value, change }: Pick<PieceProps, "value" | "change">) {
  const { compulsory, abroad, drivers } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.always")}</legend>
      <p className="quiet">{t("rateMore.alwaysNote")}</p>
      {compulsory.map((each, k) => {
        const set = (part: Partial<typeof each>) =>
          change({ compulsory: replaced(compulsory, k, { ...each, ...part }) });
        const name = chargeName(each.id);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a charge is its place while its name is being typed
          <div key={k} className="span-row">
            <TextField
              label={t("rateMore.chargeName")}
              note={name === each.id ? "" : name}
              value={each.id}
              onChange={(id) => set({ id })}
            />
            <Amount label={t("rates.price")} pence={each.pence} onChange={(pence) => set({ pence })} />
            <VatField value={each.vat} onChange={(vat) => set({ vat })} />
            <Button look="quiet" onPress={() => change({ compulsory: replaced(compulsory, k, null) })}>
              {t("rates.remove", { name })}
            </Button>
          </div>
        );
      })}
      <div>
        <Button
          look="quiet"
          onPress={() => change({ compulsory: [...compulsory, { id: "", pence: 0, vat: "standard" }] })}
        >
          {t("rateMore.addCharge")}
        </Button>
      </div>
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
