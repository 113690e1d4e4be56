import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depotOfChanges } from "./changes-for-tests.ts";

const { here, bookedHire, look, confirm, everything, isDoubleBooked, isBookedAsItSays } = depotOfChanges();

describe("whatever is confirmed", () => {
  test("a hire that stays longer does not give way to itself", async () => {
    here.depot.at("2027-01-04T09:00:00.000Z");
    const own = await bookedHire("Ole", "2027-01-20T14:00", "2027-01-25T10:00", "pv2");
    const moves = [{ hireId: own, vehicleId: "pv2-c" }];
    const seen = await look(own, { kind: "extension", to: "2027-01-26T10:00", moves });
    expect(seen.body.error.problems).toMatchObject([{ path: "moves" }]);
  });

  test("no vehicle is ever booked twice, and of two that want the last vehicle one has it", async () => {
    here.depot.at("2027-01-05T09:00:00.000Z");
    const span = ["2027-02-01T14:00", "2027-02-05T10:00"] as const;
    const [a, b] = [await bookedHire("Pia", ...span, "pv2"), await bookedHire("Quin", ...span, "pv2-b")];
    const change = { kind: "vehicle", vehicleId: "pv2-c", reason: "Both want it", offTheRoadTo: null };
    const seen = [(await look(a, change)).body, (await look(b, change)).body];
    expect(seen.map(({ canConfirm }) => canConfirm)).toEqual([true, true]);
    const both = await Promise.all([confirm(a, change, seen[0].hash), confirm(b, change, seen[1].hash)]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    expect(await isDoubleBooked()).toBe(false);
  });

  test("no sequence of changes books a vehicle twice, and what is only looked at changes nothing", async () => {
    here.depot.at("2027-02-20T09:00:00.000Z");
    const hires = [
      await bookedHire("Ros", "2027-03-01T14:00", "2027-03-05T10:00", "pv2"),
      await bookedHire("Sol", "2027-03-05T15:00", "2027-03-09T10:00", "pv2"),
      await bookedHire("Tam", "2027-03-02T14:00", "2027-03-08T10:00", "pv2-b"),
    ];
    const day = (n: number) => `2027-03-${String(n).padStart(2, "0")}T10:00`;
    const change = fc.oneof(
      fc.record({
        kind: fc.constant("vehicle"),
        vehicleId: fc.constantFrom("pv2", "pv2-b", "pv2-c"),
        reason: fc.constant("A test"),
        offTheRoadTo: fc.constant(null),
      }),
      fc.record({
        kind: fc.constant("extension"),
        to: fc.integer({ min: 5, max: 16 }).map(day),
        moves: fc.oneof(
          fc.constant([]),
          fc.constantFrom("pv2-b", "pv2-c").map((vehicleId) => [{ hireId: hires[1]!, vehicleId }]),
        ),
      }),
      fc.record({
        kind: fc.constant("early"),
        to: fc.integer({ min: 4, max: 10 }).map(day),
        backPence: fc.constant(0),
      }),
    );
    const step = fc.record({ hire: fc.constantFrom(...hires), change, confirmed: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 4 }), async (steps) => {
        for (const { hire, change: asked, confirmed } of steps) {
          const before = await everything();
          const seen = await look(hire, asked);
          expect(await everything()).toEqual(before);
          if (!confirmed || seen.status !== 200) continue;
          const { status } = await confirm(hire, asked, seen.body.hash);
          expect(status).toBe(seen.body.canConfirm ? 200 : 409);
          if (status !== 200) expect(await everything()).toEqual(before);
          expect(await isDoubleBooked()).toBe(false);
          expect(await isBookedAsItSays()).toBe(true);
        }
      }),
      { numRuns: 12 },
    );
  }, 120_000);
});
