import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakerVerdict } from "../../../formulas/mains.ts";
import { forecastTrip } from "../forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan, stopAt } from "../try-trips.ts";
import type { TripInput } from "../types.ts";
import type { PostForecast } from "./types.ts";

type System = TripInput["vehicle"]["systems"][number];

/** One winter week on a post of so many amperes. */
function onPost(postAmperes: number, change: (system: System) => System | System[] = (system) => system) {
  const vehicle = panelVan();
  const stop = stopAt("2026-12-29T16:00", "2027-01-02T11:00", true);
  const { trip, ...input } = newYearMountains();
  const answer = forecastTrip({
    ...input,
    runs: 40,
    vehicle: { ...vehicle, systems: vehicle.systems.flatMap(change) },
    trip: { ...trip, stops: [{ ...stop, pitch: { ...stop.pitch, postAmperes } }] },
  });
  return { post: answer.result.posts![0]!, findings: answer.findings };
}
const withSpec = (id: string, spec: object) => (system: System) =>
  system.id === id ? { ...system, spec: { ...system.spec, ...spec } } : system;
const alone = (post: PostForecast, kind: string) => post.alone.find((one) => one.kind === kind)!;
const kept = (post: PostForecast, kind: string) => post.kept.find((one) => one.kind === kind)!;
const before = (post: PostForecast, kind: string) => post.before.find((one) => one.kind === kind)!;

