import { describe, expect, it } from "vitest";
import { GATES } from "../../base/finding.ts";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import { RULES } from "../../rules/rule-at.ts";
import { makeFinding } from "../make-finding.ts";
import { COUNTRY_TOPICS, listMissingRules } from "./list-missing-rules.ts";
import type { GateReading } from "./types.ts";

const at = "2026-06-01T09:00:00Z";
const checked = (): GateReading[] => GATES.map((gate) => ({ gate, checkedAt: at, findings: [] }));
const ask = (countries: readonly string[], gates: readonly GateReading[] = checked()) =>
  listMissingRules({ countries, on: "2026-06-01", gates });
const of = (kind: string, missing: ReturnType<typeof ask>) =>
  missing.filter((each) => each.kind === kind).map(({ about }) => about);

describe("what is still missing of the rules", () => {
  it("lists every gate while nobody looked", () => {
    expect(of("gateNotChecked", ask([], []))).toEqual([...GATES]);
  });

  it("lists a gate that was looked at only for what stands unchecked in it", () => {
    const gates = checked().map((reading) =>
      reading.gate === "crossing"
        ? { ...reading, findings: [makeFinding("crossing", "crossing.notSaid", "unchecked", "policy")] }
        : reading,
    );
    expect(ask([], gates)).toEqual([
      { kind: "findingNotChecked", gate: "crossing", about: "crossing.notSaid" },
    ]);
  });

  it("says of a country without data that it has none, and nothing more", () => {
    expect(ask(["HU"])).toEqual([{ kind: "countryNotInData", gate: "countries", about: "HU" }]);
  });

  it("names each rule of the route that is from memory or unsettled, and none that was read", () => {
    const missing = ask(["AT"]);
    const named = [...of("ruleFromMemory", missing), ...of("ruleUnsettled", missing)];
    expect(named).toContain("zone.at");
    for (const id of named) {
      const rule = RULES.find((each) => each.id === id)!;
      expect(rule.confidence === "memory" || rule.unsettled !== undefined).toBe(true);
    }
    expect(named).not.toContain("kit.at.vest");
  });

  it("misses no topic that the data of a known country lacks", () => {
    for (const country of COUNTRIES_KNOWN) {
      const lacking = COUNTRY_TOPICS.filter(
        (topic) => !RULES.some(({ id }) => id.startsWith(`${topic}.${country.toLowerCase()}`)),
      );
      expect(of("topicNotInData", ask([country]))).toEqual(lacking.map((topic) => `${country}.${topic}`));
    }
  });

  it("comes in the order of the gates, and a country twice on the route counts once", () => {
    const missing = ask(["AT", "DE", "AT"], []);
    const order = missing.map(({ gate }) => GATES.indexOf(gate));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(ask(["AT", "AT"])).toEqual(ask(["AT"]));
  });
});
