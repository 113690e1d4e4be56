import type { StopPlan } from "@setfair/engine";
import { expect, test } from "vitest";
import { isBetter } from "./better-plan.ts";

const asked = { stops: [{ settings: { heating: "low" } }, {}] };

/** A plan of the trip as it is asked for, but for what is said. */
function planOf(but: { added?: readonly string[]; cost?: number; settings?: object }) {
  const sum = (value: number) => ({ value, unit: "p" });
  return {
    cards: [{ added: but.added ?? [], dropped: [] }],
    trip: { stops: [{ settings: but.settings ?? { heating: "low" } }, {}] },
    objective: { asAsked: sum(420), withPlan: sum(but.cost ?? 420) },
  } as unknown as Pick<StopPlan, "cards" | "trip" | "objective">;
}

test("a plan that equals the trip as asked is not better: there is nothing to take", () => {
  expect(isBetter(planOf({}), asked)).toBe(false);
});

test("another act, another setting or less effort and trouble is something to take", () => {
  expect(isBetter(planOf({ added: ["fillWater"] }), asked)).toBe(true);
  expect(isBetter(planOf({ settings: { heating: "high" } }), asked)).toBe(true);
  expect(isBetter(planOf({ cost: 380 }), asked)).toBe(true);
});