describe("what trips a post", () => {
  it("an ordinary kettle alone can trip 6 A, may trip 10 A, and 16 A carries it", () => {
    const [six, ten, sixteen] = [6, 10, 16].map((amperes) => alone(onPost(amperes).post, "kettle"));
    expect(six).toMatchObject({ verdict: "trips", verdictAtLeast: "trips" });
    expect(ten).toMatchObject({ verdict: "mayTrip", verdictAtLeast: "fits" });
    expect(sixteen).toMatchObject({ verdict: "fits", latest: null });
    expect(six!.latest!.value).toBeLessThan(5);
  });

  it("a kettle made for travel is boiled on 6 A with heater and fridge off", () => {
    const { post } = onPost(6);
    expect(alone(post, "smallKettle").verdict).toBe("fits");
    expect(before(post, "smallKettle").fits).toBe(true);
    expect(before(post, "smallKettle").shed.map(({ kind, toW }) => [kind, toW])).toEqual([
      ["heating", 0],
      ["fridge", 0],
    ]);
    expect(before(post, "kettle")).toMatchObject({ fits: false, shed: [] });
  });

  it("the heating stage that fits falls with the post: all of 1.8 kW on 16 A and 10 A, half on 6 A, none on 4 A", () => {
    const stages = [16, 10, 6, 4].map((amperes) => kept(onPost(amperes).post, "heating").stage.value);
    expect(stages).toEqual([1800, 1800, 900, 0]);
  });

  it("sheds from the end of the forecast's own order, the charger last", () => {
    const { post } = onPost(10);
    const { shed, fits } = before(post, "hairDryer");
    expect(fits).toBe(true);
    expect(shed[0]).toMatchObject({ kind: "heating" });
    expect(shed.map(({ kind }) => kind)).not.toContain("charging");
  });

  it("a combined heater's element counts once, a water heater of its own beside it", () => {
    expect(onPost(16).post.kept.map(({ kind }) => kind)).not.toContain("hotWater");
    const apart = onPost(16, withSpec("heater", { withHotWater: false })).post;
    expect(kept(apart, "hotWater").stage.value).toBe(900);
  });

  it("a heater told to burn gas draws nothing from the post, the hot water set by itself still does", () => {
    const vehicle = panelVan();
    const { trip, ...input } = newYearMountains();
    const answer = forecastTrip({
      ...input,
      runs: 20,
      vehicle,
      trip: {
        ...trip,
        stops: [stopAt("2026-12-29T16:00", "2027-01-02T11:00", true)],
        settings: { heater: { source: "gas" } },
      },
    });
    expect(answer.result.posts![0]!.kept.map(({ kind }) => kind)).toEqual(["charging", "fridge", "hotWater"]);
  });

  it("a heater set to its lower stage draws that and no more, and burns more gas for it", () => {
    const at = (electricW: number) => {
      const { trip, ...input } = newYearMountains();
      const stops = [stopAt("2026-12-29T16:00", "2027-01-02T11:00", true)];
      const { result } = forecastTrip({
        ...input,
        runs: 20,
        trip: { ...trip, stops, settings: { heater: { electricW } } },
      });
      const gas = result.stores.find(({ store }) => store === "lpg")!.draws;
      return {
        stage: kept(result.posts![0]!, "heating").stage.value,
        gasKg: gas.find(({ kind }) => kind === "heating")?.amount.value ?? 0,
      };
    };
    expect(at(900).stage).toBe(900);
    expect(at(5000).stage).toBe(1800);
    expect(at(900).gasKg).toBeGreaterThan(at(1800).gasKg);
  });

  it("says nothing of the heater where the nights are warm, nor of a stop without a post", () => {
    const may = mayHighlands();
    const coast = {
      name: "South coast",
      country: "ES",
      latitudeDeg: 36.7,
      longitudeDeg: -4.4,
      elevationM: 10,
    };
    const stops = [
      stopAt("2026-08-09T18:00", "2026-08-11T10:00", true, coast),
      stopAt("2026-08-11T15:00", "2026-08-13T10:00", false, coast),
    ];
    const trip = { ...may.trip, stops, depart: "2026-08-09T14:00", return: "2026-08-13T18:00" };
    const { posts } = forecastTrip({
      ...may,
      runs: 100,
      trip: { ...trip, timeZone: "Europe/Madrid" },
    }).result;
    expect(posts).toHaveLength(1);
    expect(posts![0]!.kept.map(({ kind }) => kind)).toEqual(["charging", "fridge", "hotWater"]);
  });

  it("the voltage at the vehicle falls with length and current and rises with the area of the lead", () => {
    const volts = (amperes: number, leadLengthM: number, leadAreaMm2: number) =>
      onPost(amperes, withSpec("hook-up", { leadLengthM, leadAreaMm2 })).post;
    // 19 mV/A/m × 16 A × 25 m = 7.6 V, the printed table for 2.5 mm²
    expect(volts(16, 25, 2.5).volts.value).toBeCloseTo(222.4, 9);
    expect(volts(16, 25, 2.5).isLow).toBe(false);
    expect(volts(16, 50, 1.5).isLow).toBe(true);
    expect(volts(6, 25, 2.5).volts.value).toBeGreaterThan(volts(10, 25, 2.5).volts.value);
  });

  it("tells of the usual ratings too, for a post that nobody planned", () => {
    const { usualPosts, posts } = forecastTrip({ ...newYearMountains(), runs: 20 }).result;
    expect(posts).toEqual([]);
    expect(usualPosts!.map(({ post }) => post.value)).toEqual([4, 6, 10, 16]);
    expect(
      usualPosts!.map(({ kept: all }) => all.find(({ kind }) => kind === "heating")!.stage.value),
    ).toEqual([0, 900, 1800, 1800]);
    const noInlet = panelVan();
    const vehicle = { ...noInlet, systems: noInlet.systems.filter(({ kind }) => kind !== "hookUp") };
    expect(forecastTrip({ ...newYearMountains(), vehicle, runs: 2 }).result.usualPosts).toEqual([]);
  });

  it("a lead left on its drum is held to what it carries wound up", () => {
    const { trip, ...input } = newYearMountains();
    const answer = forecastTrip({
      ...input,
      runs: 20,
      trip: {
        ...trip,
        stops: [stopAt("2026-12-29T16:00", "2027-01-02T11:00", true)],
        settings: { "hook-up": { leadOnDrum: true } },
      },
    });
    const post = answer.result.posts![0]!;
    expect(post.isOnDrum).toBe(true);
    expect(post.power.value).toBe(500);
    expect(kept(post, "heating").stage.value).toBe(0);
  });

  it("tells of the weakest post once, and of no post that carries all", () => {
    const codes = (amperes: number) =>
      onPost(amperes).findings.flatMap(({ code, severity }) => (code === "trip.weakPost" ? [severity] : []));
    expect(codes(6)).toEqual(["note"]);
    expect(codes(10)).toEqual([]);
    expect(codes(16)).toEqual([]);
  });

  it("what stays on together never asks more than the post gives, and more amperes never turn a stage down", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 31 }),
        fc.integer({ min: 300, max: 3600 }),
        (amperes, electricW) => {
          const stages = [amperes, amperes + 1].map((a) => {
            const { post } = onPost(a, withSpec("heater", { electricW }));
            const sum = post.kept.reduce((watts, { stage }) => watts + stage.value, 0);
            expect(sum).toBeLessThanOrEqual(post.limit.value * 230 + 1e-9);
            for (const { shed, power, fits } of post.before) {
              const after = post.kept.reduce(
                (watts, one) =>
                  watts + (shed.findLast(({ kind }) => kind === one.kind)?.toW ?? one.stage.value),
                power.value,
              );
              if (fits && after > post.limit.value * 230)
                // only what is not worth turning off is left
                expect(
                  post.kept.every(
                    (one) => one.stage.value < 100 || shed.some(({ kind }) => kind === one.kind),
                  ),
                ).toBe(true);
            }
            return kept(post, "heating").stage.value;
          });
          expect(stages[1]).toBeGreaterThanOrEqual(stages[0]!);
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe("the breaker of a post", () => {
  it("holds its rating, may trip above it, and trips sooner the more is drawn", () => {
    expect(breakerVerdict(10, 10)).toEqual({ verdict: "fits", latestMin: null });
    expect(breakerVerdict(11.3, 10).verdict).toBe("mayTrip");
    expect(breakerVerdict(14.5, 10)).toEqual({ verdict: "trips", latestMin: 60 });
    expect(breakerVerdict(25.5, 10).latestMin).toBeCloseTo(1, 9);
    expect(breakerVerdict(99, 10).latestMin).toBeCloseTo(1, 9);
    expect(breakerVerdict(20, 10).latestMin!).toBeLessThan(breakerVerdict(16, 10).latestMin!);
  });
});

describe("facts of the trade at a post, common practice without a source", () => {
  it("electric heater stages of 1 and 2 kW both run on 16 A with charger and fridge", () => {
    for (const electricW of [1000, 2000]) {
      const { post } = onPost(16, withSpec("heater", { electricW }));
      expect(kept(post, "heating").stage.value).toBe(electricW);
      expect(kept(post, "charging").stage.value).toBeGreaterThan(0);
      expect(kept(post, "fridge").stage.value).toBe(135);
    }
  });

  it("2 kW trip a post of 6 A and 1 kW do not", () => {
    expect(alone(onPost(6, withSpec("heater", { electricW: 2000 })).post, "heating").verdict).toBe("mayTrip");
    expect(alone(onPost(6, withSpec("heater", { electricW: 1000 })).post, "heating").verdict).toBe("fits");
  });
});
