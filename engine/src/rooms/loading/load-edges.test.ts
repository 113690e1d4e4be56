import { describe, expect, it } from "vitest";
import { overcab, panelVan } from "../../vehicle/test-vehicles.ts";
import type { Traveller } from "../situation.ts";
import { applyTickets, findTicketProblems, type VehicleTicket } from "./apply-tickets.ts";
import { checkLoad } from "./check-load.ts";
import { driverOf, loadLines, massOf } from "./load-lines.ts";
import { loadPlaces } from "./load-places.ts";
import type { LoadInput } from "./types.ts";

const ticket: VehicleTicket = {
  reference: "4711",
  weighedOn: "2026-05-04",
  frontKg: 1560,
  rearKg: 1520,
  aboard: { fuelShare: 0.9, waterLitres: 0, lpgCylinders: 1, frontPeopleKg: 75, rearPeopleKg: 0 },
};
const people = (...kinds: readonly Traveller["kind"][]): Traveller[] =>
  kinds.map((kind, k) => ({ id: `t${k}`, kind }));
const input = (change: Partial<LoadInput> = {}): LoadInput => ({
  vehicle: panelVan(),
  party: { travellers: people("adult", "adult"), dogs: 0, experience: "some" },
  load: { seats: [], items: [], waterLitres: 95, fuelShare: 0.9, lpgCylinders: 2 },
  ...change,
});
const withLpg = (spec: object) =>
  panelVan({
    systems: panelVan().systems.map((each) =>
      each.kind === "lpg" ? { ...each, spec: { ...each.spec, ...spec } } : each,
    ),
  });

describe("a ticket at its edges", () => {
  it("takes full tanks and every cylinder that is fitted, and one litre or cylinder more not", () => {
    const paths = (waterLitres: number, lpgCylinders: number) =>
      findTicketProblems(panelVan(), {
        ...ticket,
        aboard: { ...ticket.aboard, waterLitres, lpgCylinders },
      }).map(({ path }) => path);
    expect(paths(95, 2)).toEqual([]);
    expect(paths(95.1, 2)).toEqual(["aboard.waterLitres"]);
    expect(paths(95, 3)).toEqual(["aboard.lpgCylinders"]);
  });

  it("of the very day on which something was fitted is not older than that, and of the day before it is", () => {
    const isOlder = (fittedChangedOn: string) =>
      applyTickets(panelVan(), [ticket], { day: "2026-06-01", fittedChangedOn }).isOlderThanFitting;
    expect([isOlder("2026-05-04"), isOlder("2026-05-05")]).toEqual([false, true]);
  });
});

describe("the masses of people", () => {
  it("are taken as 75 kg for an adult, by age for a child, and as told where somebody told them", () => {
    const kg = (traveller: Omit<Traveller, "id">) => massOf({ id: "t", ...traveller });
    expect(kg({ kind: "adult" })).toEqual({ kg: 75, isDeclared: false });
    expect(kg({ kind: "adult", massKg: 91 })).toEqual({ kg: 91, isDeclared: true });
    const byAge = [0, 3, 4, 6, 9, 12, 13].map((ageYears) => kg({ kind: "child", ageYears }).kg);
    expect(byAge).toEqual([15, 15, 22, 22, 32, 45, 60]);
    expect(kg({ kind: "child" })).toEqual({ kg: 45, isDeclared: false });
  });

  it("the driver is the one named, else the foremost adult, the first of two beside each other", () => {
    const party = { travellers: people("child", "adult", "adult"), dogs: 0, experience: "some" as const };
    const seat = (travellerId: string, behindFrontAxleM: number) => ({ travellerId, behindFrontAxleM });
    const driver = (seats: LoadInput["load"]["seats"], driverId?: string) =>
      driverOf({
        ...input({ party, load: { ...input().load, seats } }),
        ...(driverId === undefined ? {} : { driverId }),
      })?.id;
    expect(driver([seat("t0", 0.5), seat("t1", 2), seat("t2", 0.5)])).toBe("t2");
    expect(driver([seat("t0", 2), seat("t1", 0.5), seat("t2", 0.5)])).toBe("t1");
    expect(driver([seat("t0", 2), seat("t1", 0.5), seat("t2", 0.5)], "t2")).toBe("t2");
    expect(driverOf(input({ party: { ...party, travellers: people("child") } }))).toBeUndefined();
  });
});

describe("how well a mass is known", () => {
  it("is told line by line: the scale's or the plate's doubt, people as told or not, 3 L of water, a tenth of a thing", () => {
    const items = [
      { id: "box", name: "Box", massKg: 20, behindFrontAxleM: 3, removable: true },
      { id: "weighed", name: "Weighed", massKg: 20, behindFrontAxleM: 3, removable: true, sdKg: 0.5 },
    ];
    const travellers: Traveller[] = [
      { id: "a", kind: "adult", massKg: 80 },
      { id: "b", kind: "adult" },
    ];
    const lines = loadLines(
      input({
        party: { travellers, dogs: 1, experience: "some" },
        load: { ...input().load, items },
      }),
    );
    const sd = Object.fromEntries(lines.map(({ id, sdKg }) => [id, sdKg]));
    expect(sd).toMatchObject({
      "traveller.a": 3,
      "traveller.b": 12,
      water: 3,
      cylinders: 0,
      "item.box": 2,
      "item.weighed": 0.5,
    });
  });
});

