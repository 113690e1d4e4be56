import type { RoomAnswer, StoreForecast, TripForecast } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { FigureTap, FindingsList, Loading, RoadOfStops, type RoadStop } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import type { HirePageData, PartProps } from "../use-hire.ts";
import { ForecastStrip, hasTrouble, shownPct } from "./forecast-strip.tsx";

type Trip = NonNullable<HirePageData["trip"]>;

const minutesOf = (local: string): number => Date.parse(`${local}:00Z`) / 60_000;

/** The stops of the trip on the road, with what the plan does at each. */
function roadOf(trip: Trip): readonly RoadStop[] {
  const start = minutesOf(trip.depart);
  const length = Math.max(1, minutesOf(trip.return) - start);
  const home = t("trip.depot");
  return [
    { key: "out", name: home, share: 0, acts: null },
    ...trip.stops.map((stop, k) => ({
      key: `${k}.${stop.arrive}`,
      name: stop.place.name,
      share: (minutesOf(stop.arrive) - start) / length,
      acts: stop.acts.length === 0 ? null : stop.acts.map((act) => t(`act.${act}`)).join(", "),
    })),
    { key: "home", name: home, share: 1, acts: null },
  ];
}

const worstOf = (stores: readonly StoreForecast[]): StoreForecast | undefined =>
  [...stores].filter(hasTrouble).sort((a, b) => b.trouble.chance - a.trouble.chance)[0];

/** The answer first, in one sentence. */
function sentenceOf(forecast: TripForecast): string {
  const worst = worstOf(forecast.stores);
  if (worst === undefined) return t("trip.lasts", { pct: forecast.lastsShownPct });
  const when = worst.trouble.p50At ?? worst.trouble.p10At;
  return t("trip.trouble", {
    store: t(`store.${worst.store}`),
    end: worst.troubleAt,
    pct: shownPct(worst.trouble.chance),
    when: when === null ? "none" : dateText(when, "dayTime"),
    battery: worst.store === "battery12" ? "yes" : "no",
  });
}

function Notes({ forecast }: { readonly forecast: TripForecast }) {
  const far = forecast.notes[0];
  return (
    <p className="quiet last-foot">
      {t("trip.foot", { runs: forecast.runs })}{" "}
      {far !== undefined && (
        <>
          {t("trip.station", { station: far.nearestStation })}{" "}
          <FigureTap figure={far.distance} label={t("trip.stationDistance")} />
          {far.weak && t("trip.weak")}
        </>
      )}
    </p>
  );
}

/** Sentence, road, strips: the forecast of the trip as it is asked for. */
export default function WillItLast({ page, isShort = false }: PartProps & { readonly isShort?: boolean }) {
  const { id } = page.hire;
  const forecast = useQuery({
    queryKey: ["forecast", id, page.forecastHash],
    queryFn: () => take(client.GET("/api/hires/{id}/forecast", { params: { path: { id } } })),
    enabled: page.trip !== null && page.vehicle !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (page.trip === null || page.vehicle === null) {
    return (
      <section className="card">
        <h2>{t("trip.willItLast")}</h2>
        <p className="quiet">{t(page.vehicle === null ? "trip.needsVehicle" : "trip.needsTrip")}</p>
      </section>
    );
  }
  // the server sends the engine's own answer
  const answer = forecast.data?.result as RoomAnswer<TripForecast>["result"] | null | undefined;
  return (
    <section className="card" aria-labelledby="last-title">
      <h2 id="last-title">
        {t("trip.willItLast")} <span className="quiet">{t("trip.asAsked")}</span>
      </h2>
      {forecast.isPending && <Loading what={t("trip.living")} />}
      <FailureNote failure={forecast.error} onAgain={() => void forecast.refetch()} />
      {answer !== null && answer !== undefined && (
        <>
          <p className="last-sentence">{sentenceOf(answer)}</p>
          <div className="strips">
            <RoadOfStops stops={roadOf(page.trip)} />
            {answer.stores.map((store) => (
              <ForecastStrip key={store.store} store={store} forecast={answer} />
            ))}
          </div>
          <Notes forecast={answer} />
          {!isShort && forecast.data !== undefined && forecast.data.findings.length > 0 && (
            <FindingsList findings={forecast.data.findings} />
          )}
        </>
      )}
    </section>
  );
}
