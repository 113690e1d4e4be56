import { describe, expect, it } from "vitest";
import { forecastTrip } from "../forecast-trip.ts";
import { mayHighlands, newYearMountains } from "../try-trips.ts";
import type { TripInput } from "../types.ts";
import { findTornado } from "./find-tornado.ts";

const winter = newYearMountains();
const inputsOf = (raw: TripInput, store: Parameters<typeof findTornado>[1]) =>
  findTornado(raw, store)!.bars.map(({ input }) => input);

describe("what moves the answer most", () => {
  it("gives at most five inputs, the widest first, with the same answer each time", () => {
    const first = findTornado(winter, "battery12")!;
    expect(first.bars.length).toBeGreaterThan(1);
    expect(first.bars.length).toBeLessThanOrEqual(5);
    const swings = first.bars.map(({ swing }) => swing);
    expect(swings).toEqual([...swings].sort((a, b) => b - a));
    expect(findTornado(winter, "battery12")).toEqual(first);
  });

  it("its answer with nothing held is that of the forecast with as many lives", () => {
    const may = mayHighlands();
    const input = { ...may, trip: { ...may.trip, departWith: { cassette: 0.4 } } };
    const tornado = findTornado(input, "cassette")!;
    const { stores } = forecastTrip({ ...input, runs: tornado.runs }).result;
    const { trouble } = stores.find(({ store }) => store === "cassette")!;
    expect(tornado.by).toBe("chance");
    expect(tornado.base.value).toBeCloseTo(100 * trouble.chance, 9);
  });

  it("only the toilet's own habit fills the cassette", () => {
    expect(inputsOf(mayHighlands(), "cassette")).toEqual(["toilet"]);
  });

  it("gas in winter hangs on cold, on the thermostat and on the van's own loss", () => {
    const { bars, by } = findTornado(
      { ...winter, trip: { ...winter.trip, departWith: { lpg: 0.5 } } },
      "lpg",
    )!;
    expect(bars.map(({ input }) => input)).toEqual(
      expect.arrayContaining(["temperature", "thermostat", "loss"]),
    );
    const cold = bars.find(({ input }) => input === "temperature")!;
    expect(cold.inputLow!.value).toBeLessThan(cold.inputHigh!.value);
    // colder: sooner, more often or with less left, whichever is asked
    if (by === "chance") expect(cold.low.value).toBeGreaterThan(cold.high.value);
    else expect(cold.low.value).toBeLessThan(cold.high.value);
  });

  it("more sun leaves more in the battery in May", () => {
    const tornado = findTornado(mayHighlands(), "battery12")!;
    const sun = tornado.bars.find(({ input }) => input === "sun");
    expect(sun).toBeDefined();
    if (tornado.by === "chance") expect(sun!.high.value).toBeLessThanOrEqual(sun!.low.value);
    else expect(sun!.high.value).toBeGreaterThan(sun!.low.value);
  });

  it("takes the store most likely in trouble where none is named", () => {
    const { stores } = forecastTrip({ ...winter, runs: 200 }).result;
    const worst = [...stores].sort((a, b) => b.trouble.chance - a.trouble.chance)[0]!;
    expect(findTornado(winter)!.store).toBe(worst.store);
  });

  it("names the field for a store that the vehicle does not have", () => {
    expect(() => findTornado(winter, "tractionBattery")).toThrow(/store/);
  });
});
