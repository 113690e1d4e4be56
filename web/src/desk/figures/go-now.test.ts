import { expect, test } from "vitest";
import { goNow } from "./go-now.ts";

const kept = {
  now: "2026-07-01T12:00",
  unsent: [
    { kind: "preHire" as const, since: "2026-06-20T09:00", days: ["2026-07-05", "2026-07-08", "2026-07-20"] },
  ],
};

test("messages whose moment would have come by other days go at once, none that it had not before they were on", () => {
  expect(goNow(kept, "preHire", 3)).toBe(0);
  // 9:00 of the first of July is over at noon
  expect(goNow(kept, "preHire", 4)).toBe(1);
  expect(goNow(kept, "preHire", 7)).toBe(2);
  // the first one's moment lies before they were turned on
  expect(goNow(kept, "preHire", 16)).toBe(1);
  expect(goNow({ ...kept, now: "2026-07-01T08:59" }, "preHire", 4)).toBe(0);
  expect(goNow(kept, "dayBefore", 9)).toBe(0);
});
