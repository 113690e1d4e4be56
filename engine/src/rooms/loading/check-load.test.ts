import { describe, expect, it } from "vitest";
import { BadInput } from "../../base/bad-input.ts";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import { checkLoad } from "./check-load.ts";
import type { LoadInput } from "./types.ts";

type Items = LoadInput["load"]["items"];
const item = (id: string, massKg: number, behindFrontAxleM: number, removable = true): Items[number] => ({
  id,
  name: id,
  massKg,
  behindFrontAxleM,
  removable,
});

/** Two adults, seven nights: the load of the first invented scenario. */
const couple = (change: Partial<LoadInput["load"]> = {}, vehicle = panelVan()): LoadInput => ({
  vehicle,
  party: {
    travellers: [
      { id: "a", kind: "adult", massKg: 75 },
      { id: "b", kind: "adult", massKg: 68 },
    ],
    dogs: 0,
    experience: "first",
  },
  driverId: "a",
  load: {
    seats: [],
    items: [item("luggage", 50, 3.6), item("food", 25, 2.8)],
    waterLitres: 95,
    fuelShare: 0.9,
    lpgCylinders: 2,
    ...change,
  },
});

/** Family of six with four bicycles: the axle vector of the second invented scenario. */
const family = (
  change: Partial<LoadInput> = {},
  items: Items = [
    item("bicycles and rack", 78, 6.3),
    item("luggage", 90, 5.0, false),
    item("food", 40, 3.0, false),
    item("bedding", 60, 3.5, false),
    item("awning", 28, 2.8, false),
  ],
): LoadInput => ({
  vehicle: overcab(),
  party: {
    travellers: [
      { id: "a", kind: "adult", massKg: 85 },
      { id: "b", kind: "adult", massKg: 70 },
      ...[45, 38, 30, 25].map((massKg, k) => ({ id: `c${k}`, kind: "child" as const, massKg })),
    ],
    dogs: 0,
    experience: "first",
  },
  driverId: "a",
  load: {
    seats: [
      { travellerId: "a", behindFrontAxleM: 0.5 },
      { travellerId: "b", behindFrontAxleM: 0.5 },
      ...[0, 1, 2, 3].map((k) => ({ travellerId: `c${k}`, behindFrontAxleM: 2.0 })),
    ],
    items,
    waterLitres: 120,
    fuelShare: 0.9,
    lpgCylinders: 2,
  },
  ...change,
});
const codes = (input: LoadInput) => checkLoad(input).findings.map(({ code }) => code);

describe("the load of two adults in the panel van", () => {
  it("comes to 3,227 kg and goes", () => {
    const { result, findings } = checkLoad(couple());
    expect(result.total.load.value).toBeCloseTo(3227, 9);
    expect(result.total.margin.value).toBeCloseTo(273, 9);
    expect(result).toMatchObject({
      legal: true,
      needsWeighbridge: false,
      leastChange: { outcome: "notNeeded" },
    });
    expect(findings).toEqual([]);
  });

  it("weighs the fuel beyond what the mass in running order counts: a tenth of 90 L of diesel is 7.56 kg", () => {
    expect(checkLoad(couple({ fuelShare: 1 })).result.total.load.value).toBeCloseTo(3227 + 7.56, 9);
    expect(checkLoad(couple({ fuelShare: 0.4 })).result.total.load.value).toBeCloseTo(3227 - 37.8, 9);
  });

  it("puts every kilogram on an axle", () => {
    const { total, front, rear } = checkLoad(couple()).result;
    expect(front.load.value + rear.load.value).toBeCloseTo(total.load.value, 9);
  });

  it("says that usual masses were taken where nobody told any", () => {
    const { massKg: _told, ...untold } = couple().party.travellers[1]!;
    const input = {
      ...couple(),
      party: { ...couple().party, travellers: [couple().party.travellers[0]!, untold] },
    };
    expect(checkLoad(input).findings).toMatchObject([{ code: "masses.defaultsUsed", facts: { count: 1 } }]);
  });
});

