import { expect, test } from "vitest";
import { readyAt } from "./ready-at.ts";

test("a turnaround is ready when the job that ends last has ended, over midnight too", () => {
  const jobs = [
    { start: "2026-11-30T23:30", minutes: 45 },
    { start: "2026-11-30T23:40", minutes: 5 },
  ];
  expect(readyAt(jobs)).toBe("2026-12-01T00:15");
  expect(readyAt(jobs.toReversed())).toBe("2026-12-01T00:15");
});

test("where a job has no time, or none is open, no hour is promised", () => {
  expect(readyAt([{ start: null, minutes: 5 }])).toBeNull();
  expect(readyAt([])).toBeNull();
});
