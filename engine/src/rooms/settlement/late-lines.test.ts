import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testTerms } from "../quote/test-terms.ts";
import { settleHire } from "./settle-hire.ts";
import { type LateLoss, LOSS_KINDS, type SettlementInput, settlementInputSchema } from "./types.ts";

const paper = "c".repeat(64);
const loss = (pence: number, more: Partial<LateLoss> = {}): LateLoss => ({
  kind: "overtime",
  pence,
  about: "one hand, from six to eight",
  records: [],
  photographs: [paper],
  ...more,
});
/** Due back at ten; the terms give 30 minutes of grace and state at most £25 an hour. */
const late = (returnedAt: string, lateLosses?: readonly LateLoss[]): SettlementInput => ({
  terms: testTerms(),
  hire: {
    id: "h1",
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    returnedAt,
    timeZone: "Europe/London",
    returnRecords: ["began"],
    allowanceKm: 1680,
    fuel: "diesel",
    ageYears: {},
  },
  differences: [],
  classes: {},
  depositPence: 100_000,
  disputed: [],
  chargedElsewhere: [],
  ...(lateLosses === undefined ? {} : { lateLosses: [...lateLosses] }),
});
const lineOf = (input: SettlementInput) => settleHire(input).result.lines.find(({ id }) => id === "late");

describe("a late return", () => {
  it("by two and a half hours with a loss of £30 shown costs £30, with one of £80 the £50 of the hourly rate", () => {
    expect(lineOf(late("2026-05-16T12:30", [loss(3000)]))).toMatchObject({
      amount: { pence: 3000 },
      because: null,
      capped: false,
      quantity: { value: 2, unit: "h", inputs: { lateMinutes: 150, graceMinutes: 30 } },
      working: [
        { value: 3000, unit: "pence", inputs: { loss: "overtime" } },
        { value: 2500, unit: "pence/h" },
        { value: 5000, unit: "pence", inputs: { of: "atMost" } },
      ],
      evidence: { records: ["began"], photographs: [paper] },
    });
    const two = [loss(3000), loss(5000, { kind: "nextHirer", about: "half a day given back" })];
    expect(lineOf(late("2026-05-16T12:30", two))).toMatchObject({ amount: { pence: 5000 } });
  });

  it("with no loss told costs nothing and says so", () => {
    for (const none of [undefined, [], [loss(0)]])
      expect(lineOf(late("2026-05-16T12:30", none))).toMatchObject({
        amount: { pence: 0 },
        because: "noLoss",
      });
  });

  it("with a loss that nothing shows costs nothing of it", () => {
    const unseen = loss(4000, { photographs: [] });
    expect(lineOf(late("2026-05-16T12:30", [unseen]))).toMatchObject({
      amount: { pence: 0 },
      because: "noEvidence",
    });
    expect(lineOf(late("2026-05-16T12:30", [unseen, loss(1000)]))).toMatchObject({
      amount: { pence: 1000 },
    });
  });

  it("of a settlement that was shown before losses had to be told keeps the hourly rate and its working", () => {
    expect(lineOf({ ...late("2026-05-16T12:30"), lateAtRate: true })).toMatchObject({
      amount: { pence: 5000 },
      because: null,
      working: [{ value: 2500, unit: "pence/h", inputs: {} }],
    });
    const lower = { ...late("2026-05-16T12:30"), lateAtRate: true, atMost: { late: 4000 } };
    expect(lineOf(lower)).toMatchObject({ amount: { pence: 4000 } });
  });

  it("within the grace is no line, whatever was lost", () => {
    expect(lineOf(late("2026-05-16T10:30", [loss(9000)]))).toBeUndefined();
    expect(lineOf(late("2026-05-16T09:00", [loss(9000)]))).toBeUndefined();
  });

  it("reads its losses by the published schema, which names the field of a wrong one", () => {
    const read = (losses: readonly object[]) =>
      settlementInputSchema.safeParse({ ...late("2026-05-16T12:30"), lateLosses: losses });
    expect(read([loss(1)]).success).toBe(true);
    expect(read([{ ...loss(1), pence: -1 }]).error?.issues[0]?.path).toEqual(["lateLosses", 0, "pence"]);
  });

  it("never costs more than what was shown nor than the rate, in whole pence, in whatever order it was told", () => {
    const anyLoss = fc.record({
      kind: fc.constantFrom(...LOSS_KINDS),
      pence: fc.integer({ min: 0, max: 60_000 }),
      about: fc.constant("x"),
      records: fc.array(fc.constant("r"), { maxLength: 1 }),
      photographs: fc.array(fc.constant(paper), { maxLength: 1 }),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 719 }),
        fc.array(anyLoss, { maxLength: 5 }),
        (minutes, losses) => {
          const at = new Date(Date.UTC(2026, 4, 16, 10, minutes)).toISOString().slice(0, 16);
          const pence = lineOf(late(at, losses))?.amount.pence ?? 0;
          const shown = losses.filter((each) => each.records.length + each.photographs.length > 0);
          const lost = shown.reduce((sum, each) => sum + each.pence, 0);
          const most = Math.max(0, Math.round(((minutes - 30) * 2500) / 60));
          expect(pence).toBe(Math.min(lost, most));
          expect(lineOf(late(at, losses.toReversed()))?.amount.pence ?? 0).toBe(pence);
        },
      ),
    );
  });
});
