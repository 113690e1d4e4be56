import { COUNTRIES_KNOWN } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { NumberField, TickField } from "../../parts/index.ts";
import { has, moneyText, say, t } from "../../parts/words.ts";
import type { PartyAndDatesProps } from "./party-and-dates.tsx";

const HOME = "GB";

/** Where to, how many drive, and what is taken along: each in the price of every vehicle at once. */
export function WhereAndWhat({ value, change }: PartyAndDatesProps) {
  const terms = useQuery({
    queryKey: ["terms"],
    queryFn: () => take(client.GET("/api/terms")),
    staleTime: 300_000,
  });
  const extras = terms.data?.hire?.terms.extras ?? [];
  const home = terms.data?.hire?.terms.abroad.home ?? HOME;
  const wanted = Object.values(value.extras).filter((count) => count > 0).length;
  const toggle = (country: string, isIn: boolean) =>
    change({
      countries: isIn ? [...value.countries, country] : value.countries.filter((each) => each !== country),
    });
  return (
    <section className="card stack" aria-labelledby="where-title">
      <h2 id="where-title">{t("rates.whereAndWhat")}</h2>
      <div className="enquiry-drivers">
        <NumberField
          label={t("rates.drivers")}
          value={value.drivers}
          min={1}
          max={6}
          stepper
          onChange={(drivers) => change({ drivers: drivers ?? 1 })}
        />
      </div>
      <details open={value.countries.length > 0}>
        <summary className="fold">
          {value.countries.length === 0
            ? t("rates.atHome")
            : t("rates.abroadTo", {
                list: value.countries.map((country) => t("country.name", { country })).join(", "),
              })}
        </summary>
        <div className="ticks">
          {COUNTRIES_KNOWN.filter((country) => country !== home).map((country) => (
            <TickField
              key={country}
              value={value.countries.includes(country)}
              onChange={(isIn) => toggle(country, isIn)}
            >
              {t("country.name", { country })}
            </TickField>
          ))}
        </div>
      </details>
      {extras.length > 0 && (
        <details open={wanted > 0}>
          <summary className="fold">{t("rates.takenAlong", { n: wanted })}</summary>
          <div className="sheet-fields">
            {extras.map(({ id, pence, per }) => (
              <NumberField
                key={id}
                label={has(`quoteAbout.${id}`) ? say(`quoteAbout.${id}`) : id}
                note={t("quote.extraPrice", { price: moneyText({ currency: "GBP", pence }), per })}
                value={value.extras[id] ?? 0}
                min={0}
                max={20}
                stepper
                onChange={(count) => change({ extras: { ...value.extras, [id]: count ?? 0 } })}
              />
            ))}
          </div>
        </details>
      )}
    </section>
  );
}
