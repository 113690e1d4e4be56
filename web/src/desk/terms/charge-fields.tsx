import { Button, NumberField, SelectField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { AlwaysFields } from "./always-fields.tsx";
import { Amount, chargeName, VatField } from "./amount-field.tsx";
import { AfterFields, DepositFields } from "./deposit-fields.tsx";
import { MONEY_FORMAT, type PieceProps, penceOf, pounds } from "./terms-draft.ts";

/** What every hire pays, what may be added, and what is held. */
export function ChargeFields(props: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="charges-title">
      <h2 id="charges-title">{t("rates.charges")}</h2>
      <AlwaysFields {...props} />
      <Extras {...props} />
      <DepositFields {...props} />
      <AfterFields {...props} />
    </section>
  );
}

function Extras({ value, change }: PieceProps) {
  const { extras } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.extras")}</legend>
      {extras.map((extra, k) => {
        const set = (part: Partial<typeof extra>) =>
          change({ extras: replaced(extras, k, { ...extra, ...part }) });
        const setCap = (capPence: number | null) => {
          const { capPence: _, ...rest } = extra;
          change({ extras: replaced(extras, k, capPence === null ? rest : { ...rest, capPence }) });
        };
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: an extra is its place while its name is being typed
          <div key={k} className="span-row">
            <TextField
              label={t("rates.extraName")}
              note={chargeName(extra.id) === extra.id ? "" : chargeName(extra.id)}
              value={extra.id}
              onChange={(id) => set({ id })}
            />
            <Amount label={t("rates.price")} pence={extra.pence} onChange={(pence) => set({ pence })} />
            <SelectField
              label={t("rates.per")}
              value={extra.per}
              options={(["hire", "night"] as const).map((per) => ({
                value: per,
                label: t("rates.perWhat", { per }),
              }))}
              onChange={(per) => set({ per })}
            />
            {extra.per === "night" && (
              <NumberField
                label={t("rateMore.cap")}
                unit="£"
                note={t("rateMore.capNote")}
                value={extra.capPence === undefined ? null : pounds(extra.capPence)}
                min={0}
                max={100_000}
                format={MONEY_FORMAT}
                onChange={(amount) => setCap(amount === null ? null : penceOf(amount))}
              />
            )}
            <VatField value={extra.vat} onChange={(vat) => set({ vat })} />
            <NumberField
              label={t("rates.stock")}
              note={t("rates.stockNote")}
              value={extra.stock}
              min={0}
              max={1000}
              onChange={(n) => set({ stock: n ?? 0 })}
            />
            <Button look="quiet" onPress={() => change({ extras: replaced(extras, k, null) })}>
              {t("rates.remove", { name: chargeName(extra.id) })}
            </Button>
          </div>
        );
      })}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            change({ extras: [...extras, { id: "", pence: 0, per: "hire", stock: 1, vat: "standard" }] })
          }
        >
          {t("rates.addExtra")}
        </Button>
      </div>
    </fieldset>
  );
}
