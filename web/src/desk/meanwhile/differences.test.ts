import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findDifferences, isSame, takeOver } from "./differences.ts";

const stop = (name: string, leave = "2026-07-05T10:00") => ({ place: { name }, leave, acts: ["fillWater"] });
const base = { depart: "2026-07-03T12:00", stops: [stop("Ambleford"), stop("Kirkholme")], settings: {} };

describe("what two people changed of one thing", () => {
  it("is told apart: mine, theirs, and what both changed", () => {
    const mine = {
      ...base,
      depart: "2026-07-03T13:00",
      stops: [stop("Ambleford", "2026-07-05T09:00"), base.stops[1]],
    };
    const theirs = { ...base, depart: "2026-07-03T14:00", settings: { heatingC: 18 } };
    expect(findDifferences(base, mine, theirs)).toEqual([
      { path: ["depart"], mine: "2026-07-03T13:00", theirs: "2026-07-03T14:00", changedBy: "both" },
      {
        path: ["stops", { key: "Ambleford" }, "leave"],
        mine: "2026-07-05T09:00",
        theirs: "2026-07-05T10:00",
        changedBy: "me",
      },
      { path: ["settings", "heatingC"], mine: undefined, theirs: 18, changedBy: "them" },
    ]);
  });

  it("a stop that they added and one that I changed stand side by side, in their order", () => {
    const mine = { ...base, stops: [stop("Ambleford", "2026-07-05T09:00"), stop("Kirkholme")] };
    const theirs = { ...base, stops: [stop("Ambleford"), stop("Seawick"), stop("Kirkholme")] };
    const found = findDifferences(base, mine, theirs);
    const added = found.filter(({ changedBy }) => changedBy === "them");
    expect(takeOver(mine, theirs, added).stops).toEqual([
      stop("Ambleford", "2026-07-05T09:00"),
      stop("Seawick"),
      stop("Kirkholme"),
    ]);
  });

  it("a stop that they took out goes where theirs is taken", () => {
    const theirs = { ...base, stops: [stop("Kirkholme")] };
    const found = findDifferences(base, base, theirs);
    expect(found).toMatchObject([
      { path: ["stops", { key: "Ambleford" }], theirs: undefined, changedBy: "them" },
    ]);
    expect(takeOver(base, theirs, found).stops).toEqual([stop("Kirkholme")]);
  });

  it("lists whose members have no names are compared whole, or place by place where they are as long", () => {
    expect(findDifferences({ a: ["x"] }, { a: ["x", "y"] }, { a: ["z"] })).toMatchObject([
      { path: ["a"], changedBy: "both" },
    ]);
    const days = (to: string) => ({ off: [{ from: "2026-12-24", to }] });
    expect(findDifferences(days("26"), days("27"), days("26"))).toMatchObject([
      { path: ["off", 0, "to"], changedBy: "me" },
    ]);
    const longer = { off: [...days("26").off, { from: "2026-01-01", to: "2026-01-01" }] };
    expect(findDifferences(days("26"), days("26"), longer)).toMatchObject([
      { path: ["off"], changedBy: "them" },
    ]);
  });

  it("taking over every place gives theirs, and taking over what only they changed never touches what I changed", () => {
    const inner = fc.record({ name: fc.constantFrom("a", "b", "c"), n: fc.integer({ max: 3, min: 0 }) });
    const value = fc.record(
      {
        text: fc.constantFrom("one", "two"),
        list: fc.uniqueArray(inner, { selector: ({ name }) => name, maxLength: 3 }),
        numbers: fc.array(fc.integer({ min: 0, max: 2 }), { maxLength: 2 }),
        deep: fc.record({ is: fc.boolean() }),
      },
      { requiredKeys: ["list"] },
    );
    const order = (each: { list: readonly { name: string }[] }) => ({
      ...each,
      list: each.list.toSorted((a, b) => (a.name < b.name ? -1 : 1)),
    });
    fc.assert(
      fc.property(value, value, value, (began, mine, theirs) => {
        const found = findDifferences(began, mine, theirs);
        // the order of a list of names is not itself compared
        expect(isSame(order(takeOver(mine, theirs, found)), order(theirs))).toBe(true);
        const merged = takeOver(
          mine,
          theirs,
          found.filter(({ changedBy }) => changedBy === "them"),
        );
        const left = findDifferences(began, merged, mine);
        expect(left.every(({ mine: now, theirs: before }) => !isSame(now, before))).toBe(true);
        for (const { path } of left) {
          const theirsThere = found.find((each) => isSame(each.path, path));
          expect(theirsThere?.changedBy).toBe("them");
        }
      }),
    );
  });
});
