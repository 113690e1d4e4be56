import "../parts/all-words.ts";
import { hashOfRecord } from "@setfair/records";
import { expect, test } from "vitest";
import { Failure, problemAt, take } from "../api/failure.ts";
import { rowsOf } from "../parts/road-of-stops.tsx";
import { EMPTY_ENQUIRY, newHireOf, partyOf } from "./enquiry/enquiry-draft.ts";
import { signingRecords } from "./hire/handover/send-records.ts";
import { applySteps } from "./hire/load/least-change-box.tsx";
import { guessDrive } from "./hire/trip/trip-draft.ts";

const plan = {
  seats: [],
  items: [
    { id: "bikes", name: "Bikes", massKg: 40, behindFrontAxleM: 6, removable: true },
    { id: "cot", name: "Cot", massKg: 12, behindFrontAxleM: 4, removable: true },
  ],
  waterLitres: 80,
  fuelShare: 1,
  lpgCylinders: 2,
};

test("the least change leaves out just what it names, and carries less water", () => {
  const after = applySteps(plan, [
    { kind: "leaveItem", id: "item.bikes", name: "Bikes", byKg: 40 },
    { kind: "lessWater", fromLitres: 80, toLitres: 20, byKg: 60 },
    { kind: "fewerCylinders", from: 2, to: 1, byKg: 11 },
  ]);
  expect(after.items.map(({ id }) => id)).toEqual(["cot"]);
  expect([after.waterLitres, after.lpgCylinders]).toEqual([20, 1]);
});

test("names that would meet on the road stand in different rows", () => {
  expect(
    rowsOf([
      { share: 0, length: 6 },
      { share: 0.05, length: 9 },
      { share: 0.9, length: 6 },
    ]),
  ).toEqual([0, 1, 0]);
});

test("a child keeps its age, and an empty wish is left out", () => {
  expect(partyOf({ ...EMPTY_ENQUIRY, childAges: [4] }).travellers.at(-1)).toEqual({
    id: "child1",
    kind: "child",
    ageYears: 4,
  });
  expect(newHireOf({ ...EMPTY_ENQUIRY, wishes: "  " })).not.toHaveProperty("wishes");
});

test("a signature covers every item before it, in one chain", () => {
  const signing = {
    hireId: "h",
    vehicleId: null,
    purpose: "briefing",
    signer: "N. Q.",
    shown: "shown",
    strokes: [[{ x: 1, y: 2, t: 0, pressure: 0.5 }]],
  };
  const records = signingRecords(
    { ...signing, items: [{ kind: "briefed", content: { about: "lpg.openShut" } }] },
    "desk",
    "2026-07-03T11:15:00Z",
  );
  expect(records.map(({ kind, seq }) => `${kind} ${seq}`)).toEqual(["briefed 1", "signature 2"]);
  expect(records[1]?.prev).toBe(records[0]?.hash);
  expect(records[1]?.content.records).toEqual([{ id: records[0]?.id, hash: records[0]?.hash }]);
  expect(records.every((record) => hashOfRecord(record) === record.hash)).toBe(true);
});

test("a drive is guessed from the map, about 90 km from Inverness to Ullapool", () => {
  const place = (latitudeDeg: number, longitudeDeg: number) => ({
    name: "",
    country: "GB",
    latitudeDeg,
    longitudeDeg,
  });
  const { distanceKm } = guessDrive(place(57.48, -4.22), place(57.9, -5.16));
  expect(distanceKm).toBeGreaterThan(80);
  expect(distanceKm).toBeLessThan(115);
});

test("a refusal names its fields; no answer at all is a failure too", async () => {
  const error = {
    error: { code: "badInput", message: "", problems: [{ path: "body.to", expected: "later" }] },
  };
  const refused = take(Promise.resolve({ error, response: new Response(null, { status: 400 }) }));
  const failure = await refused.catch((caught: unknown) => caught);
  expect(problemAt(failure, "to")).toBe("later");
  await expect(take(Promise.reject(new TypeError("offline")))).rejects.toEqual(new Failure(0, "noAnswer"));
});
