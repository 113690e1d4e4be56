import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import { checkDueDates } from "./check-due-dates.ts";
import { feasibleVehicles } from "./feasible-vehicles.ts";
import { nearestShifts, overlaps } from "./nearest-shift.ts";
import type { DueDate, FeasibleInput, FleetVehicle } from "./types.ts";

const due = (dueOn = "2027-01-31"): DueDate[] =>
  (["mot", "tax", "insurance", "lpgCheck"] as const).map((kind) => ({ kind, dueOn }));
const fleet = (vehicle = panelVan(), bookings: FleetVehicle["bookings"] = []): FleetVehicle => ({
  vehicle,
  bookings,
  dueDates: due(),
});
const ask = (vehicles: readonly FleetVehicle[], change: Partial<FeasibleInput> = {}) =>
  feasibleVehicles({
    vehicles: [...vehicles],
    party: {
      travellers: [
        { id: "a", kind: "adult" },
        { id: "b", kind: "adult" },
      ],
      dogs: 0,
      experience: "first",
    },
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    today: "2026-05-01",
    turnaroundMinutes: 240,
    timeZone: "Europe/London",
    ...change,
  });
const first = (answer: ReturnType<typeof ask>) => answer.result.vehicles[0]!;

describe("which vehicles can take a hire", () => {
  it("one that is free, big enough and in date can", () => {
    expect(first(ask([fleet()]))).toEqual({
      vehicleId: "panelVan",
      possible: true,
      findings: [],
      nearestChanges: [],
    });
  });

  it("may start when another ends plus the turnaround, and not a quarter of an hour sooner", () => {
    const booking = (to: string) => [{ from: "2026-05-02T15:00", to, hireId: "h1" }];
    expect(first(ask([fleet(panelVan(), booking("2026-05-09T11:00"))])).possible).toBe(true);
    const late = first(ask([fleet(panelVan(), booking("2026-05-09T11:15"))]));
    expect(late.findings).toMatchObject([
      { code: "diary.taken", about: "h1", severity: "refuse", basis: "policy" },
    ]);
    expect(late.nearestChanges[0]).toEqual({
      kind: "shift",
      from: "2026-05-09T15:15",
      to: "2026-05-16T10:15",
      shiftHours: 0.25,
    });
  });

  it("cannot go while it is off the road, and may leave the minute that ends, without a turnaround", () => {
    const off = (from: string, to: string) => ({
      ...fleet(),
      blocked: [{ id: "b1", kind: "mot" as const, from, to }],
    });
    const refused = first(ask([off("2026-05-16T09:45", "2026-05-16T17:00")]));
    expect(refused.findings).toMatchObject([
      { code: "diary.offTheRoad", about: "b1", severity: "refuse", facts: { kind: "mot" } },
    ]);
    expect(refused.nearestChanges[0]).toMatchObject({ kind: "shift", shiftHours: -0.25 });
    expect(first(ask([off("2026-05-16T10:00", "2026-05-16T17:00")])).possible).toBe(true);
    expect(first(ask([off("2026-05-01T10:00", "2026-05-09T15:00")])).possible).toBe(true);
  });

  it("does not clash with its own booking when its dates are changed", () => {
    const bookings = [{ from: "2026-05-09T15:00", to: "2026-05-16T10:00", hireId: "h1" }];
    expect(first(ask([fleet(panelVan(), bookings)], { hireId: "h1" })).possible).toBe(true);
  });

  it("says that five people and a dog fit none, and what would have to change", () => {
    const travellers = Array.from({ length: 5 }, (_, k) => ({ id: `t${k}`, kind: "adult" as const }));
    const answer = ask([fleet(), fleet(overcab())], { party: { travellers, dogs: 1, experience: "first" } });
    expect(answer.findings).toMatchObject([{ code: "diary.noneFits", facts: { count: 2 } }]);
    expect(
      answer.result.vehicles.map(({ nearestChanges }) => nearestChanges.map(({ kind }) => kind)),
    ).toEqual([["smallerParty", "waivePets"], ["waivePets"]]);
  });

  it("refuses dates in reverse as bad input", () => {
    expect(() => ask([fleet()], { to: "2026-05-09T15:00" })).toThrow(/^to: expected a time after/);
  });

  it("every shift that is offered fits, is of the same length and none nearer fits", () => {
    const hour = 3_600_000;
    const span = fc
      .tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 80 }))
      .map(([start, length]) => ({ start: start * hour, end: (start + length) * hour }));
    fc.assert(
      fc.property(
        span,
        fc.array(span, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 0, max: 8 }),
        (asked, taken, turnaround) => {
          fc.pre(taken.some((each) => overlaps(asked, each, turnaround * hour)));
          const free = (shift: number) =>
            taken.every(
              (each) =>
                !overlaps(
                  { start: asked.start + shift * hour, end: asked.end + shift * hour },
                  each,
                  turnaround * hour,
                ),
            );
          for (const { shiftHours } of nearestShifts({
            asked,
            taken,
            turnaroundMs: turnaround * hour,
            timeZone: "UTC",
          })) {
            expect(free(shiftHours!)).toBe(true);
            for (
              let nearer = Math.sign(shiftHours!);
              Math.abs(nearer) < Math.abs(shiftHours!);
              nearer += Math.sign(shiftHours!)
            )
              expect(free(nearer)).toBe(false);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe("what falls due", () => {
  const check = (dueDates: DueDate[], vehicle = panelVan()) =>
    checkDueDates({ vehicle, dueDates, to: "2026-05-16T10:00", today: "2026-05-01" }).findings;

  it("must be good through the last day of the hire", () => {
    expect(check(due("2026-05-16"))).toEqual([]);
    expect(check(due("2026-05-15")).map(({ code, basis }) => [code, basis])).toEqual([
      ["due.lapses", "law"],
      ["due.lapses", "law"],
      ["due.lapses", "law"],
      ["due.lapses", "policy"],
    ]);
  });

  it("tells what has lapsed already from what lapses on the road", () => {
    expect(check([...due().slice(1), { kind: "mot", dueOn: "2026-04-30" }])).toMatchObject([
      { code: "due.lapsed", about: "mot", severity: "refuse", basis: "law" },
    ]);
  });

  it("what the law wants and nobody entered is unchecked, but no MOT before the third birthday", () => {
    expect(check(due().slice(1))).toMatchObject([
      { code: "due.missing", about: "mot", severity: "unchecked" },
    ]);
    expect(check(due().slice(1), panelVan({ firstRegistered: "2023-05-17" }))).toEqual([]);
    expect(check(due().slice(1), panelVan({ firstRegistered: "2023-05-16" }))).toHaveLength(1);
  });
});
