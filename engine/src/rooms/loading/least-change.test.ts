import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChangeGroup, type ChangeOption, searchLeastChange } from "./least-change.ts";

type Option = ChangeOption<string>;
const option = fc.record({
  trouble: fc.integer({ min: 1, max: 20 }),
  kg: fc.integer({ min: 0, max: 60 }),
  takes: fc.array(fc.integer({ min: -40, max: 90 }), { minLength: 4, maxLength: 4 }),
});
const groups = fc
  .array(fc.array(option, { maxLength: 4 }), { maxLength: 6 })
  .map((list) =>
    list.map((group, g): ChangeGroup<string> => group.map((each, k) => ({ ...each, acts: [`${g}.${k}`] }))),
  );
const excess = fc.array(fc.integer({ min: -60, max: 220 }), { minLength: 4, maxLength: 4 });

/** Every way to take one option or none from each group. */
const everyWay = (list: readonly ChangeGroup<string>[]): readonly (readonly Option[])[] =>
  list.reduce<readonly (readonly Option[])[]>(
    (ways, group) => ways.flatMap((way) => [way, ...group.map((each) => [...way, each])]),
    [[]],
  );
const sum = (way: readonly Option[], of: (each: Option) => number) =>
  way.reduce((total, each) => total + of(each), 0);
const clears = (over: readonly number[], way: readonly Option[]) =>
  over.every((each, load) => each - sum(way, ({ takes }) => takes[load]!) <= 1e-9);

describe("the search for the least change", () => {
  it("finds what trying every combination finds: the least trouble, then the least kg", () => {
    fc.assert(
      fc.property(groups, excess, (list, over) => {
        const legal = everyWay(list).filter((way) => clears(over, way));
        const { choice, complete } = searchLeastChange(over, list);
        expect(complete).toBe(true);
        if (legal.length === 0) {
          expect(choice).toBeNull();
          return;
        }
        const least = Math.min(...legal.map((way) => sum(way, (each) => each.trouble)));
        const leastKg = Math.min(
          ...legal
            .filter((way) => sum(way, (each) => each.trouble) === least)
            .map((way) => sum(way, ({ kg }) => kg)),
        );
        expect(choice).toMatchObject({ trouble: least, kg: leastKg });
      }),
      { numRuns: 300 },
    );
  });

  it("proposes only what clears every excess, one option of a group at most", () => {
    fc.assert(
      fc.property(groups, excess, (list, over) => {
        const { choice } = searchLeastChange(over, list);
        if (choice === null) return;
        const way = choice.acts.map((act) => list.flat().find((each) => each.acts[0] === act)!);
        expect(clears(over, way)).toBe(true);
        const taken = choice.acts.map((act) => act.split(".")[0]);
        expect(new Set(taken).size).toBe(taken.length);
      }),
    );
  });
});
