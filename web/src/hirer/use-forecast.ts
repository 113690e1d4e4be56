import type { Reading, TripForecast, TripInput } from "@setfair/engine/trip";
import { useEffect, useMemo, useState } from "react";
import type { Guide } from "../offline/database.ts";
import { reforecastHere } from "./reforecast.ts";

/** The forecast of a room answer or by itself. */
function forecastOf(value: unknown): TripForecast | null {
  if (value === null || typeof value !== "object") return null;
  const inner = "result" in value ? (value as { result: unknown }).result : value;
  return inner !== null && typeof inner === "object" && "stores" in inner ? (inner as TripForecast) : null;
}

interface Again {
  readonly forecast: TripForecast | null;
  /** the trip is lived again */
  readonly running: boolean;
  /** in the engine's own words */
  readonly failed: string | null;
}

/** The forecast as the depot saw it, until there is a reading of the panel; then as this phone lives it again. */
export function useForecast(guide: Guide | null, readings: readonly Reading[]): Again {
  const first = useMemo(() => forecastOf(guide?.forecast), [guide]);
  const [again, setAgain] = useState<Again>({ forecast: null, running: false, failed: null });
  const input = (guide?.forecastInput ?? null) as TripInput | null;
  const key = JSON.stringify(readings);
  useEffect(() => {
    const list = JSON.parse(key) as readonly Reading[];
    if (input === null || list.length === 0) return;
    let current = true;
    setAgain((before) => ({ ...before, running: true, failed: null }));
    reforecastHere(input, list)
      .then((forecast) => current && setAgain({ forecast, running: false, failed: null }))
      .catch(
        (error: Error) =>
          current && setAgain((before) => ({ ...before, running: false, failed: error.message })),
      );
    return () => {
      current = false;
    };
  }, [input, key]);
  return { forecast: again.forecast ?? first, running: again.running, failed: again.failed };
}