describe("what can come off", () => {
  it("is what the load plan says: no person, no cylinder, no mass in running order", () => {
    const items = [
      { id: "box", name: "Box", massKg: 20, behindFrontAxleM: 3, removable: true },
      { id: "bolted", name: "Bolted", massKg: 20, behindFrontAxleM: 3, removable: false },
    ];
    const lines = loadLines(input({ load: { ...input().load, items } }));
    const removable = lines.filter((line) => line.removable).map(({ id }) => id);
    expect(removable).toEqual(["item.box"]);
    expect(lines.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["runningOrder", "option", "driver", "traveller", "cylinder"]),
    );
  });

  it("counts cylinders of exchange one by one but the last, and none of a tank", () => {
    const fewer = (spec: object, over: number) =>
      checkLoad(
        input({
          vehicle: withLpg(spec),
          load: {
            ...input().load,
            waterLitres: 0,
            items: [{ id: "m", name: "m", massKg: over, behindFrontAxleM: 2, removable: false }],
          },
        }),
      ).result.leastChange;
    const margin = checkLoad(input({ load: { ...input().load, waterLitres: 0 } })).result.total.margin.value;
    expect(fewer({}, margin + 1)).toMatchObject({
      outcome: "found",
      steps: [{ kind: "fewerCylinders", from: 2, to: 1, byKg: 14 }],
    });
    // two cylinders of 14 kg: the last stays
    expect(fewer({}, margin + 15).outcome).toBe("none");
    expect(fewer({ arrangement: "tank" }, margin + 1).outcome).toBe("none");
  });
});

describe("what costs the party least", () => {
  it("is 10 kg of food before a cylinder, and a cylinder before 15 kg of food", () => {
    const load = (foodKg: number, fixedKg: number): LoadInput["load"] => ({
      ...input().load,
      waterLitres: 0,
      items: [
        { id: "food", name: "Food", massKg: foodKg, behindFrontAxleM: 2, removable: true, kind: "food" },
        { id: "fixed", name: "Fixed", massKg: fixedKg, behindFrontAxleM: 2, removable: false },
      ],
    });
    const margin = checkLoad(input({ load: load(40, 0) })).result.total.margin.value;
    const steps = (overKg: number) =>
      checkLoad(input({ load: load(40, margin + overKg) })).result.leastChange.steps;
    expect(steps(8)).toMatchObject([{ kind: "lessOfItem", byKg: 10 }]);
    expect(steps(12)).toMatchObject([{ kind: "fewerCylinders", byKg: 14 }]);
  });
});

describe("the steered axle", () => {
  it("is told to be light under three tenths of the load, as a condition of the firm, and not above", () => {
    const at = (massKg: number) => {
      const items = [{ id: "m", name: "m", massKg, behindFrontAxleM: 4.9, removable: true }];
      const { result, findings } = checkLoad(input({ load: { ...input().load, items } }));
      return {
        share: result.frontShare.value,
        light: findings.filter(({ code }) => code === "masses.lightFront"),
      };
    };
    const all = Array.from({ length: 30 }, (_, k) => at(k * 50));
    for (const { share, light } of all) expect(light.length, `${share}`).toBe(share < 0.3 ? 1 : 0);
    const told = all.find(({ light }) => light.length > 0);
    expect(told?.light).toMatchObject([{ severity: "condition", basis: "policy", about: "front" }]);
  });
});

describe("the payload", () => {
  it("less what is used of it is the margin to the plate, options counted in neither", () => {
    expect(panelVan().masses.options).toMatchObject([{ massKg: 45 }]);
    for (const vehicle of [panelVan(), overcab()]) {
      const { payload, payloadUsed, total } = checkLoad(input({ vehicle })).result;
      expect(payload.value - payloadUsed.value).toBeCloseTo(total.margin.value, 9);
    }
  });
});

describe("the place under the bed", () => {
  it("lies at the first bed as described, and never behind the tail", () => {
    const bed = (behindFrontAxleM: number) => ({
      id: `bed${behindFrontAxleM}`,
      kind: "beds",
      spec: { behindFrontAxleM },
    });
    const at = (...beds: readonly number[]) =>
      loadPlaces(panelVan({ systems: beds.map(bed) })).find(({ place }) => place === "underBed")
        ?.behindFrontAxleM;
    expect(at(3.1, 4)).toBe(3.1);
    // wheelbase 3.8 m, rear overhang 1.2 m: at most 0.6 m before the tail
    expect(at(4.9)).toBe(4.4);
  });
});
