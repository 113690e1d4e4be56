import { describe, expect, it } from "vitest";
import { checkPacking, type PackingInput } from "./check-packing.ts";

const seat = { id: "seat1", kind: "childRestraint", name: "Seat 1", count: 1, expiresOn: "2026-07-17" };
const pack = (change: Partial<PackingInput> = {}) =>
  checkPacking({ item: seat, to: "2026-07-17T10:00", vehicleId: "pv2", ...change }).findings;

describe("a thing that is to go aboard", () => {
  it("may while it is good to the last day of the hire", () => {
    expect(pack()).toEqual([]);
  });

  it("may not where it is over before the hire ends, and nobody can let that pass", () => {
    expect(pack({ to: "2026-07-18T10:00" })).toMatchObject([
      {
        code: "stock.outOfDate",
        severity: "refuse",
        basis: "safety",
        facts: { name: "Seat 1", lastDay: "2026-07-17" },
      },
    ]);
  });

  it("may not where it is made out for another vehicle, nor where there is no vehicle yet", () => {
    expect(pack({ madeOutFor: "pv2" })).toEqual([]);
    const refused = [{ code: "stock.otherVehicle", severity: "refuse", basis: "law" }];
    expect(pack({ madeOutFor: "oc6" })).toMatchObject(refused);
    expect(pack({ madeOutFor: "oc6", vehicleId: null })).toMatchObject(refused);
  });
});
