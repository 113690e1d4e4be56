import { leaveOneOut } from "@setfair/engine";
import { type Line, lineOf } from "./line.ts";

/** Goals of the design: at most so many kelvin, so much of the radiation. */
const GOAL_K: Readonly<Record<string, number>> = { "north-west": 0.6, Spain: 1.5, elsewhere: 1 };
const GOAL_RADIATION = 8;

/** How well the climate model finds a station that it has not seen, by region. */
export async function benchClimate(): Promise<readonly Line[]> {
  const line = lineOf("climate, each station left out in turn (root mean square error)");
  return leaveOneOut().flatMap(({ region, stations, meanK, radiation }) => {
    const goal = GOAL_K[region];
    return [
      line(
        `${region}, monthly mean temperature`,
        meanK,
        "K",
        `${stations} stations${goal === undefined ? "" : `, goal at most ${goal} K`}`,
      ),
      line(
        `${region}, global irradiation`,
        radiation === null ? null : radiation * 100,
        "%",
        region === "above 800 m" ? "no goal set" : `goal at most ${GOAL_RADIATION} %`,
      ),
    ];
  });
}
