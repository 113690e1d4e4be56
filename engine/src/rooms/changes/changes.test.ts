import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figure } from "../../base/figure.ts";
import { gbp } from "../../base/money.ts";
import { parseVehicle } from "../../vehicle/parse.ts";
import { chooseCards } from "../briefing/choose-cards.ts";
import { briefAgain, CARDS_ON_SIZE } from "./brief-again.ts";
import { listPlateBound, type PlateBoundInput } from "./list-plate-bound.ts";
import { noticeClock } from "./notice-clock.ts";
import { refundNights } from "./refund-nights.ts";

const heron = parseVehicle(
  JSON.parse(readFileSync(new URL("../../../../examples/pv2.json", import.meta.url), "utf8")),
);
const may = { country: "GB", nightsOffHookUp: 2, coldestNightC: 6, firstTime: true, people: 2, children: 0 };

/** of a thing to get that every road there asks for */
const KEPT_IN = { avoidable: null, avoided: false } as const;

describe("briefing again after a change of vehicle", () => {
  it("asks for nothing where the vehicles are alike", () => {
    const answer = briefAgain(heron, { ...heron }, may);
    expect(answer.again).toEqual([]);
    expect(answer.gone).toEqual([]);
    expect(answer.same).toHaveLength(chooseCards(heron, may).length);
  });

  it("tells a higher vehicle's height again, and nothing that does not say it", () => {
    const higher = { ...heron, dimensions: { ...heron.dimensions, heightM: heron.dimensions.heightM + 0.3 } };
    const { again } = briefAgain(heron, higher, may);
    expect(again.map(({ card, why }) => [card.id, why]).sort()).toEqual(
      CARDS_ON_SIZE.map((id) => [id, "different"]).sort(),
    );
  });

  it("tells what was not fitted before, and drops what is not fitted now", () => {
    const bare = { ...heron, systems: heron.systems.filter(({ kind }) => kind !== "awning") };
    const more = briefAgain(bare, heron, may);
    expect(more.again.map(({ card }) => card.id)).toContain("awning.wind");
    expect(more.again.every(({ why }) => why === "new")).toBe(true);
    const less = briefAgain(heron, bare, may);
    expect(less.gone).toContain("awning.wind");
    expect(less.again).toEqual([]);
  });

  it("every card of the new vehicle is either the same or told again, whatever is taken out of either", () => {
    const some = fc.subarray([...heron.systems]);
    fc.assert(
      fc.property(some, some, (before, after) => {
        const next = { ...heron, systems: after };
        const { again, same } = briefAgain({ ...heron, systems: before }, next, may);
        const all = [...again.map(({ card }) => card.id), ...same].sort();
        expect(all).toEqual(
          chooseCards(next, may)
            .map(({ card }) => card.id)
            .sort(),
        );
      }),
      { numRuns: 30 },
    );
  });

  it("knows every card whose text says how big the vehicle is", () => {
    const words = new URL("../../../../words/src/en/systems/", import.meta.url);
    const saying = readdirSync(words)
      .filter((name) => name.endsWith(".json"))
      .flatMap((name) => Object.entries<string>(JSON.parse(readFileSync(new URL(name, words), "utf8"))))
      .filter(([id, text]) => id.startsWith("card.") && /\{vehicle(Height|Length|Width)/.test(text))
      .map(([id]) => id.split(".").slice(1, 3).join("."));
    expect([...CARDS_ON_SIZE].sort()).toEqual([...new Set(saying)].sort());
  });
});

describe("the clock of a notice", () => {
  it("begins with the day after it was given", () => {
    const clock = noticeClock({ kind: "privateParking", givenOn: "2026-08-03", today: "2026-08-10" });
    expect(clock).toMatchObject({ lastDay: "2026-08-31", daysLeft: 21, days: { value: 28, unit: "d" } });
  });

  it("says that it is over, and knows no days for a toll", () => {
    expect(noticeClock({ kind: "council", givenOn: "2026-07-01", today: "2026-07-30" }).daysLeft).toBe(-1);
    expect(noticeClock({ kind: "toll", givenOn: "2026-07-01", today: "2026-07-30" }).lastDay).toBeNull();
  });

  it("refuses a notice of tomorrow", () => {
    expect(() => noticeClock({ kind: "police", givenOn: "2026-08-11", today: "2026-08-10" })).toThrow(
      /givenOn/,
    );
  });
});

describe("nights that could not be used", () => {
  const quote = (pence: number, nights: number) => ({
    nights: figure(nights, "nights", "-", {}, "computed"),
    lines: [
      {
        code: "nights" as const,
        about: "summer",
        count: nights,
        each: gbp(0),
        amount: gbp(pence),
        vat: { kind: "standard" as const, ratePercent: 20, amount: gbp(0) },
      },
    ],
  });

  it("are given back where the cause is ours, not where it is theirs, and stay open where nobody knows", () => {
    expect(refundNights(quote(70_000, 7), 2, "ours")).toEqual({ worth: gbp(20_000), due: gbp(20_000) });
    expect(refundNights(quote(70_000, 7), 2, "theirs").due).toEqual(gbp(0));
    expect(refundNights(quote(70_000, 7), 2, "unknown")).toEqual({ worth: gbp(20_000), due: null });
    expect(() => refundNights(quote(70_000, 7), 8, "ours")).toThrow(/nightsLost/);
  });

  it("are never worth more than the nights cost, and no more for fewer", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.integer({ min: 1, max: 60 }), fc.nat(59), (pence, nights, lost) => {
        fc.pre(lost < nights);
        const worth = (n: number) => refundNights(quote(pence, nights), n, "ours").worth.pence;
        expect(worth(lost)).toBeLessThanOrEqual(worth(lost + 1));
        expect(worth(nights)).toBe(pence);
      }),
    );
  });
});

