import type { ClimateNote, TripForecast } from "@setfair/engine";
import { FigureTap } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { Trip } from "./trip-draft.ts";

/** On what the weather of each place rests: its station or a forecast, its height, the clock. */
export function WeatherNotes({ forecast, trip }: { readonly forecast: TripForecast; readonly trip: Trip }) {
  const weak = forecast.notes.some((note) => note.weak && !note.forecastDays);
  return (
    <details className="weather-notes" open={weak}>
      <summary>{t("trip.weather.title")}</summary>
      <ul>
        {forecast.notes.map((note) => (
          <Note key={note.stop} note={note} trip={trip} />
        ))}
      </ul>
      <p className="quiet">{t("trip.weather.zone", { zone: forecast.timeZone })}</p>
    </details>
  );
}

function Note({ note, trip }: { readonly note: ClimateNote; readonly trip: Trip }) {
  const place = note.stop === "home" ? t("trip.depot") : (trip.stops[note.stop]?.place.name ?? "");
  const words = {
    place,
    station: note.nearestStation,
    memory: note.nearestFromMemory ? "yes" : "no",
    days: note.forecastDays ?? 0,
    source: trip.weather?.source ?? "",
  };
  return (
    <li>
      {t(note.forecastDays ? "trip.weather.forecast" : "trip.weather.normals", words)}{" "}
      <FigureTap figure={note.distance} label={t("trip.stationDistance")} /> {t("trip.weather.away")}
      {note.elevation !== undefined && (
        <>
          ; <FigureTap figure={note.elevation} label={t("trip.weather.elevation")} />{" "}
          {t("trip.weather.above", { assumed: note.elevation.basis === "default" ? "yes" : "no" })}
        </>
      )}
      {note.weak && <strong> · {t("trip.weather.weak")}</strong>}
    </li>
  );
}
