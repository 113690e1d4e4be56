import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import type { LoadItem } from "../situation.ts";
import { checkLoad } from "./check-load.ts";
import { loadPlaces, seatRows } from "./load-places.ts";
import type { LoadInput, LoadResult } from "./types.ts";

const rackVehicle = (maxKg = 80) =>
  overcab({
    systems: [
      ...overcab().systems,
      {
        id: "bikeRack",
        kind: "bikeRack",
        spec: { bikes: 4, maxKg, massKg: 18, behindFrontAxleM: 6.3, massListed: true },
      },
    ],
  });
const thing = (kind: LoadItem["kind"], massKg: number, change: Partial<LoadItem> = {}): LoadItem => ({
  id: `${kind}${massKg}`,
  name: `${kind}`,
  massKg,
  behindFrontAxleM: 5.6,
  removable: true,
  movable: true,
  kind,
  place: "garage",
  ...change,
});
const input = (items: readonly LoadItem[], change: Partial<LoadInput["load"]> = {}): LoadInput => ({
  vehicle: rackVehicle(),
  party: {
    travellers: [
      { id: "a", kind: "adult", massKg: 85 },
      { id: "b", kind: "adult", massKg: 70 },
    ],
    dogs: 0,
    experience: "some",
  },
  load: { seats: [], items: [...items], waterLitres: 20, fuelShare: 0.9, lpgCylinders: 1, ...change },
});
const stepsOf = (given: LoadInput) => checkLoad(given).result.leastChange.steps;

/** The load with the change made, checked again by the room. */
function done(given: LoadInput, { leastChange }: LoadResult): LoadInput {
  let load = given.load;
  for (const step of leastChange.steps) {
    const items = load.items;
    const others = (id: string) => items.filter((item) => `item.${item.id}` !== id);
    const it = "id" in step ? items.find((item) => `item.${item.id}` === step.id) : undefined;
    if (step.kind === "lessWater") load = { ...load, waterLitres: step.toLitres };
    else if (step.kind === "fewerCylinders") load = { ...load, lpgCylinders: step.to };
    else if (step.kind === "leaveItem") load = { ...load, items: others(step.id) };
    else if (step.kind === "lessOfItem")
      load = { ...load, items: [...others(step.id), { ...it!, massKg: step.leftKg }] };
    else {
      const moved = { ...it!, place: step.to, behindFrontAxleM: step.behindFrontAxleM };
      load = { ...load, items: [...others(step.id), moved] };
    }
  }
  return { ...given, load };
}

