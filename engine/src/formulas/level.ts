/** Slope and levelling. */
import { between } from "./args.ts";
import { entry } from "./entry.ts";

/** Height under the low wheels, mm, for a slope over a track or wheelbase. */
export function blockHeightMm(slopeDeg: number, spanMm: number): number {
  return spanMm * Math.sin((slopeDeg * Math.PI) / 180);
}

export const LEVEL_FORMULAS = [
  entry(
    "level.blockHeight",
    "mm",
    "trigonometry",
    "span × sin slope",
    { slopeDeg: between(-45, 45), spanMm: between(0, 20_000) },
    (a) => blockHeightMm(a.slopeDeg, a.spanMm),
  ),
  entry(
    "level.gradient",
    "%",
    "trigonometry",
    "100 tan slope",
    { slopeDeg: between(-45, 45) },
    (a) => 100 * Math.tan((a.slopeDeg * Math.PI) / 180),
  ),
];
