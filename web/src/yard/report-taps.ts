/** `npm run report:taps`: touches and minutes of a walk-round out and back, for each vehicle of the examples. */
import { readdirSync, readFileSync } from "node:fs";
import { composeWalkRound, type VehicleDescription } from "@setfair/engine";
import { countTaps, minutesOf, SECONDS } from "./count-taps.ts";

const folder = new URL("../../../examples/vehicles/", import.meta.url);
const head = ["vehicle", "way", "taps", "photos", "readings", "counts", "looks", "minutes"];
const rows = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .flatMap((name) => {
    const vehicle = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as VehicleDescription;
    return (["out", "back"] as const).map((when) => {
      const count = countTaps(composeWalkRound(vehicle, when));
      const { taps, photographs, readings, counts, looks } = count;
      const numbers = [taps, photographs, readings, counts, looks].map(String);
      return [name.replace(".json", ""), when, ...numbers, minutesOf(count).toFixed(1)];
    });
  });
const line = (cells: readonly string[]) =>
  cells.map((cell, k) => (k < 2 ? cell.padEnd(8) : cell.padStart(9))).join("");
const assumed = Object.entries(SECONDS).map(([act, seconds]) => `${act} ${seconds} s`);
process.stdout.write(
  `${[line(head), ...rows.map(line), "", `Acts are counted from the screens; nothing is found. Minutes are assumed, not timed: ${assumed.join(", ")}.`].join("\n")}\n`,
);