describe("the least change to a load", () => {
  it("stows a heavy thing further forward when only the rear axle is over", () => {
    const heavy = input([
      thing("luggage", 110, { behindFrontAxleM: 6 }),
      thing("other", 90, { behindFrontAxleM: 6, removable: false, movable: false }),
      thing("luggage", 75, { behindFrontAxleM: 6 }),
      thing("food", 45, { behindFrontAxleM: 6 }),
    ]);
    expect(checkLoad(heavy).result.total.margin.value).toBeGreaterThan(0);
    expect(checkLoad(heavy).result.rear.margin.value).toBeLessThan(0);
    expect(stepsOf(heavy)).toMatchObject([{ kind: "moveItem", from: "garage", byKg: 0 }]);
  });

  it("takes less luggage rather than all of it, in steps of five kilograms", () => {
    const over = input([
      thing("luggage", 140, { movable: false, place: "floor", behindFrontAxleM: 1 }),
      thing("luggage", 230, { behindFrontAxleM: 0.5, movable: false }),
    ]);
    const { result } = checkLoad(over);
    expect(result.leastChange.outcome).toBe("found");
    for (const step of result.leastChange.steps)
      if (step.kind === "lessOfItem") expect(step.byKg % 5).toBe(0);
    expect(result.leastChange.steps.map(({ kind }) => kind)).toContain("lessOfItem");
  });

  it("takes the rack off only when no bicycle is left on it", () => {
    const bikes = [1, 2, 3].map((k) =>
      thing("bike", 20, { id: `bike${k}`, place: "rack", behindFrontAxleM: 6.3, movable: false }),
    );
    const rack = thing("bikeRack", 18, { place: "rack", behindFrontAxleM: 6.3, movable: false });
    const stuck = [thing("other", 290, { removable: false, movable: false, behindFrontAxleM: 3 })];
    const steps = stepsOf(input([...bikes, rack, ...stuck], { waterLitres: 20 }));
    const left = steps.map((step) => ("id" in step ? step.id : step.kind));
    if (left.includes("item.bikeRack18")) expect(left).toHaveLength(4);
    expect(left.length).toBeGreaterThan(0);
  });

  it("holds the bicycles against the label of the rack, its own mass counted", () => {
    const bikes = [1, 2, 3].map((k) =>
      thing("bike", 22, { id: `bike${k}`, place: "rack", behindFrontAxleM: 6.3 }),
    );
    const { result, findings } = checkLoad(input(bikes));
    expect(result.places.find(({ place }) => place === "rack")).toMatchObject({
      load: { value: 84 },
      limit: { value: 80 },
    });
    expect(findings.map(({ code }) => code)).toContain("masses.overPlace");
    expect(result.leastChange.steps).toMatchObject([{ kind: "moveItem", from: "rack", to: "garage" }]);
  });

  it("never leaves a child seat, and never a person", () => {
    const seat = thing("childSeat", 12, { place: "floor", movable: false });
    const heavy = thing("other", 500, { removable: false, movable: false, behindFrontAxleM: 1 });
    const { leastChange, counterOffer } = checkLoad(input([seat, heavy])).result;
    expect(leastChange.outcome).toBe("none");
    expect(counterOffer?.payloadNeeded.value).toBeGreaterThan(440);
  });

  it("is looked for through every combination that matters for a large party, quickly enough for a screen", () => {
    const bags = [44, 38, 31].map((kg, k) =>
      thing("luggage", kg, { id: `bag${k}`, behindFrontAxleM: 5 - k * 0.4 }),
    );
    const bikes = [22, 18, 15, 11].map((kg, k) =>
      thing("bike", kg, { id: `bike${k}`, place: "rack", behindFrontAxleM: 6.3 }),
    );
    const more = [60, 40, 28, 25, 12].map((kg, k) =>
      thing(k === 1 ? "food" : "extra", kg, { id: `x${k}`, place: "floor", behindFrontAxleM: 2 + k * 0.4 }),
    );
    const began = performance.now();
    const { leastChange } = checkLoad(
      input([...bags, ...bikes, ...more], { waterLitres: 120, lpgCylinders: 2 }),
    ).result;
    expect(leastChange).toMatchObject({ outcome: "found", complete: true });
    expect(performance.now() - began).toBeLessThan(3000);
  });

  it("makes every load legal that it says it makes legal, with the axles that it states", () => {
    const items = fc.array(
      fc.record({
        kind: fc.constantFrom<NonNullable<LoadItem["kind"]>>("luggage", "food", "bike", "other"),
        massKg: fc.integer({ min: 5, max: 120 }),
        removable: fc.boolean(),
        movable: fc.boolean(),
      }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(items, fc.integer({ min: 0, max: 120 }), (list, waterLitres) => {
        const given = input(
          list.map(({ kind, massKg, ...rest }, k) =>
            thing(kind, massKg, {
              ...rest,
              id: `t${k}`,
              ...(kind === "bike" ? { place: "rack" as const, behindFrontAxleM: 6.3 } : {}),
            }),
          ),
          { waterLitres, lpgCylinders: 2 },
        );
        const { result } = checkLoad(given);
        if (result.leastChange.outcome !== "found") return;
        const again = checkLoad(done(given, result)).result;
        expect(again.legal).toBe(true);
        expect(again.total.load.value).toBeCloseTo(result.leastChange.after.totalKg, 6);
        expect(again.rear.load.value).toBeCloseTo(result.leastChange.after.rearKg, 6);
      }),
      { numRuns: 60 },
    );
  });
});

describe("the places of a vehicle", () => {
  it("lie along it, the rack behind the body with the limit of its label", () => {
    const places = loadPlaces(rackVehicle());
    expect(places.map(({ place }) => place)).toEqual([
      "cab",
      "overCab",
      "floor",
      "lockers",
      "roof",
      "underBed",
      "garage",
      "rack",
    ]);
    expect(places.at(-1)).toMatchObject({ behindFrontAxleM: 6.3, limit: { value: 80 } });
  });

  it("lie where the dimensions put them, in metres behind the front axle", () => {
    const at = (vehicle: VehicleDescription) =>
      Object.fromEntries(loadPlaces(vehicle).map((each) => [each.place, each.behindFrontAxleM]));
    // wheelbase 4.0 m, rear overhang 2.1 m, front seats at 0.5 m
    expect(at(rackVehicle())).toMatchObject({
      cab: 0.9,
      overCab: 0.5,
      floor: 2,
      lockers: 2.8,
      roof: 2.4,
      garage: 5.6,
      rack: 6.3,
    });
    const bare = panelVan({ systems: [] });
    // wheelbase 3.8 m, rear overhang 1.2 m, nothing described: the bed a tenth behind the rear axle, no garage
    expect(at(bare)).toEqual({ cab: 0.9, floor: 1.9, lockers: 2.66, roof: 2.28, underBed: 4.18 });
    const carried = loadPlaces(bare, {}, [{ kind: "bikeRack" }]).at(-1);
    expect(carried).toMatchObject({ place: "rack", behindFrontAxleM: 5.2, limit: null, ownKg: 0 });
  });

  it("carry what their label says, and what the load plan says before that", () => {
    const limitOf = (limits: Parameters<typeof loadPlaces>[1], place: string) =>
      loadPlaces(rackVehicle(), limits).find((each) => each.place === place)?.limit?.value ?? null;
    expect(limitOf({}, "rack")).toBe(80);
    expect(limitOf({ rack: 60 }, "rack")).toBe(60);
    expect(limitOf({ garage: 150 }, "garage")).toBe(150);
    expect(limitOf({}, "floor")).toBeNull();
  });

  it("seat as many as there are belts", () => {
    expect(seatRows(overcab()).reduce((sum, { seats }) => sum + seats, 0)).toBe(6);
    const oneBelt = overcab();
    const systems = oneBelt.systems.map((system) =>
      system.kind === "seatsBelts" ? { ...system, spec: { ...system.spec, beltedSeats: 1 } } : system,
    );
    expect(seatRows({ ...oneBelt, systems }).map(({ place }) => place)).toEqual(["driver"]);
  });
});
