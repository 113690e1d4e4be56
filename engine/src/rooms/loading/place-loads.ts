import { figure } from "../../base/figure.ts";
import { LOAD_PLACES } from "../situation.ts";
import { loadPlaces } from "./load-places.ts";
import type { LoadInput, PlaceLoad } from "./types.ts";

/** What lies in each place that is used or has a label, kg; a fitted rack counts its own mass, as its label does. */
export function placeLoads({ vehicle, load }: LoadInput): readonly PlaceLoad[] {
  const places = loadPlaces(vehicle, load.placeLimitsKg);
  return LOAD_PLACES.flatMap((place) => {
    const items = load.items.filter((item) => item.place === place);
    const here = places.find((each) => each.place === place);
    const declared = load.placeLimitsKg?.[place];
    const limit =
      here?.limit ?? (declared === undefined ? null : figure(declared, "kg", "-", { place }, "declared"));
    if (items.length === 0 && limit === null) return [];
    // the label of a rack counts the rack itself: once, whether it is fitted or carried as a thing
    const own = items.some(({ kind }) => kind === "bikeRack") ? 0 : (here?.ownKg ?? 0);
    const massKg = items.reduce((sum, item) => sum + item.massKg, own);
    return [{ place, load: figure(massKg, "kg", "mass.total", { place }, "computed"), limit }];
  });
}
