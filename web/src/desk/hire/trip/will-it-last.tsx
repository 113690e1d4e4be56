import type { Finding, RoomAnswer, StoreForecast, TripForecast } from "@setfair/engine";
import { shownChancePct, type TripTelling, tellTrip } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useEffect } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { FigureTap, FindingsList, Loading, RoadOfStops } from "../../../parts/index.ts";
import { likelyAt } from "../../../parts/strip-of-store.ts";
import { dateText, figureText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import type { HirePageData, PartProps } from "../use-hire.ts";
import { ForecastStrip } from "./forecast-strip.tsx";
import { roadOf } from "./road-of-trip.ts";
import { WeatherNotes } from "./weather-notes.tsx";
import "./trip.css";

/** What no store shows: a hob that nothing feeds. */
function mealsOf(findings: readonly Finding[]): string | null {
  const share = findings.find(
    ({ code, severity }) => code === "trip.withoutMeals" && severity === "condition",
  )?.facts.share;
  return typeof share === "object" ? t("trip.butMeals", { share: figureText(share) }) : null;
}

/** The answer to "will it last?" in plain words, then what gives first, and what else is news. */
function sentenceOf({ news }: TripTelling, { lastsShownPct }: TripForecast): string {
  const [worst, ...others] = news;
  const answer = t("trip.answer", {
    chance: lastsShownPct < 50 ? "likelyNot" : worst === undefined ? "should" : "maybeNot",
  });
  if (worst === undefined) return `${answer} ${t("trip.lastsAll", { pct: lastsShownPct })}`;
  const when = likelyAt(worst);
  const first = t("trip.trouble", {
    store: t(`store.${worst.store}`),
    end: worst.troubleAt,
    pct: shownChancePct(worst.trouble.chance),
    when: when === null ? "none" : dateText(when, "dayTime"),
    battery: worst.store === "battery12" ? "yes" : "no",
  });
  if (others.length === 0) return `${answer} ${first}`;
  const stores = others.map(({ store, trouble }) =>
    t("trip.alsoOne", { store: t(`store.${store}`), pct: shownChancePct(trouble.chance) }),
  );
  return `${answer} ${first} ${t("trip.alsoTrouble", { stores: stores.join(", ") })}`;
}

/** Stores that last with room to spare, in one line. */
function Quiet({ stores }: { readonly stores: readonly StoreForecast[] }) {
  if (stores.length === 0) return null;
  const names = stores.map(({ store }) => t(`store.${store}`));
  return <p className="quiet last-foot">{t("trip.quiet", { n: names.length, stores: names.join(", ") })}</p>;
}

/** How far it goes with what is aboard, down to the reserve. */
function Ranges({ forecast }: { readonly forecast: TripForecast }) {
  if (forecast.ranges === undefined || forecast.ranges.length === 0) return null;
  return (
    <p className="quiet last-foot">
      {forecast.ranges.map(({ store, atDeparture }, k) => (
        <span key={store}>
          {k > 0 && " · "}
          {t("trip.rangeOf", { store: t(`store.${store}`) })}{" "}
          <FigureTap figure={atDeparture} label={t("trip.rangeOf", { store: t(`store.${store}`) })} />
        </span>
      ))}{" "}
      {t("trip.rangeFor")} <FigureTap figure={forecast.ranges[0]!.road} label={t("trip.rangeRoad")} />
    </p>
  );
}

/**
 * The forecast as the server keeps it; asked for once while nothing it rests on changes. Where something changed between
 * the page's answer and this one (rates were learnt, the trip was set elsewhere) neither is shown beside the other: the
 * page is asked for again first, so that its findings and these strips come of the same forecast.
 */
export function useForecast(page: HirePageData) {
  const { id } = page.hire;
  const hash = page.forecastHash;
  const asked = useQuery({
    queryKey: ["forecast", id, hash],
    queryFn: () => take(client.GET("/api/hires/{id}/forecast", { params: { path: { id } } })),
    enabled: page.trip !== null && page.vehicle !== null,
    staleTime: ({ state }) => (state.data?.inputHash === hash ? Number.POSITIVE_INFINITY : 0),
  });
  const isOfAnother = asked.data !== undefined && asked.data.inputHash !== hash;
  useEffect(() => {
    if (isOfAnother) void queries.invalidateQueries({ queryKey: ["hire", id] });
  }, [isOfAnother, id]);
  return isOfAnother
    ? { ...asked, data: undefined, isPending: true }
    : { ...asked, data: asked.data, isPending: asked.isPending };
}

/** Sentence, road, strips: the forecast of the trip as it is asked for. */
export default function WillItLast({ page, isShort = false }: PartProps & { readonly isShort?: boolean }) {
  const forecast = useForecast(page);
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
  const telling = answer ? tellTrip(answer) : null;
  const findings = (forecast.data?.findings ?? []) as readonly Finding[];
  return (
    <section className="card" aria-labelledby="last-title">
      <h2 id="last-title">
        {t("trip.willItLast")} <span className="quiet">{t("trip.asAsked")}</span>
      </h2>
      {forecast.isPending && <Loading what={t("trip.living")} />}
      <FailureNote failure={forecast.error} onAgain={() => void forecast.refetch()} />
      {answer !== null && answer !== undefined && telling !== null && (
        <>
          <p className="last-sentence">
            {sentenceOf(telling, answer)} {mealsOf(findings)}
          </p>
          <div className="strips">
            <RoadOfStops stops={roadOf(page.trip, answer)} />
            {telling.shown.map((store) => (
              <ForecastStrip key={store.store} store={store} forecast={answer} findings={findings} />
            ))}
          </div>
          <Quiet stores={telling.quiet} />
          <Ranges forecast={answer} />
          <p className="quiet last-foot">
            {t("trip.foot", { runs: answer.runs })} {t("trip.reach.legend")}
          </p>
          <WeatherNotes forecast={answer} trip={page.trip} />
          {!isShort && forecast.data !== undefined && forecast.data.findings.length > 0 && (
            <FindingsList findings={forecast.data.findings} />
          )}
        </>
      )}
    </section>
  );
}
