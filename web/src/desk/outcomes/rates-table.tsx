import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";
import type { Schemas } from "../../api/client.ts";
import { FigureSums, ScrollX } from "../../parts/index.ts";
import { figureText, t } from "../../parts/words.ts";

type Page = Schemas["ForecastOutcomes"];
type Rate = Page["rates"][number];
const times = (value: number) => figureText({ value: Math.round(value * 100) / 100, unit: "" });

/** Rates as forecasts take them, a row for each vehicle, a column for each store. */
export function RatesTable({ page }: { readonly page: Page }) {
  const { rates, vehicles } = page;
  const stores = [...new Set(rates.map(({ store }) => store))];
  const rows = [
    ...vehicles.filter(({ id }) => rates.some(({ vehicleId }) => vehicleId === id)),
    { id: null, name: t("outcomes.anyVehicle"), registration: "" },
  ];
  return (
    <section className="card stack" aria-labelledby="rates-title">
      <h2 id="rates-title">{t("outcomes.rates")}</h2>
      <p className="quiet">{t("outcomes.ratesNote")}</p>
      <ScrollX label={t("outcomes.rates")}>
        <table className="dense outcomes-table">
          <thead>
            <tr>
              <th>{t("outcomes.vehicle")}</th>
              {stores.map((store) => (
                <th key={store}>{t(`store.${store}`)}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, name, registration }) => (
              <tr key={id ?? ""}>
                <th scope="row">
                  {name} <span className="quiet nowrap">{registration}</span>
                </th>
                {stores.map((store) => (
                  <td key={store} className="num">
                    <RateCell
                      rate={rates.find((rate) => rate.vehicleId === id && rate.store === store)}
                      vehicle={name}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollX>
    </section>
  );
}

function RateCell({ rate, vehicle }: { readonly rate: Rate | undefined; readonly vehicle: string }) {
  if (rate === undefined) return <span className="quiet">–</span>;
  const label = t("outcomes.rate", { vehicle, store: t(`store.${rate.store}`) });
  const text = t("outcomes.times", { times: times(rate.rate.value) });
  return (
    <DialogTrigger>
      <Button className="figure-tap" aria-label={t("parts.figure.open", { label, text })}>
        {text}
      </Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-body" aria-label={label}>
          <FigureSums figure={rate.rate} label={label} />
          <dl className="figure-sums">
            {rate.warmth !== undefined && (
              <>
                <dt>{t("outcomes.warmthLine")}</dt>
                <dd>{t("outcomes.times", { times: times(rate.warmth.value) })}</dd>
              </>
            )}
            <dt>{t("outcomes.rangeLine")}</dt>
            <dd>{t("outcomes.range", { low: times(rate.low.value), high: times(rate.high.value) })}</dd>
            {rate.spread.value > 0 && (
              <>
                <dt>{t("outcomes.spreadLine")}</dt>
                <dd>{figureText({ value: rate.spread.value, unit: "share" })}</dd>
              </>
            )}
            {rate.width.value < 1 && (
              <>
                <dt>{t("outcomes.widthLine")}</dt>
                <dd>{t("outcomes.times", { times: times(rate.width.value) })}</dd>
              </>
            )}
            <dt>{t("outcomes.count")}</dt>
            <dd>
              {t("outcomes.returns", { n: rate.count })}
              {rate.wild > 0 && `, ${t("outcomes.wild", { n: rate.wild })}`}
            </dd>
          </dl>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
