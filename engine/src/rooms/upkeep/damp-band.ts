import { BadInput } from "../../base/bad-input.ts";
import type { DampBand } from "./types.ts";

/**
 * What a damp meter's reading means: up to 15 % no concern, up to 20 recheck, up to 30 investigate, above it
 * strip and look (a club's guidance for wood-framed bodies; bonded and wood-free bodies read differently).
 * @param percent meter reading, 0 to 100
 */
export function dampBand(percent: number): DampBand {
  if (!(percent >= 0 && percent <= 100)) {
    throw new BadInput([{ path: "percent", expected: "a reading from 0 to 100 %" }]);
  }
  if (percent <= 15) return "none";
  if (percent <= 20) return "recheck";
  return percent <= 30 ? "investigate" : "strip";
}
