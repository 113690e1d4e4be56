import { expect, it } from "vitest";
import { byStart } from "./by-start.ts";

it("jobs stand as the plan does them, and what has no time comes last in the order of the list", () => {
  const jobs = [
    { id: "gas", start: "2026-11-30T22:45" },
    { id: "count", start: null },
    { id: "waste", start: "2026-11-30T22:35" },
    { id: "alarms", start: null },
    { id: "late", start: "2026-12-01T09:00" },
  ];
  expect(byStart(jobs).map(({ id }) => id)).toEqual(["waste", "gas", "late", "count", "alarms"]);
});
