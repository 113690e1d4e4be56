import type { StopForecast, StoreForecast, TripForecast } from "@setfair/engine/trip";
import { leastLeft, tellTrip } from "@setfair/engine/trip";
import type { Guide } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { drawName, settingText } from "../parts/setting-words.ts";
import { StripDrawing } from "../parts/strip-drawing.tsx";
import { hasTrouble, likelyAt, placeOnRoad, stripOf } from "../parts/strip-of-store.ts";
import { dateText, figureText, say, t } from "../parts/words.ts";
import { civilNow } from "./local-time.ts";
import { inHundred } from "./what-matters.ts";
import "./stops.css";

type Trip = NonNullable<Guide["trip"]>;

/** of all use: what is less is no reason */
const LEAST_DRAW = 0.02;

/** The road of the trip, stop by stop, and a strip for each store: after a reading, as this phone lived it again. */
export default function StopsPage({
  guide,
  forecast,
}: {
  readonly guide: Guide;
  readonly forecast: TripForecast | null;
}) {
  const { trip } = guide;
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.stops.title")}</h1>
      {trip === null || forecast === null ? (
        <p>{t("hirer.matters.none")}</p>
      ) : (
        <>
          <p>{t("stops.lead")}</p>
          <Road trip={trip} forecast={forecast} />
          <p className="guide-caution">{t("set.caution")}</p>
          <Strips forecast={forecast} />
        </>
      )}
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

function Road({ trip, forecast }: { readonly trip: Trip; readonly forecast: TripForecast }) {
  const now = civilNow(trip.timeZone);
  return (
    <ol className="day-road stops-road">
      {trip.stops.map((stop, k) => (
        <li key={`${stop.arrive} ${stop.place.name}`}>
          <Stop stop={stop} forecast={forecast.stops[k]} now={now} />
        </li>
      ))}
      <li>
        <h2 className="stop-name">{t("stops.home")}</h2>
        <p className="quiet">{dateText(trip.return, "dayTime")}</p>
        <p>{t("stops.homeReach", { pct: String(inHundred(forecast.lastsChance)) })}</p>
      </li>
    </ol>
  );
}

function Stop({
  stop,
  forecast,
  now,
}: {
  readonly stop: Trip["stops"][number];
  readonly forecast: StopForecast | undefined;
  readonly now: string;
}) {
  const { acts, leaveWithWaterL } = stop;
  const stay = { from: dateText(stop.arrive, "dayTime"), to: dateText(stop.leave, "dayTime") };
  return (
    <>
      <h2 className="stop-name">{stop.place.name}</h2>
      <p className="quiet">{t("stops.stay", stay)}</p>
      {stop.leave < now ? (
        <p>{t("stops.past")}</p>
      ) : (
        <>
          {stop.arrive > now && forecast !== undefined && (
            <p>{t("stops.reach", { pct: String(inHundred(forecast.reachChance)) })}</p>
          )}
          <ul className="stop-acts">
            {acts.length === 0 && <li>{t("stops.nothing")}</li>}
            {acts.map((act) => (
              <li key={act}>{t("stops.act", { act })}</li>
            ))}
            {forecast?.set?.map((one) => (
              <li key={one.system}>{settingText(one)}</li>
            ))}
            {leaveWithWaterL != null && (
              <li>
                {t("stops.water", {
                  litres: figureText({ value: leaveWithWaterL, unit: "L" }),
                  fills: acts.includes("fillWater") ? "yes" : "no",
                })}
              </li>
            )}
          </ul>
        </>
      )}
    </>
  );
}

function Strips({ forecast }: { readonly forecast: TripForecast }) {
  const { shown, quiet } = tellTrip(forecast);
  const stops = forecast.stops.map((stop) => placeOnRoad(forecast, stop.arrive));
  return (
    <section className="card stack-tight" aria-labelledby="stops-stores">
      <h2 id="stops-stores">{t("stops.stores")}</h2>
      {shown.map((store) => (
        <Strip key={store.store} store={store} forecast={forecast} stops={stops} />
      ))}
      {quiet.length > 0 && (
        <p className="quiet">
          {t("stops.quiet", {
            n: quiet.length,
            stores: quiet.map(({ store }) => say(`store.${store}`)).join(", "),
          })}
        </p>
      )}
      <p className="quiet">{t("stops.drawn", { runs: forecast.runs })}</p>
    </section>
  );
}

function Strip({
  store,
  forecast,
  stops,
}: {
  readonly store: StoreForecast;
  readonly forecast: TripForecast;
  /** where each stop stands on the road, 0 to 1 */
  readonly stops: readonly number[];
}) {
  return (
    <figure className="phone-strip">
      <figcaption>
        <strong>{say(`store.${store.store}`)}</strong>
        <span className={hasTrouble(store) ? "phone-strip-trouble" : undefined}>{lineOf(store)}</span>
      </figcaption>
      <div className="phone-strip-plot" aria-hidden="true">
        <StripDrawing {...stripOf(store, forecast, "")} />
        <svg className="phone-strip-road" viewBox="0 0 1000 10" preserveAspectRatio="none" aria-hidden="true">
          {stops.map((share) => (
            <path key={share} d={`M${(share * 1000).toFixed(0)} 0V10`} />
          ))}
        </svg>
      </div>
      <details>
        <summary>{t("stops.why", { end: store.troubleAt, when: hasTrouble(store) ? "yes" : "no" })}</summary>
        {hasTrouble(store) && <p>{whenOf(store)}</p>}
        <ul className="stop-acts">
          {store.draws
            .filter(({ share }) => share >= LEAST_DRAW)
            .map(({ system, kind, share }) => (
              <li key={system}>
                {drawName(kind)}: {figureText({ value: share, unit: "share" })}
              </li>
            ))}
        </ul>
      </details>
    </figure>
  );
}

/** The same facts as the drawing. */
function lineOf(store: StoreForecast): string {
  const { trouble, troubleAt } = store;
  const left = Math.round(leastLeft(store) * 100);
  if (!hasTrouble(store)) {
    return t("stops.lasts", { end: troubleAt, pct: troubleAt === "empty" ? left : 100 - left });
  }
  const at = likelyAt(store);
  return t("stops.trouble", {
    n: inHundred(trouble.chance),
    end: troubleAt,
    at: at === null ? "" : dateText(at, "dayTime"),
  });
}

/** First trouble over all lives: the early tenth, the middle and the late tenth, as far as they meet it. */
function whenOf({ trouble }: StoreForecast): string {
  const { p10At, p50At, p90At } = trouble;
  const said = [
    ["stops.early", p10At],
    ["stops.half", p50At],
    ["stops.late", p90At],
  ] as const;
  const lines = said.flatMap(([id, at]) => (at === null ? [] : [t(id, { at: dateText(at, "dayTime") })]));
  return [...lines, ...(p90At === null ? [t("stops.rest")] : [])].join(" ");
}
