import { expect, it } from "vitest";
import { planTrip } from "../plan-trip.ts";
import { mayHighlands, panelVan, stopAt } from "../try-trips.ts";
import type { TripInput } from "../types.ts";
import { applyDecisions } from "./apply-decisions.ts";
import { listDecisions } from "./decisions.ts";
import { dropWhatCanGo } from "./least-change.ts";
import { TripLiver } from "./live-chances.ts";
import { planStops } from "./plan-stops.ts";
import { totalOf } from "./search-plan.ts";

const LIVES = 16;

/** Nights in the cold, at stops that offer nothing at all. */
function bareStops(nights: readonly number[], month: string): TripInput {
  let day = 8;
  const stops = nights.map((count) => {
    const from = `2026-${month}-${String(day).padStart(2, "0")}`;
    day += count;
    return stopAt(`${from}T16:00`, `2026-${month}-${String(day).padStart(2, "0")}T10:00`, false);
  });
  const trip = {
    ...mayHighlands().trip,
    depart: `2026-${month}-08T12:00`,
    return: `2026-${month}-${String(day).padStart(2, "0")}T15:00`,
    stops,
    departWith: {},
  };
  return { ...mayHighlands(), vehicle: panelVan(), trip, runs: LIVES };
}

it("asks for no more of other pitches than pays, and for none that a single one could stand in for", () => {
  for (const [nights, month] of [
    [[5, 3], "12"],
    [[4, 4], "05"],
    [[7], "01"],
  ] as const) {
    const plan = planTrip(bareStops(nights, month));
    const liver = new TripLiver(plan, LIVES);
    const energy = listDecisions(plan, true).filter(({ group }) => group === "energy");
    const { trip } = plan.input;
    const chosen = dropWhatCanGo(liver, trip, energy, { most: 1000, weight: 1 });
    const lived = (some: typeof chosen) =>
      totalOf(liver, { chosen: some, trip: applyDecisions(trip, energy, some) });
    let best = Number.POSITIVE_INFINITY;
    for (let mask = 0; mask < 2 ** energy.length; mask++)
      best = Math.min(best, lived(new Set(energy.filter((_, k) => mask & (1 << k)))));
    expect(lived(chosen)).toBeLessThanOrEqual(best * 1.02 + 1e-6);
  }
}, 60_000);

it("asks for a drain where the waste tank is too small for the nights without one", () => {
  const input = bareStops([3, 1], "06");
  const systems = panelVan().systems.map((one) =>
    one.id === "waste" ? { ...one, spec: { litres: 35 } } : one,
  );
  const { result } = planStops({ ...input, vehicle: { ...panelVan(), systems }, runs: 40 });
  expect(result.chances.find(({ store }) => store === "wasteWater")!.withPlan).toBeGreaterThan(0.5);
  expect(result.otherPitches.flatMap(({ needs }) => needs)).toContain("wasteDrain");
});

it("names a post at every stop that the battery does not outlast, and nothing that helps nobody", () => {
  const { result } = planStops({ ...bareStops([5, 5], "12"), runs: 40 });
  expect(result.otherPitches.map(({ stop, needs }) => [stop, needs.includes("post")])).toEqual([
    [0, true],
    [1, true],
  ]);
  expect(result.otherPitches.flatMap(({ needs }) => needs)).not.toContain("lpgExchange");
});
