import { describe, expect, it } from "vitest";
import { VIEWS } from "../../systems/contract.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import { compareCondition } from "./compare-condition.ts";
import { composeWalkRound } from "./compose-walk-round.ts";
import { chargedBefore, isMark } from "./match-marks.ts";
import {
  type ConditionContent,
  type ConditionRecord,
  conditionContentSchema,
  type WalkRound,
} from "./types.ts";

const photo = "a".repeat(64);
let number = 0;
const record = (content: ConditionContent): ConditionRecord => ({ recordId: `r${++number}`, content });
const reading = (value: number, unit = "share", checkId = "fuel.gauge") =>
  record({ kind: "reading", checkId, value, unit, photographs: [photo] });
const count = (counted: number) => record({ kind: "count", checkId: "keys.count", counted, expected: 3 });
const mark = (xShare: number, more: Partial<Extract<ConditionContent, { kind: "mark" }>> = {}) =>
  record({
    kind: "mark",
    part: "body",
    view: "nearside",
    xShare,
    yShare: 0.5,
    markKind: "scratch",
    sizeMm: 40,
    photographs: [photo],
    ...more,
  });
const look = (outcome: "same" | "mark" | "tooWetOrDirty", checkId = "waste.isEmpty") =>
  record({ kind: "look", checkId, outcome });

const check = { systemId: "s", when: ["out", "back"], view: "cab", photograph: false } as const;
const round: WalkRound = {
  vehicleId: "panelVan",
  when: "back",
  steps: [
    {
      view: "cab",
      checks: [
        {
          ...check,
          id: "fuel.gauge",
          systemKind: "fuel",
          kind: "reading",
          charge: "fuel",
          reading: { unit: "share", min: 0, max: 1, tolerance: 0.07, step: 0.125, source: "practice" },
        },
        { ...check, id: "keys.count", systemKind: "keys", kind: "count", charge: "key", expected: 3 },
        { ...check, id: "waste.isEmpty", systemKind: "wasteWater", kind: "look", charge: "wasteWater" },
      ],
    },
  ],
};
const compare = (out: ConditionRecord[], back: ConditionRecord[]) =>
  compareCondition(out, back, round).result;

