import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseVehicle } from "../../vehicle/parse.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import { diagnose } from "./diagnose.ts";
import { diagnoseSymptom } from "./diagnose-symptom.ts";
import { storesNow } from "./stores-now.ts";
import { symptomsOf } from "./symptoms-of.ts";
import type { Diagnosis, SymptomOnVehicle } from "./types.ts";

const vehicle = parseVehicle(
  JSON.parse(readFileSync(new URL("../../../../examples/pv2.json", import.meta.url), "utf8")),
);
const ask = (symptom: string, more: Partial<Parameters<typeof diagnose>[0]> = {}) =>
  diagnose({ vehicle, symptom, answers: [], hands: "hirer", ...more });
const chanceOf = ({ causes }: Diagnosis, cause: string) =>
  causes.find((one) => one.cause === cause)!.chance.value;

describe("the fault finder", () => {
  it("knows at least twelve symptoms of the example's van", () => {
    expect(symptomsOf(vehicle).length).toBeGreaterThanOrEqual(12);
  });

  it("thinks of empty bottles first where the forecast says that the gas is out", () => {
    const plain = ask("lpg.nothingLights").result!;
    const out = ask("lpg.nothingLights", { stores: [{ store: "lpg", troubleChance: 0.9 }] }).result!;
    expect(chanceOf(out, "lpg.empty")).toBeGreaterThan(2 * chanceOf(plain, "lpg.empty"));
    expect(out.causes[0]!.cause).toBe("lpg.empty");
  });

  it("learns from what the depot has found before, slowly", () => {
    const cause = "lpg.regulator";
    const of = (count: number) =>
      chanceOf(ask("lpg.nothingLights", { history: [{ cause, count }] }).result!, cause);
    expect(of(0)).toBeLessThan(of(2));
    expect(of(2)).toBeLessThan(of(40));
    expect(of(2)).toBeLessThan(0.3);
    expect(of(1000)).toBeGreaterThan(0.95);
  });

  it("names the likeliest cause first, and those alike by their ids", () => {
    for (const { symptom } of symptomsOf(vehicle)) {
      const told = ask(symptom.id).result!.causes.map(({ cause, chance }) => [-chance.value, cause] as const);
      expect(told, symptom.id).toEqual(told.toSorted(([a, x], [b, y]) => a - b || (x < y ? -1 : 1)));
    }
    const on: SymptomOnVehicle = {
      systemId: "a",
      systemKind: "a",
      symptom: {
        id: "a.dead",
        dangerous: false,
        causes: ["a.c", "a.a", "a.d", "a.b"].map((id) => ({ id, weight: id === "a.d" ? 3 : 1 })),
        checks: [],
      },
    };
    expect(diagnoseSymptom(on, { answers: [] }).result?.causes.map(({ cause }) => cause)).toEqual([
      "a.d",
      "a.a",
      "a.b",
      "a.c",
    ]);
  });

  it("stops at once where it smells of gas, and proposes nothing", () => {
    const { result, findings } = ask("lpg.smell", { answers: [] });
    expect(result).toMatchObject({ outcome: "stop", next: null, plan: [], leftForTrained: [] });
    expect(findings).toMatchObject([{ code: "diagnosis.stopAndCall", severity: "refuse", basis: "safety" }]);
  });

  it("does not go on to what waits for a check that nobody could do", () => {
    const asked = ask("heating.noHeat", {
      answers: [{ check: "heating.lookAtFlue", answer: "cannotTell" }],
    }).result!;
    expect(asked.plan.map(({ check }) => check)).not.toContain("heating.offAndOn");
    const looked = ask("heating.noHeat", {
      answers: [{ check: "heating.lookAtFlue", answer: "notIt" }],
    }).result!;
    expect(looked.plan.map(({ check }) => check)).toContain("heating.offAndOn");
  });

  it("gives trained hands what a hirer is never asked for", () => {
    const trained = ask("lpg.nothingLights", { hands: "trained" }).result!;
    expect(trained.plan.map(({ check }) => check)).toContain("lpg.lookAtRegulator");
    const hirer = ask("lpg.nothingLights").result!;
    expect(hirer.plan.map(({ check }) => check)).not.toContain("lpg.lookAtRegulator");
    expect(hirer.leftForTrained).toEqual(["lpg.lookAtRegulator"]);
    const answers = [{ check: "lpg.lookAtRegulator", answer: "notIt" as const }];
    expect(ask("lpg.nothingLights", { hands: "trained", answers }).result?.leftForTrained).toEqual([]);
  });

  it("ends with what was found, and names only what that check can find", () => {
    const { result } = ask("lpg.nothingLights", {
      answers: [
        { check: "lpg.openValve", answer: "notIt" },
        { check: "lpg.openSlowly", answer: "fixed" },
      ],
    });
    expect(result).toMatchObject({ outcome: "fixed", next: null, causes: [{ cause: "lpg.ruptureValve" }] });
  });

  it("says that an answer to a check which is not there does not count", () => {
    const { result, findings } = ask("lpg.nothingLights", {
      answers: [{ check: "lpg.kickIt", answer: "fixed" }],
    });
    expect(result?.outcome).toBe("check");
    expect(findings).toMatchObject([{ code: "diagnosis.answerIgnored", facts: { check: "lpg.kickIt" } }]);
  });

  it("refuses a symptom that this vehicle cannot have, with the nearest that it can", () => {
    const { result, findings } = ask("lpg.nothingLight");
    expect(result).toBeNull();
    expect(findings).toMatchObject([{ code: "diagnosis.unknownSymptom", severity: "refuse" }]);
    expect(String(findings[0]!.facts.near)).toContain("lpg.nothingLights");
  });

  it("leaves out checks that mention what is not fitted, and nothing waits for them", () => {
    const bare = symptomsOf(panelVan()).find(({ symptom }) => symptom.id === "lpg.nothingLights")!;
    const ids = bare.symptom.checks.map(({ id }) => id);
    expect(ids).not.toContain("lpg.lightThreeTimes");
    for (const { after } of bare.symptom.checks) for (const id of after) expect(ids).toContain(id);
  });

  it("goes on with the fault that the cause is itself", () => {
    const on: SymptomOnVehicle = {
      systemId: "a",
      systemKind: "a",
      symptom: {
        id: "a.dead",
        dangerous: false,
        causes: [{ id: "a.noPower", weight: 1, leadsTo: "b.dead" }],
        checks: [{ id: "a.look", causes: ["a.noPower"], minutes: 1, danger: 0, after: [], mentions: [] }],
      },
    };
    const answers = [{ check: "a.look", answer: "found" as const }];
    expect(diagnoseSymptom(on, { answers }).result).toMatchObject({ outcome: "found", goOnWith: "b.dead" });
  });
});

