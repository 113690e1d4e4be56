import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeOf, type Held, isGood, spanOf } from "./stock-time.ts";
import type { StockItem } from "./types.ts";

const chairs: StockItem = { id: "chairs", kind: "chair", name: "Chairs", count: 6 };
const heldFrom = (start: number, ready: number, count = 1, itemId = "chairs"): Held => ({
  start,
  ready,
  hold: { itemId, hireId: "h", count, from: "", to: "", packed: false },
});

describe("how many of a thing are free", () => {
  it("is what nobody has at the fullest hour of the period, hour by hour", () => {
    const hour = fc.integer({ min: 0, max: 12 });
    const period = fc
      .tuple(hour, fc.integer({ min: 1, max: 6 }))
      .map(([start, length]) => [start, start + length]);
    fc.assert(
      fc.property(
        period,
        fc.array(fc.tuple(period, fc.integer({ min: 1, max: 3 })), { maxLength: 6 }),
        ([start = 0, ready = 0], others) => {
          const held = others.map(([[from = 0, to = 0], count]) => heldFrom(from, to, count));
          const usedAt = (at: number) =>
            held.reduce((sum, each) => sum + (each.start <= at && at < each.ready ? each.hold.count : 0), 0);
          const hours = Array.from({ length: ready - start }, (_, k) => usedAt(start + k));
          expect(freeOf(chairs, { start, ready }, held)).toBe(Math.max(0, 6 - Math.max(...hours)));
        },
      ),
    );
  });

  it("counts nobody's other things", () => {
    expect(freeOf(chairs, { start: 0, ready: 5 }, [heldFrom(0, 5, 6, "tables")])).toBe(6);
  });

  it("ends with the turnaround after it is back, in the clock of the depot", () => {
    const span = (from: string, to: string) =>
      spanOf(from, to, { timeZone: "Europe/London", turnaroundMinutes: 120 });
    const { start, ready } = span("2026-07-01T10:00", "2026-07-01T12:00");
    expect(ready - start).toBe(4 * 3_600_000);
    // over the night in which the clocks go forward an hour is lost
    const spring = span("2026-03-28T10:00", "2026-03-29T10:00");
    expect(spring.ready - spring.start).toBe((23 + 2) * 3_600_000);
  });

  it("is good through the last day of the hire, and not on the day it is retired", () => {
    const good = (change: Partial<StockItem>) => isGood({ ...chairs, ...change }, "2026-07-17T10:00");
    expect([good({}), good({ expiresOn: "2026-07-17" }), good({ expiresOn: "2026-07-16" })]).toEqual([
      true,
      true,
      false,
    ]);
    expect([good({ retiredOn: "2026-07-18" }), good({ retiredOn: "2026-07-17" })]).toEqual([true, false]);
  });
});
