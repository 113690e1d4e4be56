import { Button, NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
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

function LongHire({ value, change }: PieceProps) {
  const { longHire } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.longHire")}</legend>
      <p className="quiet">{t("rates.neverDearer")}</p>
      {longHire.map((step, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place
        <div key={k} className="span-row">
          <NumberField
            label={t("rates.fromNights")}
            value={step.fromNights}
            min={2}
            max={365}
            onChange={(n) => change({ longHire: replaced(longHire, k, { ...step, fromNights: n ?? 2 }) })}
          />
          <NumberField
            label={t("rates.reduction")}
            unit="%"
            value={step.reductionPercent}
            min={0}
            max={100}
            onChange={(n) =>
              change({ longHire: replaced(longHire, k, { ...step, reductionPercent: n ?? 0 }) })
            }
          />
          <Button look="quiet" onPress={() => change({ longHire: replaced(longHire, k, null) })}>
            {t("rates.removeStep")}
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          onPress={() => change({ longHire: [...longHire, { fromNights: 28, reductionPercent: 15 }] })}
        >
          {t("rates.addStep")}
        </Button>
      </div>
    </fieldset>
  );
}

function Cancellation({ value, change }: PieceProps) {
  const { cancellation } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.cancellation")}</legend>
      {cancellation.map((step, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place
        <div key={k} className="span-row">
          <NumberField
            label={t("rates.daysBefore")}
            value={step.atLeastDaysBefore}
            min={0}
            max={365}
            onChange={(n) =>
              change({ cancellation: replaced(cancellation, k, { ...step, atLeastDaysBefore: n ?? 0 }) })
            }
          />
          <NumberField
            label={t("rates.keepPercent")}
            unit="%"
            value={step.keepPercent}
            min={0}
            max={100}
            onChange={(n) =>
              change({ cancellation: replaced(cancellation, k, { ...step, keepPercent: n ?? 0 }) })
            }
          />
          <Button look="quiet" onPress={() => change({ cancellation: replaced(cancellation, k, null) })}>
            {t("rates.removeStep")}
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            change({ cancellation: [...cancellation, { atLeastDaysBefore: 0, keepPercent: 100 }] })
          }
        >
          {t("rates.addStep")}
        </Button>
      </div>
    </fieldset>
  );
}

const ROLES = ["manager", "desk"] as const;

function Discounts({ value, change }: PieceProps) {
  const discounts = value.discounts ?? [];
  return (
    <fieldset className="fields">
      <legend>{t("rates.discounts")}</legend>
      <p className="quiet">{t("rates.discountsNote")}</p>
      {discounts.map((discount, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a discount is its place while its name is being typed
        <div key={k} className="span-row">
          <TextField
            label={t("rates.discountName")}
            value={discount.id}
            onChange={(id) => change({ discounts: replaced(discounts, k, { ...discount, id }) })}
          />
          {ROLES.map((role) => (
            <NumberField
              key={role}
              label={t("rates.mostOf", { role })}
              unit="%"
              value={discount.mostPercent[role] ?? 0}
              min={0}
              max={100}
              onChange={(n) =>
                change({
                  discounts: replaced(discounts, k, {
                    ...discount,
                    mostPercent: { ...discount.mostPercent, [role]: n ?? 0 },
                  }),
                })
              }
            />
          ))}
          <Button look="quiet" onPress={() => change({ discounts: replaced(discounts, k, null) })}>
            {t("rates.removeStep")}
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            change({ discounts: [...discounts, { id: "", mostPercent: { manager: 20, desk: 5 } }] })
          }
        >
          {t("rates.addDiscount")}
        </Button>
      </div>
    </fieldset>
  );
}
