import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Finding, GATES, type Gate } from "../../base/finding.ts";
import { mayOverride } from "./may-override.ts";
import { readGlass } from "./read-glass.ts";
import { type GateReading, GLASS_STATES, type GlassInput, OVERRIDE_ROLES, type Override } from "./types.ts";

const at = "2026-05-09T09:00:00Z";
const finding = (
  gate: Gate,
  severity: Finding["severity"],
  basis: Finding["basis"],
  code = `${gate}.x`,
): Finding => ({
  code,
  gate,
  severity,
  basis,
  facts: {},
  sources: [],
  mends: [],
});
const clear = (): GateReading[] => GATES.map((gate) => ({ gate, checkedAt: at, findings: [] }));
const put = (...findings: Finding[]) =>
  clear().map((reading) => ({ ...reading, findings: findings.filter((each) => each.gate === reading.gate) }));
const ask = (gates: readonly GateReading[], more: Partial<GlassInput> = {}) =>
  readGlass({ now: at, handedOver: null, keysAt: "2026-05-09T10:00:00Z", gates, overrides: [], ...more });

describe("the glass", () => {
  it("is ready when every due gate was checked and nothing was found", () => {
    expect(ask(clear())).toMatchObject({ state: "ready", because: [], conditions: [] });
  });

  it("shows all thirteen gates in the order in which the tool asks", () => {
    expect(ask([]).gates.map(({ gate }) => gate)).toEqual([...GATES]);
  });

  it("is not yet while a due gate is unchecked, and says which", () => {
    const reading = ask(clear().filter(({ gate }) => gate !== "defects"));
    expect(reading.state).toBe("notYet");
    expect(reading.because).toEqual([{ gate: "defects", code: "gate.notChecked" }]);
  });

  it("does not darken for a gate that is not due", () => {
    const reading = ask(
      clear().filter(({ gate }) => gate !== "signatures"),
      { keysAt: "2026-05-09T11:00:00Z" },
    );
    expect(reading.state).toBe("ready");
    expect(reading.gates.at(-1)).toMatchObject({
      state: "later",
      dueAt: "2026-05-09T10:00:00Z",
      isDue: false,
    });
  });

  describe("weeks before the keys", () => {
    const early = { keysAt: "2026-08-01T10:00:00Z" };

    it.each([
      ["licence", "law"],
      ["countries", "law"],
      ["crossing", "safety"],
      ["insurance", "cover"],
    ] as const)("cannot go where the %s gate is refused by %s: waiting does not mend it", (gate, basis) => {
      const reading = ask(put(finding(gate, "refuse", basis)), early);
      expect(reading.state).toBe("cannotGo");
      expect(reading.because).toEqual([{ gate, code: `${gate}.x` }]);
      expect(reading.gates.find((each) => each.gate === gate)).toMatchObject({
        state: "refused",
        isDue: true,
      });
      // the others are as they were: later, and dark for nobody
      expect(reading.gates.filter(({ state }) => state === "later")).toHaveLength(10);
    });

    it.each([
      ["what is renewed in the course of things", finding("dueDates", "refuse", "law")],
      ["what is mended in the course of things", finding("defects", "refuse", "safety")],
      ["what a person may let pass", finding("season", "refuse", "policy")],
      ["what nobody has looked at", finding("licence", "unchecked", "law")],
      ["what the insurer is asked", finding("insurance", "refer", "cover")],
    ])("does not darken for %s", (_what, found) => {
      expect(ask(put(found), early).state).toBe("ready");
    });

    it("is ready again once the insurer accepted what the policy refuses", () => {
      const by = { code: "insurance.x", by: "p1", role: "insurer", reason: "accepted, ref 12" } as const;
      const gates = put(finding("insurance", "refuse", "cover"));
      expect(ask(gates, { ...early, overrides: [{ ...by, role: "manager" }] }).state).toBe("cannotGo");
      expect(ask(gates, { ...early, overrides: [by] }).state).toBe("ready");
    });
  });

  it("is not yet while the insurer is asked, and goes with conditions once the insurer accepted", () => {
    const gates = put(finding("insurance", "refer", "cover"));
    const accepted: Override = { code: "insurance.x", by: "p1", role: "insurer", reason: "accepted, ref 12" };
    expect(ask(gates).state).toBe("notYet");
    expect(ask(gates, { overrides: [accepted] }).state).toBe("goesWithConditions");
    expect(ask(gates, { overrides: [{ ...accepted, role: "manager" }] }).state).toBe("notYet");
  });

  it("cannot be talked out of an expired MOT by anyone", () => {
    const gates = put(finding("dueDates", "refuse", "law", "due.lapsed"));
    for (const role of OVERRIDE_ROLES) {
      const override: Override = { code: "due.lapsed", by: "p1", role, reason: "hirer is waiting" };
      const reading = ask(gates, { overrides: [override] });
      expect(reading.state).toBe("cannotGo");
      expect(reading.rejectedOverrides).toEqual([override]);
    }
  });

  it("overrides only the finding that was named, about the one that was named", () => {
    const gates = put(
      { ...finding("money", "refuse", "policy"), about: "a" },
      { ...finding("money", "refuse", "policy"), about: "b" },
    );
    const reading = ask(gates, {
      overrides: [{ code: "money.x", about: "a", by: "p1", role: "manager", reason: "paid in cash" }],
    });
    expect(reading.state).toBe("cannotGo");
    expect(reading.because).toEqual([{ gate: "money", code: "money.x", about: "b" }]);
  });

  it("goes with conditions above notes, and lists the conditions", () => {
    const gates = put(finding("masses", "condition", "law"), finding("season", "note", "policy"));
    const reading = ask(gates);
    expect(reading.state).toBe("goesWithConditions");
    expect(reading.conditions.map(({ code }) => code)).toEqual(["masses.x"]);
    expect(ask(put(finding("season", "note", "policy"))).state).toBe("readyWithNotes");
  });

  it("is replaced once the keys went, by what is left to act on", () => {
    const gates = put(finding("season", "condition", "policy"), finding("money", "note", "policy"));
    expect(ask(gates, { handedOver: at })).toMatchObject({ state: "onTheRoad", toActOn: 1 });
  });

  it("never brightens when a finding is added", () => {
    const findings = fc.array(
      fc.record({
        gate: fc.constantFrom(...GATES),
        severity: fc.constantFrom<Finding["severity"][]>("refuse", "refer", "unchecked", "condition", "note"),
        basis: fc.constantFrom<Finding["basis"][]>("law", "safety", "cover", "policy", "physics"),
      }),
    );
    const rank = (state: string) => (GLASS_STATES as readonly string[]).indexOf(state);
    fc.assert(
      fc.property(findings, (list) => {
        const all = list.map(({ gate, severity, basis }) => finding(gate, severity, basis));
        const states = all.map((_, k) => rank(ask(put(...all.slice(0, k + 1))).state));
        expect(states).toEqual([...states].map((_, k) => Math.min(...states.slice(0, k + 1))));
      }),
    );
  });
});

it("law and safety are overridden by nobody, cover by the insurer only", () => {
  expect(OVERRIDE_ROLES.filter((role) => mayOverride({ basis: "law" }, role))).toEqual([]);
  expect(OVERRIDE_ROLES.filter((role) => mayOverride({ basis: "safety" }, role))).toEqual([]);
  expect(OVERRIDE_ROLES.filter((role) => mayOverride({ basis: "cover" }, role))).toEqual(["insurer"]);
  expect(OVERRIDE_ROLES.filter((role) => mayOverride({ basis: "policy" }, role))).toEqual([
    "desk",
    "manager",
  ]);
});
