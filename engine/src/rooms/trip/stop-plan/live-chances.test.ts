import fc from "fast-check";
import { expect, it } from "vitest";
import { planTrip } from "../plan-trip.ts";
import { mayHighlands, panelVan } from "../try-trips.ts";
import { applyDecisions } from "./apply-decisions.ts";
import { listDecisions } from "./decisions.ts";
import { TripLiver } from "./live-chances.ts";

const LIVES = 8;

/** A van with little of everything, and an induction hob behind an inverter: every count that is kept on the way moves. */
function planOfSmallVan() {
  const van = panelVan();
  const small: Readonly<Record<string, Record<string, unknown>>> = {
    battery: { chemistry: "agm", ratedAh: 60 },
    water: { litres: 45 },
    waste: { litres: 40 },
    hob: { energy: "electric" },
  };
  const systems = van.systems
    .map((system) => ({ ...system, spec: { ...system.spec, ...small[system.id] } }))
    .concat([{ id: "inverter", kind: "inverter", spec: { ratedW: 1500, runs: "everything" } }]);
  return planTrip({ ...mayHighlands(), vehicle: { ...van, systems }, runs: LIVES });
}

it("gives the same for a trip taken up at a stop as for one lived from its departure", () => {
  const plan = planOfSmallVan();
  const decisions = listDecisions(plan, true);
  const trips = fc.array(fc.subarray([...decisions]), { minLength: 2, maxLength: 6 });
  fc.assert(
    fc.property(trips, (chosen) => {
      const liver = new TripLiver(plan, LIVES);
      for (const some of chosen) {
        const trip = applyDecisions(plan.input.trip, decisions, new Set(some));
        expect(liver.live(trip)).toEqual(new TripLiver(plan, LIVES).live(trip));
      }
    }),
    { numRuns: 12, endOnFailure: true },
  );
}, 60_000);

it("takes a trip up where it begins to differ, and lives none twice", () => {
  const plan = planOfSmallVan();
  const decisions = listDecisions(plan, false);
  const liver = new TripLiver(plan, LIVES);
  const none = applyDecisions(plan.input.trip, decisions, new Set());
  const atLastStop = new Set(decisions.filter((one) => one.kind === "act" && one.stop === 3));
  expect(atLastStop.size).toBeGreaterThan(0);
  liver.live(none);
  expect(liver.runs).toBe(1);
  liver.live(applyDecisions(plan.input.trip, decisions, atLastStop));
  expect(liver.runs).toBeGreaterThan(1);
  expect(liver.runs).toBeLessThan(1.4);
  liver.live(none);
  expect(liver.evaluations).toBe(2);
});
