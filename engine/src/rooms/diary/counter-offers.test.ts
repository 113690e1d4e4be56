import { describe, expect, it } from "vitest";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import type { Party } from "../situation.ts";
import { checkPlan } from "./check-plan.ts";
import { type CounterOffersInput, listCounterOffers } from "./list-counter-offers.ts";
import { parseAllocation } from "./parse-allocation.ts";
import type { DueDate, FleetVehicle } from "./types.ts";

const due: DueDate[] = (["mot", "tax", "insurance", "lpgCheck"] as const).map((kind) => ({
  kind,
  dueOn: "2027-01-31",
}));
const ASKED = { from: "2026-05-09T15:00", to: "2026-05-16T10:00" };
const fleet = (vehicle: FleetVehicle["vehicle"], bookings: FleetVehicle["bookings"] = []): FleetVehicle => ({
  vehicle,
  bookings,
  dueDates: due,
});
const people = (adults: number, children: number): Party => ({
  travellers: [
    ...Array.from({ length: adults }, (_, k) => ({ id: `a${k}`, kind: "adult" as const })),
    ...Array.from({ length: children }, (_, k) => ({ id: `c${k}`, kind: "child" as const })),
  ],
  dogs: 0,
  experience: "first",
});
const ask = (vehicles: readonly FleetVehicle[], change: Partial<CounterOffersInput> = {}) =>
  listCounterOffers(
    {
      vehicles: [...vehicles],
      party: people(2, 0),
      ...ASKED,
      today: "2026-05-01",
      turnaroundMinutes: 240,
      timeZone: "Europe/London",
      movable: [],
      ...change,
    },
    9,
  );
const kindsOf = (offers: ReturnType<typeof ask>) =>
  offers.map(({ vehicleId, steps }) => [vehicleId, ...steps.map(({ kind }) => kind)].join(" "));
/** six belts, and two */
const big = () => overcab();
const small = (id = "panelVan") => panelVan({ id });

describe("two vehicles for one party", () => {
  it("carry everybody: whom the first has no belt for sits in the second, with an adult", () => {
    const shares = [
      [2, 5],
      [2, 4],
      [4, 4],
    ].map(([adults = 0, children = 0]) => {
      const offers = ask([fleet(big()), fleet(small())], { party: people(adults, children) });
      const [step] = offers.find(({ vehicleId }) => vehicleId === "overcab")?.steps ?? [];
      return step?.kind === "secondVehicle" ? step.people : null;
    });
    // seven of six belts: one; six fit the overcab and need no second; eight: two
    expect(shares).toEqual([1, null, 2]);
  });

  it("are both free then: one that is out is in no pair", () => {
    const party = people(2, 5);
    const out = [{ ...ASKED, hireId: "h1" }];
    expect(kindsOf(ask([fleet(big()), fleet(small(), out)], { party }))).toEqual([]);
    expect(kindsOf(ask([fleet(big(), out), fleet(small())], { party }))).toEqual([]);
    expect(kindsOf(ask([fleet(big()), fleet(small())], { party }))).toEqual(["overcab secondVehicle"]);
  });

  it("are no way for one adult with children, who cannot drive both", () => {
    expect(ask([fleet(big()), fleet(small())], { party: people(1, 6) })).toEqual([]);
  });
});

describe("ways that are offered", () => {
  const bookings = [{ from: "2026-05-16T11:00", to: "2026-05-20T10:00", hireId: "h1" }];
  const movable = [
    {
      hireId: "h1",
      vehicleId: "panelVan",
      party: people(2, 0),
      from: "2026-05-16T11:00",
      to: "2026-05-20T10:00",
    },
  ];

  it("are one of each kind for a vehicle, the least trouble first", () => {
    const taken = [{ from: "2026-05-08T15:00", to: "2026-05-14T10:00", hireId: "h2" }];
    const other = fleet(small("other"), taken);
    const third = fleet(small("third"), taken);
    const offers = ask([fleet(small(), bookings), other, third], { movable });
    expect(offers.map(({ trouble }) => trouble.value)).toEqual(
      offers.map(({ trouble }) => trouble.value).toSorted((a, b) => a - b),
    );
    const kinds = kindsOf(offers);
    expect(new Set(kinds).size).toBe(kinds.length);
    // the hire behind it may go to either of two others; earlier is near, since the turnaround is three hours short
    expect(kinds.filter((kind) => kind.startsWith("panelVan"))).toEqual([
      "panelVan shift",
      "panelVan moveHire",
    ]);
    const [shift] = offers[0]!.steps;
    expect(shift).toMatchObject({ kind: "shift", hours: -3, from: "2026-05-09T12:00" });
    expect(offers.find(({ steps }) => steps[0]?.kind === "moveHire")?.steps).toEqual([
      { kind: "moveHire", hireId: "h1", toVehicleId: "other" },
    ]);
  });
});

describe("the checker of plans", () => {
  it("takes moves in whichever order they are told", () => {
    const hour = (h: number) => `2026-05-01T${String(h).padStart(2, "0")}:00Z`;
    const hire = (id: string, now: string) => ({
      id,
      from: hour(0),
      to: hour(9),
      vehicles: ["v0", "v1"],
      now,
    });
    const input = parseAllocation({
      objective: "plan",
      vehicles: [{ id: "v0" }, { id: "v1" }],
      hires: [hire("a", "v0"), hire("b", "v1")],
    });
    const moves = [
      { hire: "a", from: "v0", to: "v1" },
      { hire: "b", from: "v1", to: "v0" },
    ];
    const plan = {
      seated: moves.map(({ hire: of, to }) => ({ hire: of, vehicle: to })),
      refused: [],
      value: 2,
      vehiclesUsed: 2,
      lowerBound: 2,
      upperBound: 2,
      proven: true,
      sellableGaps: 0,
    };
    for (const told of [moves, moves.toReversed()])
      expect(checkPlan(input, { ...plan, moves: told }), JSON.stringify(told)).toEqual([]);
    expect(checkPlan(input, { ...plan, moves: moves.slice(1) }).map(({ code }) => code)).toEqual(["moves"]);
  });
});
