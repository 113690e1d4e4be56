import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { ChoiceField, Empty, Loading, SelectField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { usePageTitle } from "../use-page-title.ts";
import { ChancePlot } from "./chance-plot.tsx";
import { JudgedTable } from "./judged-table.tsx";
import { RatesTable } from "./rates-table.tsx";
import { ReturnStrip } from "./return-strip.tsx";
import { FEWEST, verdictOf } from "./verdict.ts";
import "../hires/hires.css";
import "./outcomes.css";

type Page = Schemas["ForecastOutcomes"];
const EVERY = "*";
/** while returns are still being compared, this page asks again after so many ms */
const AGAIN_MS = 60;

/** How near forecasts came to what was used, and what returns taught. */
export default function OutcomesPage() {
  usePageTitle(t("outcomes.title"));
  const [vehicle, setVehicle] = useState(EVERY);
  const query = vehicle === EVERY ? {} : { vehicleId: vehicle };
  const outcomes = useQuery({
    queryKey: ["forecast-outcomes", vehicle],
    queryFn: () => take(client.GET("/api/forecast-outcomes", { params: { query } })),
    refetchInterval: ({ state }) => ((state.data?.waiting ?? 0) > 0 ? AGAIN_MS : false),
    placeholderData: (before) => before,
  });
  if (outcomes.isPending) return <Loading />;
  if (outcomes.isError)
    return <FailureNote failure={outcomes.error} onAgain={() => void outcomes.refetch()} />;
  const page = outcomes.data;
  const options = [
    { value: EVERY, label: t("outcomes.everyVehicle") },
    ...page.vehicles.map(({ id, name, registration }) => ({ value: id, label: `${name} ${registration}` })),
  ];
  return (
    <>
      <div className="page-head">
        <h1>{t("outcomes.title")}</h1>
        <Lead page={page} />
      </div>
      <div className="outcomes-choice">
        <SelectField label={t("outcomes.vehicle")} value={vehicle} options={options} onChange={setVehicle} />
      </div>
      {page.waiting > 0 && (
        <p className="notice" role="status">
          {t("outcomes.waiting", { n: page.waiting })}
        </p>
      )}
      {page.returns === 0 ? <Empty>{t("outcomes.none")}</Empty> : <Found page={page} />}
    </>
  );
}

function Lead({ page }: { readonly page: Page }) {
  const { judged, taught, stores, returns } = page;
  if (returns === 0) return null;
  if (judged.from === null || taught.count === 0)
    return <p className="quiet">{t("outcomes.tooFew", { n: returns })}</p>;
  const verdicts = stores.map(({ after }) => verdictOf(after)).filter((verdict) => verdict !== "few");
  const good = verdicts.filter((verdict) => verdict === "good").length;
  return (
    <>
      <p className="outcomes-verdict">
        {verdicts.length === 0
          ? t("outcomes.verdictNone", { least: FEWEST })
          : t("outcomes.verdictAll", { n: verdicts.length, good, least: FEWEST })}
      </p>
      <p className="quiet">
        {t("outcomes.lead", {
          judged: judged.count,
          from: dateText(judged.from, "short"),
          taught: taught.count,
        })}
      </p>
    </>
  );
}

function Found({ page }: { readonly page: Page }) {
  const { stores, shares, leftOut } = page;
  const [chosen, setChosen] = useState<string | null>(null);
  const shown = stores.find(({ store }) => store === chosen) ?? stores[0];
  return (
    <div className="stack">
      {stores.length > 0 && <JudgedTable stores={stores} />}
      {shown !== undefined && (
        <section className="card stack" aria-label={t("outcomes.title")}>
          <ChoiceField
            label={t("outcomes.store")}
            value={shown.store as string}
            options={stores.map(({ store }) => ({ value: store as string, label: t(`store.${store}`) }))}
            onChange={setChosen}
          />
          <div className="outcomes-pictures">
            <div>
              <ChancePlot judged={shown} shares={shares} />
              <p className="quiet">{t("outcomes.plotNote")}</p>
            </div>
            <div className="outcomes-wide">
              <ReturnStrip judged={shown} />
              <p className="quiet">{t("outcomes.pictureNote")}</p>
            </div>
          </div>
        </section>
      )}
      {page.rates.length > 0 && <RatesTable page={page} />}
      <section className="card stack" aria-labelledby="how-title">
        <h2 id="how-title">{t("outcomes.how")}</h2>
        <p>{t("outcomes.howText")}</p>
        {leftOut.length > 0 && (
          <>
            <h3>{t("outcomes.leftOut")}</h3>
            <ul>
              {leftOut.map(({ store, why, count }) => (
                <li key={`${store} ${why}`}>
                  {t("outcomes.leftOutLine", { store: t(`store.${store}`), n: count, why })}
                </li>
              ))}
            </ul>
          </>
        )}
      </section>
    </div>
  );
}
