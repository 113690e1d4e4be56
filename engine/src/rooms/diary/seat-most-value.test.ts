import fc from "fast-check";
import { expect, it } from "vitest";
import { drawsFor } from "../../base/draws.ts";
import { modelAllocation } from "./allocation-model.ts";
import { parseAllocation } from "./parse-allocation.ts";
import { seatable, seatByValue, seatMoreValue } from "./seat-most-value.ts";
import { emptySeating, type Seating } from "./seating.ts";

const time = (hour: number) => new Date(Date.UTC(2026, 4, 1, hour)).toISOString();

/** More hires than three vehicles hold, of differing value. */
const crowded = fc
  .array(
    fc.record({
      start: fc.integer({ min: 0, max: 30 }),
      length: fc.integer({ min: 2, max: 14 }),
      value: fc.integer({ min: 1, max: 9 }),
      vehicles: fc.uniqueArray(fc.nat({ max: 2 }), { minLength: 1, maxLength: 3 }),
    }),
    { minLength: 6, maxLength: 16 },
  )
  .map((hires) =>
    modelAllocation(
      parseAllocation({
        objective: "plan",
        vehicles: [0, 1, 2].map((k) => ({ id: `v${k}` })),
        hires: hires.map(({ start, length, value, vehicles }, k) => ({
          id: `h${k}`,
          from: time(start),
          to: time(start + length),
          value,
          vehicles: vehicles.map((v) => `v${v}`),
        })),
      }),
    ),
  );
const seatedValue = ({ model, on }: Seating) =>
  on.reduce((sum, vehicle, hire) => sum + (vehicle < 0 ? 0 : model.value[hire]!), 0);

it("searching on never loses value, and stops at the bound where that is reached", () => {
  let gained = 0;
  fc.assert(
    fc.property(crowded, (model) => {
      const seating = emptySeating(model);
      const open = new Uint8Array(model.vehicles).fill(1);
      let steps = 0;
      const search = {
        seating,
        open,
        keepNow: false,
        draw: drawsFor(1, "allocate"),
        isOver: () => ++steps > 3000,
      };
      seatByValue(search);
      const before = seatedValue(seating);
      const most = seatable(model).reduce((sum, hire) => sum + model.value[hire]!, 0);
      seatMoreValue(search, most);
      const after = seatedValue(seating);
      expect(after).toBeGreaterThanOrEqual(before);
      expect(after).toBeLessThanOrEqual(most);
      gained += after - before;
    }),
    { numRuns: 60, seed: 3 },
  );
  expect(gained).toBeGreaterThan(0);
});
