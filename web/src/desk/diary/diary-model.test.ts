import { sameEveryDay } from "@setfair/engine";
import { expect, test } from "vitest";
import { barsOn, type Diary, findPlate, isFree, makeModel, plusMonths } from "./diary-model.ts";

const diary: Diary = {
  from: "2026-07-01",
  to: "2026-07-31",
  now: "2026-07-01T09:00",
  hours: {
    week: { ...sameEveryDay({ opens: "08:00", closes: "18:00" }).week, sunday: null },
    closed: [{ from: "2026-07-13", to: "2026-07-14", name: "Stock-taking" }],
  },
  turnaroundMinutes: 240,
  vehicles: [
    {
      id: "a",
      name: "Heron",
      registration: "SF26 HRN",
      vehicleClass: "panelVan",
      due: [{ kind: "mot", dueOn: "2026-07-09" }],
    },
    { id: "b", name: "Curlew", registration: "SF26 CRL", vehicleClass: "overcab", due: [] },
  ],
  hires: [
    {
      id: "h1",
      reference: "26-0001",
      customer: "Ada Invented",
      stage: "booked",
      vehicleId: "a",
      from: "2026-07-03T14:00",
      to: "2026-07-10T10:00",
      pinned: false,
    },
    {
      id: "h2",
      reference: "26-0002",
      customer: "Bo Invented",
      stage: "enquiry",
      vehicleId: "a",
      from: "2026-07-12T14:00",
      to: "2026-07-14T10:00",
      pinned: false,
    },
  ],
  blocks: [
    { id: "b1", vehicleId: "a", kind: "mot", note: "", from: "2026-07-10T12:00", to: "2026-07-11T12:00" },
  ],
  schoolHolidays: [{ from: "2026-07-20", to: "2026-08-31" }],
};

test("closed days are each Sunday and those that the firm entered, with what for", () => {
  // 2026-07-05 is a Sunday
  expect([...makeModel(diary).closed]).toEqual([
    [4, ""],
    [11, ""],
    [12, "Stock-taking"],
    [13, "Stock-taking"],
    [18, ""],
    [25, ""],
  ]);
});

test("a bar begins and ends within its day, with the turnaround after it; an enquiry holds nothing after", () => {
  const [heron, curlew] = makeModel(diary).rows;
  const hours = (days: number) => Math.round(days * 24);
  expect(heron?.bars.map(({ start, end, ready }) => [hours(start), hours(end), hours(ready)])).toEqual([
    [2 * 24 + 14, 9 * 24 + 10, 9 * 24 + 14],
    [228, 252, 252],
    [11 * 24 + 14, 13 * 24 + 10, 13 * 24 + 10],
  ]);
  expect(curlew?.bars).toEqual([]);
  expect([...(heron?.due ?? [])]).toEqual([[8, ["mot"]]]);
});

test("a day has what touches it, and only what holds the vehicle makes it taken", () => {
  const row = makeModel(diary).rows[0]!;
  expect(barsOn(row, 9).map(({ key }) => key)).toEqual(["h1", "b1"]);
  expect(barsOn(row, 1)).toEqual([]);
  expect(isFree(row, 11, 13)).toBe(true);
  expect(isFree(row, 0, 1)).toBe(true);
  expect(isFree(row, 0, 2)).toBe(false);
  expect(isFree(row, 10, 12)).toBe(false);
});

test("a plate is found by its beginning first, else by letters within it", () => {
  const { rows } = makeModel(diary);
  expect(findPlate(rows, "sf26c", 0)).toBe(1);
  expect(findPlate(rows, "hrn", 1)).toBe(0);
  expect(findPlate(rows, "s", 1)).toBe(1);
  expect(findPlate(rows, "zz", 0)).toBe(-1);
});

test("a month on from the last day of a long month is the last of the short one", () => {
  expect(plusMonths("2026-01-31", 1)).toBe("2026-02-28");
  expect(plusMonths("2026-03-31", -1)).toBe("2026-02-28");
  expect(plusMonths("2026-12-15", 1)).toBe("2027-01-15");
});