describe("the walk-round of a vehicle", () => {
  it("goes by the views in their fixed order and holds only checks for that round", () => {
    const out = composeWalkRound(panelVan(), "out");
    expect(out.steps.map(({ view }) => view)).toEqual([...VIEWS]);
    expect(out.steps.flatMap(({ checks }) => checks).every(({ when }) => when.includes("out"))).toBe(true);
  });

  it("asks for what is fitted, once", () => {
    const ids = composeWalkRound(panelVan(), "back").steps.flatMap(({ checks }) =>
      checks.map(({ id }) => id),
    );
    expect(ids).toContain("fuel.gauge");
    expect(ids.some((id) => id.startsWith("awning."))).toBe(false);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("out against back", () => {
  it("finds nothing where nothing changed beyond the measuring tolerance", () => {
    expect(
      compare([reading(1), count(3), look("same")], [reading(0.94), count(3), look("same")]),
    ).toMatchObject({ differences: [], questions: [], missing: [] });
  });

  it("finds a reading beyond the tolerance and a count that is short, with the records and photographs", () => {
    const [out, back] = [reading(1), reading(0.75)];
    const { differences } = compare([out, count(3)], [back, count(2)]);
    expect(differences).toMatchObject([
      {
        id: "reading:fuel.gauge",
        kind: "reading",
        charge: "fuel",
        change: { value: -0.25, basis: "measured" },
        outRecords: [out.recordId],
        backRecords: [back.recordId],
        photographs: [photo, photo],
      },
      { id: "count:keys.count", kind: "count", expected: 3, counted: 2, short: 1 },
    ]);
  });

  it("a mark that is on the out record is existing; a new one beside it is a difference", () => {
    const [old, again, fresh] = [mark(0.4), mark(0.43), mark(0.5)];
    const result = compare([old], [again, fresh]);
    expect(result.existing).toEqual([{ back: again.recordId, out: old.recordId }]);
    expect(result.differences).toMatchObject([
      { id: `mark:${fresh.recordId}`, kind: "mark", markKind: "scratch", sizeMm: 40 },
    ]);
  });

  it("one old mark does not excuse two new ones, nor a longer one, nor another kind in the same place", () => {
    expect(compare([mark(0.4)], [mark(0.41), mark(0.42)]).differences).toHaveLength(1);
    expect(compare([mark(0.4)], [mark(0.4, { sizeMm: 200 })]).differences).toHaveLength(1);
    expect(compare([mark(0.4)], [mark(0.4, { markKind: "dent" })]).differences).toHaveLength(1);
    expect(compare([mark(0.4)], [mark(0.4, { view: "offside" })]).differences).toHaveLength(1);
  });

  it("what was counted on one of the two rounds only is no difference, and what was counted on both is by how many are short", () => {
    expect(compare([count(3)], []).differences).toEqual([]);
    expect(compare([], [count(2)]).differences).toEqual([]);
    expect(compare([count(3)], [count(3)]).differences).toEqual([]);
    expect(compare([count(2)], [count(1)]).differences).toMatchObject([
      { id: "count:keys.count", expected: 2, counted: 1, short: 1 },
    ]);
  });

  it("two differing readings of one thing are a question, and are not compared", () => {
    const [one, two] = [reading(0.75), reading(0.5)];
    const answer = compareCondition([reading(1)], [one, two], round);
    expect(answer.result.differences).toEqual([]);
    expect(answer.result.questions).toEqual([
      { checkId: "fuel.gauge", when: "back", records: [one.recordId, two.recordId] },
    ]);
    expect(answer.findings.map(({ code }) => code)).toContain("condition.twoReadings");
  });

  it("a reading in another unit is a question too", () => {
    expect(compare([reading(1)], [reading(60, "L")]).questions).toHaveLength(1);
  });

  it("too wet or dirty asks for a second look, until somebody looked", () => {
    expect(compare([], [look("tooWetOrDirty")]).secondLooks).toEqual([
      { checkId: "waste.isEmpty", when: "back" },
    ]);
    expect(compare([], [look("tooWetOrDirty"), look("same")]).secondLooks).toEqual([]);
  });

  it("a tank that went empty and came back full is a difference without a mark", () => {
    expect(compare([look("same")], [look("mark")]).differences).toMatchObject([
      { id: "look:waste.isEmpty", kind: "look", charge: "wasteWater" },
    ]);
    expect(compare([look("mark")], [look("mark")]).differences).toEqual([]);
  });

  it("tells which checks nobody made", () => {
    expect(compare([], [count(3)]).missing).toEqual(["fuel.gauge", "waste.isEmpty"]);
    const missing = (back: ConditionRecord[]) =>
      compareCondition([], back, round).findings.filter(({ code }) => code === "condition.missing");
    expect(missing([count(3)])).toMatchObject([{ severity: "unchecked", facts: { count: 2 } }]);
    expect(missing([count(3), reading(1), look("same")])).toEqual([]);
  });
});

it("a mark's content names what is wrong with it", () => {
  const bad = { ...mark(1.2).content, photographs: ["not a hash"] };
  expect(conditionContentSchema.safeParse(bad).error?.issues.map(({ path }) => path.join("."))).toEqual([
    "xShare",
    "photographs.0",
  ]);
});

describe("a mark that another hire was charged for", () => {
  it("is known again by part, kind and place, though it was touched a little elsewhere", () => {
    const [charged, near, far, other] = [mark(0.5), mark(0.62), mark(0.8), mark(0.5, { markKind: "dent" })];
    const found = chargedBefore([near, far, other].filter(isMark), [charged].filter(isMark));
    expect(found).toEqual([near.recordId]);
  });
});
