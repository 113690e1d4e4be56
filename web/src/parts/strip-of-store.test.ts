import type { StoreForecast, TripForecast } from "@setfair/engine";
import { describe, expect, it } from "vitest";
import { stripOf } from "./strip-of-store.ts";

const forecast = {
  axis: { hours: [0, 24, 48], at: ["2026-07-03T12:00", "2026-07-04T12:00", "2026-07-05T12:00"] },
} as unknown as TripForecast;
const store = (trouble: object): StoreForecast =>
  ({
    store: "lpg",
    capacity: { value: 10 },
    band: { p10: [10, 5, 0], p50: [10, 6, 2], p90: [10, 8, 6] },
    trouble: { p10At: null, p50At: null, p90At: null, ...trouble },
  }) as unknown as StoreForecast;

describe("the strip of a store", () => {
  it("is drawn in shares of its capacity, on the hours of the road", () => {
    const strip = stripOf(store({ chance: 0 }), forecast, "empty");
    expect(strip).toMatchObject({ p10: [1, 0.5, 0], p50: [1, 0.6, 0.2], hours: [0, 24, 48], trouble: null });
  });

  it("marks trouble where it most likely comes, and none that is noise of the draws", () => {
    const likely = { chance: 0.3, p10At: "2026-07-04T00:00", middleAt: "2026-07-04T12:00" };
    expect(stripOf(store(likely), forecast, "empty").trouble).toEqual({ share: 0.5, text: "empty" });
    expect(stripOf(store({ ...likely, chance: 0.04 }), forecast, "empty").trouble).toBeNull();
  });

  it("goes by the middle of all lives, then by the early tenth, where a forecast was kept from before", () => {
    const old = { chance: 0.3, p10At: "2026-07-04T00:00" };
    expect(stripOf(store(old), forecast, "empty").trouble!.share).toBe(0.25);
    expect(stripOf(store({ ...old, p50At: "2026-07-05T12:00" }), forecast, "").trouble!.share).toBe(1);
  });
});