describe("what is bound to a plate", () => {
  const base: PlateBoundInput = {
    oldVehicle: heron,
    newVehicle: { ...heron, registration: "SF26 SKN" },
    today: "2026-08-03",
    keysAt: "2026-08-03T10:00",
    signed: ["agreement", "condition"],
    walkedOut: true,
    hasCertificate: true,
    firstAbroad: "2026-08-03",
    oldTasks: [
      {
        ruleId: "zone.fr",
        country: "FR",
        doBy: "2026-07-20",
        leadDays: 14,
        done: true,
        late: false,
        ...KEPT_IN,
      },
      {
        ruleId: "kit.fr.vest",
        country: "FR",
        doBy: "2026-07-20",
        leadDays: 14,
        done: true,
        late: false,
        ...KEPT_IN,
      },
    ],
    newTasks: [
      {
        ruleId: "zone.fr",
        country: "FR",
        doBy: "2026-07-20",
        leadDays: 14,
        done: false,
        late: true,
        ...KEPT_IN,
      },
    ],
    crossings: [{ kind: "ferry", on: "2026-08-03" }],
    kitAboard: 3,
    children: 1,
    hasLoadPlan: true,
    hasTrip: true,
    overrides: 1,
  };

  it("leaves out what the route keeps out of", () => {
    const newTasks = base.newTasks.map((task) => ({ ...task, avoidable: "zones" as const, avoided: true }));
    const codes = listPlateBound({ ...base, newTasks }).toDo.map(({ code }) => code);
    expect(codes).not.toContain("country");
  });

  it("lists all of it, with what is too late already", () => {
    const { voided, toDo } = listPlateBound(base);
    expect(voided.map(({ code }) => code)).toEqual([
      "agreement",
      "liability",
      "walkRound",
      "certificate",
      "country",
      "kitAboard",
      "overrides",
      "forecast",
    ]);
    expect(toDo.filter(({ late }) => late).map(({ code }) => code)).toEqual(["certificate", "country"]);
    expect(toDo.find(({ code }) => code === "crossing")).toMatchObject({
      by: "2026-08-03",
      late: false,
      facts: { kind: "ferry", newLength: { unit: "m" }, newHeight: { unit: "m" } },
    });
    expect(toDo.map(({ code }) => code)).toContain("childSeats");
    expect(toDo.filter(({ misses }) => misses !== undefined).map(({ code }) => code)).toEqual([
      "certificate",
      "country",
    ]);
  });

  it("says what cannot be had before the ferry leaves, by the port's own clock, and what still can", () => {
    const evening = { kind: "ferry", on: "2026-08-03", at: "20:00", zone: "Europe/Paris" } as const;
    const crossings = [{ ...evening, leavesAt: "2026-08-03T19:00" }];
    const { toDo } = listPlateBound({ ...base, crossings });
    const misses = Object.fromEntries(toDo.map(({ code, misses }) => [code, misses]));
    expect(misses).toMatchObject({ certificate: "2026-08-03T19:00", country: "2026-08-03T19:00" });
    expect(misses).toMatchObject({ agreement: undefined, walkRound: undefined, crossing: undefined });
    expect(toDo.find(({ code }) => code === "crossing")).toMatchObject({
      by: "2026-08-03T19:00",
      facts: { port: "20:00 Europe/Paris" },
    });
    const later = [{ kind: "ferry", on: "2026-10-03" } as const];
    const none = listPlateBound({ ...base, crossings: later });
    expect(none.toDo.every(({ misses: missed }) => missed === undefined)).toBe(true);
  });

  it("asks for little where nothing was signed and nobody leaves the country", () => {
    const { voided, toDo } = listPlateBound({
      ...base,
      signed: [],
      walkedOut: false,
      hasCertificate: false,
      firstAbroad: null,
      oldTasks: [],
      newTasks: [],
      crossings: [],
      kitAboard: 0,
      children: 0,
      hasLoadPlan: false,
      hasTrip: false,
      overrides: 0,
    });
    expect(voided).toEqual([]);
    expect(toDo.map(({ code }) => code)).toEqual(["agreement", "insurer", "walkRound"]);
  });
});