describe("the load of six with bicycles in the overcab", () => {
  it("is 216 kg over the plate and 29 kg over the rear axle, within the front axle", () => {
    const { result } = checkLoad(family());
    expect(result.total.load.value).toBeCloseTo(3716, 9);
    expect(Math.round(result.rear.load.value)).toBe(2149);
    expect(Math.round(result.front.load.value)).toBe(1567);
    expect(Math.round(-result.rear.margin.value)).toBe(29);
    expect(result.payloadUsed.value).toBeCloseTo(656, 9);
    expect(result.payload.value).toBe(440);
    expect(codes(family())).toEqual(["masses.overMam", "masses.overRearAxle"]);
    expect(checkLoad(family()).findings[0]).toMatchObject({
      severity: "refuse",
      basis: "law",
      facts: { over: { value: 216, unit: "kg" } },
    });
  });

  it("has no least change while the awning stays: 16 kg would be left over", () => {
    expect(checkLoad(family()).result.leastChange).toMatchObject({
      outcome: "none",
      steps: [],
      complete: true,
    });
    expect(checkLoad(family()).findings[0]?.mends.map(({ code }) => code)).toEqual([
      "masses.secondVehicle",
      "masses.payloadNeeded",
    ]);
    expect(checkLoad(family()).result.counterOffer).toMatchObject({
      short: { value: 16 },
      payloadNeeded: { value: 656 },
      vehiclesLikeThis: { value: 2 },
    });
  });

  it("becomes legal without bicycles, awning, second cylinder and 90 L of water, the least in steps of ten, and then wants weighing", () => {
    const items = family().load.items.map((each) =>
      each.id === "awning" ? { ...each, removable: true } : each,
    );
    const { result, findings } = checkLoad(family({}, items));
    expect(result.leastChange).toMatchObject({ outcome: "found", complete: true });
    expect(result.leastChange.steps.map((step) => step.kind)).toEqual([
      "leaveItem",
      "leaveItem",
      "lessWater",
      "fewerCylinders",
    ]);
    expect(result.leastChange.steps[2]).toMatchObject({ fromLitres: 120, toLitres: 30, byKg: 90 });
    expect(result.leastChange.after.totalKg).toBeCloseTo(3498, 9);
    expect(findings[0]?.mends.at(-1)).toEqual({ code: "masses.thenWeigh", facts: {} });
  });

  it("with 20 L of water instead has 12 kg to spare and 1,926.5 kg on the rear axle, and goes only with a ticket", () => {
    const kept = family().load.items.filter(({ id }) => !["bicycles and rack", "awning"].includes(id));
    const few = family({}, kept);
    const { result } = checkLoad({ ...few, load: { ...few.load, waterLitres: 20, lpgCylinders: 1 } });
    expect(result.total.load.value).toBeCloseTo(3488, 9);
    expect(result.total.margin.value).toBeCloseTo(12, 9);
    expect(result.rear.load.value).toBeCloseTo(1926.5, 9);
    expect(result).toMatchObject({ legal: true, needsWeighbridge: true });
  });

  it("needs a ticket while the margin is smaller than the doubt, and none once it was weighed as loaded", () => {
    const few = family({}, [item("luggage", 90, 5.0), item("food", 40, 3.0)]);
    const lean = { ...few, load: { ...few.load, waterLitres: 20, lpgCylinders: 1 } };
    const { result, findings } = checkLoad(lean);
    expect(result.needsWeighbridge).toBe(true);
    expect(findings).toMatchObject([{ code: "masses.weighbridgeNeeded", severity: "condition" }]);
    expect(result.total.chanceOver.value).toBeGreaterThan(0.1);
    const weighed = checkLoad({
      ...lean,
      ticket: { reference: "T1", weighedAt: "2026-08-01T09:10", frontKg: 1400, rearKg: 2010 },
    });
    expect(weighed.findings).toEqual([]);
    expect(weighed.result.total).toMatchObject({ load: { value: 3410, basis: "measured" } });
    const over = checkLoad({
      ...lean,
      ticket: { reference: "T1", weighedAt: "2026-08-01T09:10", frontKg: 1400, rearKg: 2130 },
    });
    expect(over.findings.map(({ code }) => code)).toEqual(["masses.overMam", "masses.overRearAxle"]);
  });

  it("two tyres of load index 104 do not carry the rear axle: safety", () => {
    const weak = overcab({
      systems: overcab().systems.map((each) =>
        each.kind === "tyres" ? { ...each, spec: { ...each.spec, loadIndexRear: 104 } } : each,
      ),
    });
    expect(checkLoad(family({ vehicle: weak })).findings).toContainEqual(
      expect.objectContaining({ code: "masses.overRearTyres", basis: "safety" }),
    );
  });
});

describe("a load that does not fit the vehicle", () => {
  it("is bad input that names the field", () => {
    const bad = {
      ...couple({
        waterLitres: 96,
        lpgCylinders: 3,
        seats: [{ travellerId: "nobody", behindFrontAxleM: 1 }],
      }),
      driverId: "x",
    };
    try {
      checkLoad(bad);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(BadInput);
      expect((error as BadInput).problems.map(({ path }) => path)).toEqual([
        "load.waterLitres",
        "load.lpgCylinders",
        "driverId",
        "load.seats.0.travellerId",
      ]);
    }
  });
});
