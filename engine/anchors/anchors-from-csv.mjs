// Writes anchors.generated.ts from anchors.csv: `node engine/anchors/anchors-from-csv.mjs`
import { readFileSync, writeFileSync } from "node:fs";

/** Splits one CSV line; quoted fields may hold commas. */
const split = (line) => [...line.matchAll(/("([^"]*)"|[^,]*)(,|$)/g)].slice(0, -1).map((m) => m[2] ?? m[1]);

export function anchorsModule(csv) {
  const [head, ...lines] = csv.trim().split("\n");
  const names = split(`${head},`);
  const rows = lines.map((line) => {
    const cells = split(`${line},`);
    const get = (name) => cells[names.indexOf(name)];
    const months = (key) =>
      Array.from({ length: 12 }, (_, m) => {
        const cell = get(`${key}_${String(m + 1).padStart(2, "0")}`);
        return cell === "" ? null : Number(cell);
      });
    return JSON.stringify({
      name: get("station"),
      country: get("country"),
      latitudeDeg: Number(get("lat")),
      longitudeDeg: Number(get("lon")),
      elevationM: Number(get("elev_m")),
      meanC: months("tmean"),
      minC: months("tmin"),
      maxC: months("tmax"),
      clearness: months("kt"),
      source: get("source"),
      sourceSolar: get("source_solar"),
      licence: get("licence"),
    });
  });
  return `// made by engine/anchors/anchors-from-csv.mjs from anchors.csv; do not edit
import type { ClimateStation } from "./station.ts";

export const CLIMATE_STATIONS: readonly ClimateStation[] = [
${rows.map((row) => `  ${row},`).join("\n")}
];
`;
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const at = (name) => new URL(name, import.meta.url);
  writeFileSync(
    at("../src/climate/anchors.generated.ts"),
    anchorsModule(readFileSync(at("anchors.csv"), "utf8")),
  );
}
