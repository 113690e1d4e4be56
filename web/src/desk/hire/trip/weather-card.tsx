import { type Trip as EngineTrip, listTripDays, type TripDay } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, NumberField, TextField } from "../../../parts/index.ts";
import { dateText, figureText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import type { Trip } from "./trip-draft.ts";

/** Weather that somebody forecast for days of this trip: fetched, or entered by hand, or none. */
export function WeatherCard({ page, trip }: PartProps & { readonly trip: Trip }) {
  const { id } = page.hire;
  const [isOpen, setOpen] = useState(false);
  const service = useQuery({
    queryKey: ["weather-service"],
    queryFn: () => take(client.GET("/api/weather-service")),
  });
  const fetchIt = useHireAct(() =>
    take(client.POST("/api/hires/{id}/weather", { params: { path: { id } } })),
  );
  const keep = useHireAct(
    (weather: GivenWeather | null) => {
      const { weather: _, ...rest } = trip;
      const body = weather === null ? rest : { ...rest, weather };
      const params = { path: { id }, query: { basedOn: String(page.versions.trip) } };
      return keepPart(id, () => take(client.PUT("/api/hires/{id}/trip", { params, body: body as Trip })));
    },
    () => setOpen(false),
  );
  const { weather } = trip;
  const mayFetch = service.data !== undefined && service.data.credit !== null && service.data.isOn;
  return (
    <section className="card" aria-labelledby="weather-title">
      <h2 id="weather-title">{t("weather.title")}</h2>
      {weather === undefined ? <p>{t("weather.none")}</p> : <Given weather={weather} trip={trip} />}
      <FailureNote failure={fetchIt.error ?? keep.error} />
      {isOpen ? (
        <ByHand trip={trip} isSending={keep.isPending} onKeep={keep.mutate} onDrop={() => setOpen(false)} />
      ) : (
        <div className="row weather-acts">
          {mayFetch && (
            <Button onPress={() => fetchIt.mutate()} isPending={fetchIt.isPending}>
              {t(fetchIt.isPending ? "weather.fetching" : "weather.fetch")}
            </Button>
          )}
          <Button onPress={() => setOpen(true)}>{t("weather.enter")}</Button>
          {weather !== undefined && (
            <Button look="quiet" onPress={() => keep.mutate(null)} isPending={keep.isPending}>
              {t("weather.drop")}
            </Button>
          )}
        </div>
      )}
      {service.data?.credit === null && <p className="quiet last-foot">{t("weather.noService")}</p>}
      {service.data?.credit && !service.data.isOn && <p className="quiet last-foot">{t("weather.off")}</p>}
    </section>
  );
}

type GivenWeather = NonNullable<Trip["weather"]>;

/** Days of a trip that the server has checked: the engine asks for the very same shape. */
const daysOf = (trip: Trip) => listTripDays(trip as EngineTrip);

const placeOf = (trip: Trip, { stop }: TripDay): string =>
  stop === "home" ? t("trip.depot") : (trip.stops[stop]?.place.name ?? "");

function Given({ weather, trip }: { readonly weather: GivenWeather; readonly trip: Trip }) {
  const days = daysOf(trip);
  return (
    <>
      <p>
        {t("weather.by", {
          source: weather.source,
          issued: dateText(weather.issued, "dayTime"),
          n: weather.days.length,
        })}
      </p>
      <ul className="weather-days">
        {weather.days.map((day) => {
          const at = days.find(({ date }) => date === day.date);
          return (
            <li key={`${day.date}.${day.latitudeDeg}`}>
              <strong>{dateText(day.date, "day")}</strong> {at !== undefined && placeOf(trip, at)}{" "}
              {t("weather.range", {
                low: figureText({ value: day.minC, unit: "°C" }),
                high: figureText({ value: day.maxC, unit: "°C" }),
              })}
              {day.sunKwhM2 !== undefined &&
                t("weather.sun", { sun: figureText({ value: day.sunKwhM2, unit: "kWh/m²" }) })}
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** Now as civil time, from this device's clock. */
const nowLocal = (): string => {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
};

interface Typed {
  readonly minC: number | null;
  readonly maxC: number | null;
}

function ByHand({
  trip,
  isSending,
  onKeep,
  onDrop,
}: {
  readonly trip: Trip;
  readonly isSending: boolean;
  readonly onKeep: (weather: GivenWeather) => void;
  readonly onDrop: () => void;
}) {
  const days = daysOf(trip);
  const [source, setSource] = useState(trip.weather?.source ?? "");
  const [typed, setTyped] = useState<readonly Typed[]>(() =>
    days.map(({ date }) => {
      const had = trip.weather?.days.find((day) => day.date === date);
      return { minC: had?.minC ?? null, maxC: had?.maxC ?? null };
    }),
  );
  const set = (k: number, part: Partial<Typed>) =>
    setTyped(typed.map((one, at) => (at === k ? { ...one, ...part } : one)));
  const filled = days.flatMap(({ date, latitudeDeg, longitudeDeg }, k) => {
    const { minC, maxC } = typed[k]!;
    return minC === null || maxC === null ? [] : [{ date, latitudeDeg, longitudeDeg, minC, maxC }];
  });
  const isWrong = ({ minC, maxC }: Typed) => minC !== null && maxC !== null && maxC < minC;
  const isReady = filled.length > 0 && !typed.some(isWrong);
  return (
    <div className="stack">
      <TextField
        label={t("weather.source")}
        note={t("weather.sourceNote")}
        value={source}
        onChange={setSource}
      />
      <ol className="weather-rows">
        {days.map((day, k) => (
          <li key={day.date}>
            <span>
              <strong>{dateText(day.date, "day")}</strong> {placeOf(trip, day)}
            </span>
            <NumberField
              label={t("weather.min")}
              unit="°C"
              min={-45}
              max={45}
              value={typed[k]!.minC}
              onChange={(minC) => set(k, { minC })}
            />
            <NumberField
              label={t("weather.max")}
              unit="°C"
              min={-45}
              max={50}
              value={typed[k]!.maxC}
              onChange={(maxC) => set(k, { maxC })}
              error={isWrong(typed[k]!) ? t("weather.maxBelowMin") : undefined}
            />
          </li>
        ))}
      </ol>
      <div className="row">
        <Button
          look="main"
          isDisabled={!isReady}
          isPending={isSending}
          onPress={() =>
            onKeep({ source: source.trim() || t("weather.byDesk"), issued: nowLocal(), days: filled })
          }
        >
          {t("weather.keep")}
        </Button>
        <Button look="quiet" onPress={onDrop}>
          {t("desk.dropChanges")}
        </Button>
      </div>
    </div>
  );
}
