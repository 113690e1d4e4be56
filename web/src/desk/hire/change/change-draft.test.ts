import { expect, test } from "vitest";
import type { HirePageData } from "../use-hire.ts";
import { changeOf, newDraft } from "./change-draft.ts";

const page = {
  hire: { to: "2026-08-10T10:00", vehicle: { registration: "HE26 RON" } },
  party: {
    travellers: [
      { id: "t1", kind: "adult", name: "Ada" },
      { id: "t3", kind: "child", ageYears: 6 },
    ],
    dogs: 0,
    experience: "first",
  },
} as unknown as HirePageData; // of the page only what the draft reads
const draft = newDraft(page, "2026-08-03T09:00");

test("one more adult keeps those who are there, under an id of its own", () => {
  const change = changeOf("party", { ...draft, adults: 2, dogs: 1 }, page);
  expect(change).toMatchObject({ party: { dogs: 1 } });
  expect(change?.kind === "party" && change.party.travellers).toEqual([
    { id: "t1", kind: "adult", name: "Ada" },
    { id: expect.stringMatching(/^t/), kind: "adult" },
    { id: "t3", kind: "child", ageYears: 6 },
  ]);
});

test("nothing is sent while something is missing", () => {
  for (const kind of [
    "vehicle",
    "driverAbsent",
    "teamIll",
    "noShow",
    "breakdown",
    "accident",
    "notice",
  ] as const)
    expect(changeOf(kind, draft, page)).toBeNull();
  expect(changeOf("extension", { ...draft, to: "2026-08-11T10:00" }, page)).toEqual({
    kind: "extension",
    to: "2026-08-11T10:00",
    moves: [],
  });
  expect(changeOf("early", { ...draft, backPounds: 12.5 }, page)).toMatchObject({ backPence: 1250 });
});
