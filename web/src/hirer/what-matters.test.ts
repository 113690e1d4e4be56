import type { StoreForecast, TripForecast } from "@setfair/engine/trip";
import { describe, expect, it } from "vitest";
import { feetAndInches } from "./height.ts";
import { civilNow } from "./local-time.ts";
import { inHundred, overAs, whatMatters } from "./what-matters.ts";

const store = (id: StoreForecast["store"], chance: number, p50At: string | null) =>
  ({
    store: id,
    troubleAt: "empty",
    trouble: { chance, p10At: p50At, p50At, p90At: null },
  }) as unknown as StoreForecast;
const forecast = (stores: readonly StoreForecast[]) =>
  ({
    stores,
    readings: [],
    lastsChance: 0.93,
    stops: [
      { name: "Aviemore", arrive: "2026-07-03T17:00", leave: "2026-07-05T10:00" },
      { name: "Ullapool", arrive: "2026-07-05T15:00", leave: "2026-07-07T10:00" },
    ],
  }) as unknown as TripForecast;

describe("what matters most", () => {
  it("names the likeliest trouble, and the last place before it where it can be mended", () => {
    const stores = [store("lpg", 0.2, "2026-07-09T08:00"), store("battery12", 0.71, "2026-07-06T05:00")];
    expect(whatMatters(forecast(stores), "2026-07-03T18:00")).toEqual({
      kind: "trouble",
      store: "battery12",
      chanceIn100: 70,
      by: "2026-07-06T05:00",
      stop: "Ullapool",
      isPast: false,
      troubleAt: "empty",
    });
  });

  it("sends nobody to a pitch where nothing can be done", () => {
    const stores = [store("cassette", 0.7, "2026-07-06T05:00")];
    const pitch = {
      postAmperes: 10,
      freshWater: true,
      wasteDrain: true,
      cassettePoint: true,
      lpgExchange: false,
    };
    const trip = (...points: readonly boolean[]) => ({
      stops: points.map((cassettePoint) => ({ acts: [], pitch: { ...pitch, cassettePoint } })) as never,
    });
    const at = (some: ReturnType<typeof trip>) => whatMatters(forecast(stores), "2026-07-03T18:00", some);
    expect(at(trip(true, true))).toMatchObject({ stop: "Ullapool" });
    expect(at(trip(true, false))).toMatchObject({ stop: "Aviemore" });
    expect(at(trip(false, false))).toMatchObject({ stop: null });
  });

  it("does not name as the remedy what the plan does there already, since the trouble comes all the same", () => {
    const stores = [store("battery12", 0.95, "2026-07-06T05:00")];
    const stop = (...acts: readonly string[]) => ({ acts, pitch: { postAmperes: 10 } });
    const at = (...stops: readonly unknown[]) =>
      whatMatters(forecast(stores), "2026-07-03T18:00", { stops: stops as never });
    expect(at(stop("plugIn"), stop())).toMatchObject({ stop: "Ullapool" });
    expect(at(stop(), stop("plugIn"))).toMatchObject({ stop: "Aviemore" });
    expect(at(stop("plugIn"), stop("plugIn"))).toMatchObject({ stop: null });
  });

  it("says of a trouble that most likely was before now that nobody has looked", () => {
    const stores = [store("battery12", 0.7, "2026-07-06T05:00")];
    expect(whatMatters(forecast(stores), "2026-07-06T08:00")).toMatchObject({
      isPast: true,
      chanceIn100: 70,
    });
  });

  it("takes the time by which half of those in trouble have met it, where the forecast knows it", () => {
    const battery = store("battery12", 0.3, null);
    const known = { ...battery, trouble: { ...battery.trouble, middleAt: "2026-07-06T02:00" } };
    expect(whatMatters(forecast([known]), "2026-07-05T08:00")).toMatchObject({ by: "2026-07-06T02:00" });
  });

  it("puts what was read at its end just now before every chance", () => {
    const full = { ...store("wasteWater", 0, null), capacity: { value: 80 }, troubleAt: "full" };
    const read = { store: "wasteWater", at: "2026-07-03T17:00", level: { value: 79 } };
    const trip = {
      ...forecast([full as unknown as StoreForecast]),
      readings: [read],
    } as unknown as TripForecast;
    expect(whatMatters(trip, "2026-07-03T18:00")).toEqual({ kind: "now", store: "wasteWater" });
    expect(whatMatters(trip, "2026-07-04T18:00").kind).toBe("lasts");
  });

  it("says that it should last where no trouble is worth the first line", () => {
    expect(whatMatters(forecast([store("lpg", 0.05, null)]), "2026-07-03T18:00")).toEqual({
      kind: "lasts",
      chanceIn100: 95,
    });
  });

  it("knows when the trip is over, since a forecast of hours that are gone is worse than silence", () => {
    const to = "2026-07-10T10:00";
    expect(overAs({ stage: "onHire", to }, "2026-07-10T10:00")).toBe(null);
    expect(overAs({ stage: "onHire", to }, "2026-07-10T10:01")).toBe("late");
    expect(overAs({ stage: "returned", to }, "2026-07-09T09:00")).toBe("back");
    expect(overAs({ stage: "booked", to }, "2026-07-11T09:00")).toBe(null);
  });

  it("names no place that is already behind the hirer", () => {
    const answer = whatMatters(forecast([store("battery12", 0.7, "2026-07-08T05:00")]), "2026-07-07T12:00");
    expect(answer).toMatchObject({ kind: "trouble", stop: null });
  });

  it("never says none or all of a hundred for what is not certain", () => {
    expect([0, 0.004, 0.5, 0.996, 1].map(inHundred)).toEqual([0, 5, 50, 95, 100]);
  });

  it("rounds the height up in feet and inches, since it is for bridges", () => {
    expect(feetAndInches(2.89)).toEqual({ feet: 9, inches: 6 });
    expect(feetAndInches(3.0)).toEqual({ feet: 9, inches: 11 });
    expect(feetAndInches(3.048)).toEqual({ feet: 10, inches: 0 });
    expect(feetAndInches(3.049)).toEqual({ feet: 10, inches: 1 });
  });

  it("tells the time on the clock of the trip, not of the phone", () => {
    const instant = new Date("2026-07-03T22:30:00Z");
    expect(civilNow("Europe/London", instant)).toBe("2026-07-03T23:30");
    expect(civilNow("Europe/Paris", instant)).toBe("2026-07-04T00:30");
  });
});
