import { expect, it } from "vitest";
import { linesOfHire } from "./custody-card.tsx";

const line = (holder: "hirer" | "depot" | "workshop", hireId: string | null) => ({
  at: "2026-07-06T09:00:00.000Z",
  until: null,
  holder,
  who: "x",
  note: null,
  hireId,
  recordId: null,
  marks: 0,
  photographs: 0,
  readings: 0,
});

it("a hire shows its own keys, who had them before, and who took them after", () => {
  const lines = [
    line("hirer", "later"),
    line("workshop", null),
    line("depot", "this"),
    line("hirer", "this"),
    line("depot", "before"),
    line("hirer", "before"),
  ];
  expect(linesOfHire(lines, "this").map(({ holder, hireId }) => [holder, hireId])).toEqual([
    ["workshop", null],
    ["depot", "this"],
    ["hirer", "this"],
    ["depot", "before"],
  ]);
  expect(linesOfHire(lines, "none")).toEqual([]);
});
