import type { SettlementLine } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { actsOf } from "./line-acts.tsx";

const gbp = (pence: number) => ({ currency: "GBP" as const, pence });
const line = (more: Partial<SettlementLine>, differenceId = "mark:r1"): SettlementLine => ({
  id: differenceId,
  code: "damage",
  about: "step",
  quantity: null,
  amount: gbp(0),
  because: null,
  awaiting: gbp(0),
  capped: true,
  incident: null,
  disputed: false,
  evidence: { records: [], photographs: [], differenceId },
  working: [],
  ...more,
});

describe("what the desk can do with a line", () => {
  it("before it is shown: cost and age of a mark of the hirer's, and a sum to hold where no price is known", () => {
    expect(actsOf(line({ amount: gbp(9000) }), false)).toEqual(["cost", "age"]);
    expect(actsOf(line({ because: "noTariff" }), false)).toEqual(["cost", "age", "awaiting"]);
    expect(actsOf(line({ because: "unknown" }), false)).toEqual([]);
  });

  it("after it is shown: cost, an answer to the hirer, a repair; nothing that would make it dearer", () => {
    expect(actsOf(line({ amount: gbp(9000) }), true)).toEqual(["cost", "reply", "mended"]);
    expect(actsOf(line({ amount: gbp(500) }, "reading:fuel"), true)).toEqual(["reply"]);
  });

  it("a late charge asks for the second person first", () => {
    expect(actsOf(line({ because: "needsSecondSignature" }), true)).toContain("second");
  });
});
