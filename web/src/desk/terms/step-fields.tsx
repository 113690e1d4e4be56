import { NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { RowList } from "./row-list.tsx";
import type { PieceProps } from "./terms-draft.ts";

/** Steps for long hires, the cancellation scale, and who may take how much off. */
export function StepFields(props: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="steps-title">
      <h2 id="steps-title">{t("rates.steps")}</h2>
      <LongHire {...props} />
      <Cancellation {...props} />
      <Discounts {...props} />
    </section>
  );
}

const removeStep = () => t("rates.removeStep");

function LongHire({ value, change }: PieceProps) {
  return (
    <fieldset className="fields">
      <legend>{t("rates.longHire")}</legend>
      <p className="quiet">{t("rates.neverDearer")}</p>
      <RowList
        rows={value.longHire}
        onChange={(longHire) => change({ longHire })}
        fresh={{ fromNights: 28, reductionPercent: 15 }}
        addText={t("rates.addStep")}
        removeText={removeStep}
        fields={(step, set) => (
          <>
            <NumberField
              label={t("rates.fromNights")}
              value={step.fromNights}
              min={2}
              max={365}
              onChange={(n) => set({ fromNights: n ?? 2 })}
            />
            <NumberField
              label={t("rates.reduction")}
              unit="%"
              value={step.reductionPercent}
              min={0}
              max={100}
              onChange={(n) => set({ reductionPercent: n ?? 0 })}
            />
          </>
        )}
      />
    </fieldset>
  );
}

function Cancellation({ value, change }: PieceProps) {
  return (
    <fieldset className="fields">
      <legend>{t("rates.cancellation")}</legend>
      <RowList
        rows={value.cancellation}
        onChange={(cancellation) => change({ cancellation })}
        fresh={{ atLeastDaysBefore: 0, keepPercent: 100 }}
        addText={t("rates.addStep")}
        removeText={removeStep}
        fields={(step, set) => (
          <>
            <NumberField
              label={t("rates.daysBefore")}
              value={step.atLeastDaysBefore}
              min={0}
              max={365}
              onChange={(n) => set({ atLeastDaysBefore: n ?? 0 })}
            />
            <NumberField
              label={t("rates.keepPercent")}
              unit="%"
              value={step.keepPercent}
              min={0}
              max={100}
              onChange={(n) => set({ keepPercent: n ?? 0 })}
            />
          </>
        )}
      />
    </fieldset>
  );
}

const ROLES = ["manager", "desk"] as const;

function Discounts({ value, change }: PieceProps) {
  return (
    <fieldset className="fields">
      <legend>{t("rates.discounts")}</legend>
      <p className="quiet">{t("rates.discountsNote")}</p>
      <RowList
        rows={value.discounts ?? []}
        onChange={(discounts) => change({ discounts })}
        fresh={{ id: "", mostPercent: { manager: 20, desk: 5 } }}
        addText={t("rates.addDiscount")}
        removeText={removeStep}
        fields={(discount, set) => (
          <>
            <TextField label={t("rates.discountName")} value={discount.id} onChange={(id) => set({ id })} />
            {ROLES.map((role) => (
              <NumberField
                key={role}
                label={t("rates.mostOf", { role })}
                unit="%"
                value={discount.mostPercent[role] ?? 0}
                min={0}
                max={100}
                onChange={(n) => set({ mostPercent: { ...discount.mostPercent, [role]: n ?? 0 } })}
              />
            ))}
          </>
        )}
      />
    </fieldset>
  );
}
