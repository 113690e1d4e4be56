import { expect, it } from "vitest";
import { addDays, anniversary, daysBetween, fullYears } from "./years.ts";

it("a birthday counts on its day, 29 February on 1 March in common years", () => {
  expect(fullYears("1985-05-10", "2026-05-09")).toBe(40);
  expect(fullYears("1985-05-10", "2026-05-10")).toBe(41);
  expect(fullYears("2000-02-29", "2026-02-28")).toBe(25);
  expect(fullYears("2000-02-29", "2026-03-01")).toBe(26);
  expect(anniversary("1956-02-29", 70)).toBe("2026-03-01");
  expect(anniversary("1956-06-15", 70)).toBe("2026-06-15");
  expect(anniversary("1956-01-29", 70)).toBe("2026-01-29");
  expect(anniversary("1956-02-28", 70)).toBe("2026-02-28");
  expect(anniversary("1956-02-29", 72)).toBe("2028-02-29");
});

it("counts days across the end of a month and the clock change", () => {
  expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
  expect(addDays("2026-02-27", 2)).toBe("2026-03-01");
});
