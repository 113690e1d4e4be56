import { describe, expect, it } from "vitest";
import "../../parts/all-words.ts";
import {
  bodyOf,
  countChanges,
  draftOf,
  kitLine,
  repairLine,
  stateOf,
  withFile,
  withLine,
} from "./price-draft.ts";

const wear = { lifeYears: 6, leastShare: 0.1 };
const lead = { newPence: 6200, ...wear };
const tear = { of: "awning", kind: "tear" as const, pence: 62_000, part: "replace" as const, ...wear };
const small = { ...tear, upToMm: 80, pence: 14_000 };
const lists = { kit: { "hookUp.leads": lead }, damage: [tear, small] };
const kept = draftOf(lists, "2026-07-01");

describe("the lists of prices while they are changed", () => {
  it("go out as they came in, without what is for people", () => {
    expect(bodyOf(kept)).toEqual({ validFrom: "2026-07-01", ...lists });
    expect(kept.kit[0]?.name).toBe("Hook-up leads");
    expect(countChanges(kept, kept)).toBe(0);
  });

  it("count a line that is new, one that changed and one that was taken out, each once", () => {
    const repairs = withLine(kept.repairs, "awning tear any", repairLine({ ...tear, pence: 60_000 }));
    const kit = withLine(withLine(kept.kit, "hookUp.leads", null), null, kitLine("keys.count", lead));
    expect(countChanges({ ...kept, kit, repairs }, kept)).toBe(3);
    expect(repairs.map((line) => stateOf(line, kept.repairs))).toEqual(["changed", "same"]);
    expect(kit.map((line) => stateOf(line, kept.kit))).toEqual(["new"]);
  });

  it("a file adds and changes, and leaves what is not in it", () => {
    const read = [repairLine({ ...small, pence: 15_000 }), repairLine({ ...small, upToMm: 40, pence: 9000 })];
    const after = withFile(kept.repairs, read);
    expect(after.map(({ id, pence }) => [id, pence])).toEqual([
      ["awning tear any", 62_000],
      ["awning tear 80", 15_000],
      ["awning tear 40", 9000],
    ]);
  });
});
