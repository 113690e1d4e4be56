import type { Reading, TripForecast } from "@setfair/engine/trip";
import { type FormEvent, useState } from "react";
import type { Guide } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { dateText, figureText, say, t } from "../parts/words.ts";
import { civilNow, withinTrip } from "./local-time.ts";
import { Matters } from "./matters.tsx";
import type { HirerGuide } from "./use-guide.ts";
import { inHundred } from "./what-matters.ts";

type Store = Reading["store"];
type Unit = Reading["unit"];

/** Units a panel may show for a store, the usual one first. */
const UNITS: Readonly<Record<Store, readonly Unit[]>> = {
  battery12: ["V", "%", "Ah"],
  lpg: ["%", "kg"],
  freshWater: ["%", "L"],
  wasteWater: ["%", "L"],
  cassette: ["%"],
  fuel: ["%", "L"],
  def: ["%", "L"],
  tractionBattery: ["%"],
};
const RANGES: Readonly<Record<Unit, readonly [min: number, max: number]>> = {
  V: [8, 16],
  "%": [0, 100],
  Ah: [0, 1000],
  Wh: [0, 10000],
  L: [0, 500],
  kg: [0, 50],
};

/** One reading of the panel, with or without signal; the trip is lived again on this phone and the answer stands below. */
export function PanelPage({ hirer, guide }: { readonly hirer: HirerGuide; readonly guide: Guide }) {
  const trip = guide.trip;
  const stores = (hirer.forecast?.stores ?? [])
    .map(({ store }) => store)
    .filter((store): store is Store => store in UNITS);
  const [store, setStore] = useState<Store>("battery12");
  const [unit, setUnit] = useState<Unit>("V");
  const [value, setValue] = useState("");
  const [at, setAt] = useState(() =>
    trip === null ? "" : withinTrip(civilNow(trip.timeZone), trip.depart, trip.return),
  );
  const [error, setError] = useState<string | null>(null);
  const [min, max] = RANGES[unit];
  const choose = (next: Store) => {
    setStore(next);
    setUnit(UNITS[next][0]!);
    setValue("");
    setError(null);
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const number = Number(value.replace(",", "."));
    if (value.trim() === "" || !Number.isFinite(number) || number < min || number > max) {
      setError(t("hirer.panel.range", { min, max, unit }));
      return;
    }
    if (trip !== null && (at < trip.depart || at > trip.return)) {
      setError(
        t("hirer.panel.when", {
          from: dateText(trip.depart, "dayTime"),
          to: dateText(trip.return, "dayTime"),
        }),
      );
      return;
    }
    setError(null);
    try {
      await hirer.read({ store, value: number, unit, at: at.slice(0, 16) });
    } catch {
      setError(t("hirer.panel.notKept"));
      return;
    }
    setValue("");
    document.querySelector("main")?.scrollTo(0, 0);
  };
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.panel.title")}</h1>
      {hirer.readings.length > 0 && <Matters hirer={hirer} guide={guide} onPanel />}
      <form className="card stack" onSubmit={submit} noValidate>
        <label className="field">
          <span className="field-label">{t("hirer.panel.what")}</span>
          <select
            className="input"
            value={store}
            onChange={(event) => choose(event.currentTarget.value as Store)}
          >
            {stores.map((one) => (
              <option key={one} value={one}>
                {say(`store.${one}`)}
              </option>
            ))}
          </select>
        </label>
        <fieldset className="post-choices">
          <legend>{t("hirer.panel.unit")}</legend>
          {UNITS[store].map((one) => (
            <button
              key={one}
              type="button"
              className="choice"
              aria-pressed={unit === one}
              onClick={() => setUnit(one)}
            >
              {t(`hirer.unit.${one === "%" ? "percent" : one}`)}
            </button>
          ))}
        </fieldset>
        <label className="field">
          <span className="field-label">{t("hirer.panel.value", { unit })}</span>
          <input
            className="input"
            inputMode="decimal"
            autoComplete="off"
            value={value}
            aria-invalid={error !== null}
            aria-describedby="panel-error"
            onChange={(event) => setValue(event.currentTarget.value)}
          />
        </label>
        {store === "battery12" && unit === "V" && <p className="quiet">{t("hirer.panel.rest")}</p>}
        <label className="field">
          <span className="field-label">{t("hirer.panel.at")}</span>
          <input
            className="input"
            type="datetime-local"
            value={at}
            min={trip?.depart}
            max={trip?.return}
            onChange={(event) => setAt(event.currentTarget.value)}
          />
        </label>
        <p id="panel-error" className="field-error" role="alert">
          {error}
        </p>
        <button className="button button-main" type="submit" disabled={hirer.running}>
          {t(hirer.running ? "hirer.panel.running" : "hirer.panel.do")}
        </button>
      </form>
      {hirer.forecast !== null && hirer.forecast.readings.length > 0 && <Uses forecast={hirer.forecast} />}
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

/** What each reading did to the forecast, as shares of what may be used. */
function Uses({ forecast }: { readonly forecast: TripForecast }) {
  const share = (store: string, value: number) =>
    figureText({
      value: value / (forecast.stores.find((one) => one.store === store)?.capacity.value ?? 1),
      unit: "share",
    });
  const ahead = forecast.stores.filter(({ trouble }) => trouble.chance > 0);
  return (
    <section className="card stack-tight" aria-labelledby="uses">
      <h2 id="uses">{t("hirer.uses.title")}</h2>
      <ul className="stack-tight">
        {forecast.readings.map((use) => (
          <li key={`${use.store} ${use.at}`}>
            {t("hirer.uses.one", {
              store: say(`store.${use.store}`),
              at: dateText(use.at, "dayTime"),
              level: share(use.store, use.level.value),
              expected: share(use.store, use.expectedP50),
              how: use.how,
            })}
          </li>
        ))}
      </ul>
      {ahead.length > 0 && <p className="quiet">{t("hirer.uses.stores")}</p>}
      <ul className="stack-tight">
        {ahead.map((store) => (
          <li key={store.store}>
            {t("hirer.uses.store", {
              store: say(`store.${store.store}`),
              end: store.troubleAt,
              n: inHundred(store.trouble.chance),
            })}
          </li>
        ))}
      </ul>
    </section>
  );
}
