import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseVehicle } from "../../vehicle/parse.ts";
import { composeWalkRound } from "../condition/compose-walk-round.ts";
import { listCountedThings } from "./counted-things.ts";
import { settleHire } from "./settle-hire.ts";
import { input, kit } from "./test-settlement.ts";

const url = new URL("../../../../examples/vehicles/pv2.json", import.meta.url);
const round = composeWalkRound(parseVehicle(JSON.parse(readFileSync(url, "utf8"))), "back");
const value = { newPence: 4000, lifeYears: 5, leastShare: 0.1 };

describe("what walk-rounds count and a settlement could charge", () => {
  it("names each thing once with how many vehicles have it, and says where nobody has entered a value", () => {
    const found = listCountedThings([round, round], {});
    expect(found.length).toBeGreaterThan(3);
    expect(new Set(found.map(({ checkId }) => checkId)).size).toBe(found.length);
    expect(found).toContainEqual({
      checkId: "hookUp.leads",
      systemKind: "hookUp",
      charge: "missingItem",
      vehicles: 2,
      pricedBy: null,
    });
    const looks = round.steps.flatMap(({ checks }) => checks).filter(({ kind }) => kind !== "count");
    for (const { id } of looks) expect(found.map(({ checkId }) => checkId)).not.toContain(id);
  });

  it("takes its own value before its kind's, and its kind's before that of anything missing", () => {
    const by = (tariff: Parameters<typeof listCountedThings>[1]) =>
      listCountedThings([round], tariff).find(({ checkId }) => checkId === "hookUp.leads")?.pricedBy;
    expect(by({ missingItem: value })).toBe("missingItem");
    expect(by({ missingItem: value, hookUp: value })).toBe("hookUp");
    expect(by({ missingItem: value, hookUp: value, "hookUp.leads": value })).toBe("hookUp.leads");
  });

  it("agrees with the settlement on what has a value", () => {
    for (const tariff of [{}, { hookUp: value }, { missingItem: value }, { awning: value }]) {
      const asked = input([kit(1)], { classes: { "count:leads": "hirer" } });
      asked.terms.tariff.kit = tariff;
      const [line] = settleHire(asked).result.lines;
      const [thing] = listCountedThings([round], tariff).filter(({ checkId }) => checkId === "hookUp.leads");
      expect(line?.because === "noTariff").toBe(thing?.pricedBy === null);
    }
  });
});
