import { describe, expect, it } from "vitest";
import { foundTooLate, readSecondLook, secondLookFindings } from "./second-look.ts";
import type { Difference } from "./types.ts";

const from = "2026-05-16T09:00:00.000Z";
const due = [
  { checkId: "body.nearside", when: "back" as const },
  { checkId: "body.roof", when: "out" as const },
];
const look = (now: string, secondLooks = due) => readSecondLook({ secondLooks, from, hours: 48, now });

describe("the second look after the wash", () => {
  it("holds the settlement while it is due and its window is open, and not longer", () => {
    expect(look("2026-05-16T10:00:00.000Z")).toEqual({
      due: ["body.nearside"],
      until: "2026-05-18T09:00:00.000Z",
      isOver: false,
      holds: true,
    });
    expect(look("2026-05-18T09:00:00.000Z").holds).toBe(true);
    expect(look("2026-05-18T09:00:01.000Z")).toMatchObject({ isOver: true, holds: false });
    expect(look("2026-05-16T10:00:00.000Z", []).holds).toBe(false);
  });

  it("says that it waits, then that nothing more is charged for it", () => {
    const codes = (now: string) => secondLookFindings(look(now)).map(({ code }) => code);
    expect(codes("2026-05-16T10:00:00.000Z")).toEqual(["condition.holdsDeposit"]);
    expect(codes("2026-05-19T10:00:00.000Z")).toEqual(["condition.windowOver"]);
    expect(secondLookFindings(look(from, []))).toEqual([]);
  });
});

describe("a mark found after the return was signed", () => {
  const mark = (recordId: string, part: string): Difference => ({
    kind: "mark",
    id: `mark:${recordId}`,
    checkId: null,
    systemKind: null,
    charge: null,
    outRecords: [],
    backRecords: [recordId],
    photographs: [],
    part,
    view: "nearside",
    markKind: "scratch",
    sizeMm: null,
    xShare: 0.5,
    yShare: 0.5,
  });
  const differences = [
    mark("before", "door"),
    mark("after", "door"),
    mark("open", "panel"),
    mark("late", "panel"),
  ];
  const seen = [
    { recordId: "before", at: "2026-05-16T08:50:00.000Z" },
    { recordId: "after", at: "2026-05-16T11:00:00.000Z" },
    { recordId: "open", at: "2026-05-17T11:00:00.000Z" },
    { recordId: "late", at: "2026-05-19T11:00:00.000Z" },
  ];
  const ask = (signedAt: string | null) =>
    foundTooLate({
      differences,
      seen,
      signedAt,
      keptOpen: [{ checkId: "body.panel", part: "panel", view: "nearside" }],
      until: "2026-05-18T09:00:00.000Z",
    });

  it("is too late, unless its place was kept open and it was found within the window", () => {
    expect(ask(from)).toEqual(["mark:after", "mark:late"]);
  });

  it("is never too late while nobody has signed", () => {
    expect(ask(null)).toEqual([]);
  });
});
