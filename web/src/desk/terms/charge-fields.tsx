import { NumberField, SelectField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { AlwaysFields } from "./always-fields.tsx";
import { Amount, chargeName, VatField } from "./amount-field.tsx";
import { AfterFields, DepositFields } from "./deposit-fields.tsx";
import { RowList } from "./row-list.tsx";
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
  return (
    <fieldset className="fields">
      <legend>{t("rates.extras")}</legend>
      <RowList<Extra>
        rows={value.extras}
        onChange={(extras) => change({ extras })}
        fresh={{ id: "", pence: 0, per: "hire", stock: 1, vat: "standard" }}
        addText={t("rates.addExtra")}
        removeText={({ id }) => t("rates.remove", { name: chargeName(id) })}
        fields={(extra, set, put) => (
          <>
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
                onChange={(amount) => put(withCap(extra, amount))}
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
          </>
        )}
      />
    </fieldset>
  );
}

type Extra = PieceProps["value"]["extras"][number];

/** An extra with another cap in pounds, or with none. */
function withCap({ capPence: _, ...rest }: Extra, amount: number | null): Extra {
  return amount === null ? rest : { ...rest, capPence: penceOf(amount) };
}