describe("what the stores hold now", () => {
  const store = (troubleAt: "empty" | "full", p10: number, p50: number, p90: number) => ({
    axis: { hours: [0, 1], at: ["2027-02-06T12:00", "2027-02-06T13:00"] },
    stores: [
      {
        store: troubleAt === "full" ? "wasteWater" : "lpg",
        capacity: { value: 100 },
        troubleAt,
        band: { p10: [50, p10], p50: [50, p50], p90: [50, p90] },
      },
    ],
  });
  const chance = (troubleAt: "empty" | "full", ...band: [number, number, number]) =>
    storesNow(store(troubleAt, ...band) as unknown as Parameters<typeof storesNow>[0], "2027-02-06T13:30")[0]!
      .troubleChance;

  it("is near certain where all lives have run out, unlikely where none has", () => {
    expect(chance("empty", 0, 0, 2)).toBe(0.95);
    expect(chance("empty", 40, 50, 60)).toBeLessThan(0.02);
    expect(chance("full", 97, 99, 100)).toBe(0.95);
    expect(chance("full", 10, 20, 30)).toBeLessThan(0.02);
  });

  it("grows as the level falls", () => {
    const falling = [60, 30, 10, 5, 1].map((p50) => chance("empty", p50 / 2, p50, p50 * 2));
    expect(falling).toEqual(falling.toSorted((a, b) => a - b));
    const rising = [40, 70, 90, 95, 99].map((p50) => chance("full", p50 - 20, p50, p50 + 1));
    expect(rising).toEqual(rising.toSorted((a, b) => a - b));
    expect(rising.at(-1)).toBeGreaterThan(0.5);
    // 0, 2.5 and 10 L of 100 L are left; the last 5 L are a third of the way from the middle to the ninth tenth
    expect(chance("full", 90, 97.5, 100)).toBeCloseTo(0.5 + 0.4 / 3, 9);
  });
});
