import { NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { MONEY_FORMAT, type PieceProps, penceOf, pounds } from "./terms-draft.ts";

const FUELS = ["diesel", "petrol"] as const;
const POUNDS = [
  "fuelServicePence",
  "cleaningPencePerHour",
  "latePencePerHour",
  "wasteNotEmptiedPence",
  "cassetteNotEmptiedPence",
] as const;
const PENCE = ["defPencePerLitre", "lpgPencePerKg"] as const;

/** What is charged at the return, like for like: by the litre, the kilogram, the hour, or once. Nothing where it is 0. */
export function TariffFields({ value, change }: Pick<PieceProps, "value" | "change">) {
  const { tariff } = value;
  const put = (part: Partial<typeof tariff>) => change({ tariff: { ...tariff, ...part } });
  return (
    <section className="card stack" aria-labelledby="tariff-title">
      <h2 id="tariff-title">{t("tariff.title")}</h2>
      <p className="quiet">{t("tariff.lead")}</p>
      <div className="sheet-fields">
        {FUELS.map((fuel) => (
          <NumberField
            key={fuel}
            label={t(`tariff.${fuel}`)}
            unit="p"
            value={tariff.fuelPencePerLitre[fuel] ?? null}
            min={0}
            max={1000}
            onChange={(n) => {
              const { [fuel]: _, ...others } = tariff.fuelPencePerLitre;
              put({ fuelPencePerLitre: n === null ? others : { ...others, [fuel]: n } });
            }}
          />
        ))}
        {PENCE.map((id) => (
          <NumberField
            key={id}
            label={t(`tariff.${id}`)}
            unit="p"
            value={tariff[id]}
            min={0}
            max={2000}
            onChange={(n) => put({ [id]: n ?? 0 })}
          />
        ))}
        {POUNDS.map((id) => (
          <NumberField
            key={id}
            label={t(`tariff.${id}`)}
            unit="£"
            value={pounds(tariff[id])}
            min={0}
            max={10_000}
            format={MONEY_FORMAT}
            onChange={(amount) => put({ [id]: penceOf(amount) })}
          />
        ))}
        <NumberField
          label={t("tariff.lateGraceMinutes")}
          unit="min"
          value={tariff.lateGraceMinutes}
          min={0}
          max={240}
          onChange={(n) => put({ lateGraceMinutes: n ?? 0 })}
        />
      </div>
    </section>
  );
}
