import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import { applyTickets, findTicketProblems, lastFittedChange, type VehicleTicket } from "./apply-tickets.ts";
import { checkLoad } from "./check-load.ts";

const ticket = (change: Partial<VehicleTicket> = {}): VehicleTicket => ({
  reference: "4711",
  weighedOn: "2026-05-04",
  frontKg: 1560,
  rearKg: 1520,
  aboard: { fuelShare: 0.9, waterLitres: 0, lpgCylinders: 1, frontPeopleKg: 75, rearPeopleKg: 0 },
  ...change,
});
const on = { day: "2026-06-01", fittedChangedOn: null };
const load = {
  party: {
    travellers: [{ id: "a", kind: "adult" as const, massKg: 82 }],
    dogs: 0,
    experience: "some" as const,
  },
  load: {
    seats: [],
    items: [{ id: "kit", name: "Kit", massKg: 280, behindFrontAxleM: 2.2, removable: true }],
    waterLitres: 95,
    fuelShare: 1,
    lpgCylinders: 2,
  },
};

describe("weighbridge tickets of a vehicle", () => {
  it("a ticket taken on the basis gives the scale's figures less what was fitted since", () => {
    const { masses } = applyTickets(panelVan(), [ticket()], on).description;
    expect(masses.miroKg).toBeCloseTo(3080 - 45, 9);
    expect(masses.miroBasis).toMatchObject({ weighed: true, weighedOn: "2026-05-04" });
  });

  it("the load check of what was aboard gives back what the scale said, whatever was aboard", () => {
    fc.assert(
      fc.property(
        fc.record({
          fuelShare: fc.double({ min: 0, max: 1, noNaN: true }),
          waterLitres: fc.double({ min: 0, max: 95, noNaN: true }),
          lpgCylinders: fc.integer({ min: 0, max: 2 }),
          frontPeopleKg: fc.double({ min: 40, max: 200, noNaN: true }),
          rearPeopleKg: fc.constant(0),
        }),
        (aboard) => {
          const vehicle = applyTickets(panelVan(), [ticket({ aboard })], on).description;
          const { result } = checkLoad({
            vehicle,
            party: {
              travellers: [{ id: "d", kind: "adult", massKg: aboard.frontPeopleKg }],
              dogs: 0,
              experience: "some",
            },
            load: { seats: [], items: [], ...aboard },
          });
          expect(result.front.load.value).toBeCloseTo(1560, 6);
          expect(result.rear.load.value).toBeCloseTo(1520, 6);
        },
      ),
    );
  });

  it("shrinks what is not known of the load, and no ticket is asked for any more", () => {
    const before = checkLoad({ vehicle: panelVan(), ...load }).result;
    const { description } = applyTickets(panelVan(), [ticket({ frontKg: 1545, rearKg: 1430 })], on);
    const after = checkLoad({ vehicle: description, ...load }).result;
    expect(before.needsWeighbridge).toBe(true);
    expect(after.needsWeighbridge).toBe(false);
    expect(after.lines[0]?.sdKg).toBeLessThan((before.lines[0]?.sdKg ?? 0) / 3);
  });

  it("the latest ticket up to the day wins", () => {
    const tickets = [
      ticket({ weighedOn: "2026-05-20", frontKg: 1580 }),
      ticket(),
      ticket({ weighedOn: "2026-07-01", frontKg: 1600 }),
    ];
    expect(applyTickets(panelVan(), tickets, on).applied?.weighedOn).toBe("2026-05-20");
    expect(applyTickets(panelVan(), [ticket({ weighedOn: "2026-07-01" })], on)).toMatchObject({
      applied: null,
    });
  });

  it("a ticket older than a change of what is fitted is flagged, and its doubt is that of a stated mass", () => {
    const answer = applyTickets(panelVan(), [ticket()], { day: "2026-06-01", fittedChangedOn: "2026-05-10" });
    expect(answer.isOlderThanFitting).toBe(true);
    expect(answer.description.masses.miroBasis).toMatchObject({ weighed: false, weighedOn: "2026-05-04" });
    expect(answer.description.masses.miroBasis.sdKg).toBeUndefined();
  });

  it("finds the day of the last change of what is fitted, not of a name", () => {
    const versions = [
      panelVan(),
      panelVan({ validFrom: "2026-02-01", systems: panelVan().systems.slice(1) }),
      panelVan({ validFrom: "2026-03-01", name: "Renamed", systems: panelVan().systems.slice(1) }),
    ];
    expect(lastFittedChange(versions, "2026-04-01")).toBe("2026-02-01");
    expect(lastFittedChange(versions, "2026-01-01")).toBeNull();
  });

  it("names what cannot be right on a ticket", () => {
    const paths = (change: Partial<VehicleTicket>) =>
      findTicketProblems(overcab(), ticket(change)).map(({ path }) => path);
    expect(paths({})).toEqual([]);
    expect(paths({ frontKg: 2900 })).toContain("frontKg");
    expect(paths({ aboard: { ...ticket().aboard, waterLitres: 300, lpgCylinders: 3 } })).toEqual([
      "aboard.waterLitres",
      "aboard.lpgCylinders",
    ]);
  });
});
