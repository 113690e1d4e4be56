import { drawOutline } from "@setfair/drawing";
import type { VehicleDescription, View } from "@setfair/engine";
import { has, say, t } from "../parts/words.ts";
import type { Aim } from "./viewfinder.tsx";

/** The fixed place for a whole side, out and back alike; else a close picture of one thing. */
export function aimAt(vehicle: VehicleDescription, view: View, isClose: boolean): Aim {
  if (isClose) return { outline: null, words: t("yard.aim.close") };
  const id = `yard.aim.stand.${view}`;
  return { outline: drawOutline(vehicle, view), words: has(id) ? say(id) : t("yard.aim.close") };
}
