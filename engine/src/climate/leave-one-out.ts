import { CLIMATE_STATIONS } from "./anchors.generated.ts";
import { climateNormal } from "./normal.ts";
import type { ClimateStation } from "./station.ts";

/** How well the model finds a station that it has not seen. */
export interface LeaveOneOut {
  readonly region: "north-west" | "Spain" | "elsewhere" | "above 800 m";
  readonly stations: number;
  /** root mean square error of the monthly mean temperature, K; null without scored rows */
  readonly meanK: number | null;
  /** relative, of global irradiation */
  readonly radiation: number | null;
}

const NORTH_WEST = new Set(["GB", "IE", "NL", "BE", "DK"]);

function region(station: ClimateStation): LeaveOneOut["region"] {
  if (station.country === "ES") return "Spain";
  if (station.elevationM > 800) return "above 800 m";
  const north = NORTH_WEST.has(station.country) || (station.country === "DE" && station.latitudeDeg > 51);
  return north ? "north-west" : "elsewhere";
}

/** Leaves out every station in turn; scored on values that are not from memory only. */
export function leaveOneOut(): readonly LeaveOneOut[] {
  const errors = new Map<string, { temperature: number[]; radiation: number[]; stations: number }>();
  for (const station of CLIMATE_STATIONS) {
    const at = errors.get(region(station)) ?? { temperature: [], radiation: [], stations: 0 };
    errors.set(region(station), at);
    const scored = {
      temperature: !station.source.includes("memory, unchecked"),
      radiation: !station.sourceSolar.includes("memory"),
    };
    if (scored.temperature || scored.radiation) at.stations++;
    for (let month = 0; month < 12; month++) {
      const found = climateNormal({ ...station, month: month + 1 }, station.name);
      const [meanC, clearness] = [station.meanC[month] ?? null, station.clearness[month] ?? null];
      if (scored.temperature && meanC !== null) at.temperature.push(found.meanC - meanC);
      if (scored.radiation && clearness !== null && found.clearness !== null)
        at.radiation.push(found.clearness / clearness - 1);
    }
  }
  return [...errors].map(([name, { temperature, radiation, stations }]) => ({
    region: name as LeaveOneOut["region"],
    stations,
    meanK: rootMeanSquare(temperature),
    radiation: rootMeanSquare(radiation),
  }));
}

function rootMeanSquare(errors: readonly number[]): number | null {
  if (errors.length === 0) return null;
  return Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
}
