import { type Figure, figure } from "../../base/figure.ts";
import type { Finding, Mend, Severity } from "../../base/finding.ts";
import { boilingPointC } from "../../formulas/lpg.ts";
import { shownChancePct } from "../../formulas/trip.ts";
import type { StoreId } from "../../stores/stores.ts";
import { COLD_OUTSIDE_C } from "../../systems/running.ts";
import { isOffered } from "./do-acts.ts";
import { driveLow } from "./drive-low.ts";
import { findLowNotes } from "./find-low-notes.ts";
import type { TripPlan } from "./plan-trip.ts";
import { findWeakPost } from "./posts/find-weak-post.ts";
import type { TripRecorder } from "./record-trip.ts";
import type { StoreForecast, TripForecast } from "./types.ts";

/** From this chance on the trip only goes with a change; below the other nothing is said: policy of the tool, practice. */
const CONDITION_FROM = 0.2;
const NOTE_FROM = 0.05;
const LOW_SHARE = 0.35;
/** pressure that still feeds the regulator, bar absolute, as the gas system takes it */
const LEAST_BAR = 1.05;

const CODES: Readonly<Partial<Record<StoreId, string>>> = {
  battery12: "trip.batteryTrouble",
  lpg: "trip.lpgTrouble",
  freshWater: "trip.freshWaterTrouble",
  wasteWater: "trip.wasteWaterTrouble",
  cassette: "trip.cassetteTrouble",
  fuel: "trip.fuelTrouble",
  def: "trip.defTrouble",
  tractionBattery: "trip.tractionBatteryTrouble",
  starterBattery: "trip.starterBatteryTrouble",
};

/** Findings of the gates `resources` and `season`. */
export function findTripTrouble(plan: TripPlan, recorder: TripRecorder, forecast: TripForecast): Finding[] {
  return [
    ...forecast.stores.flatMap((store) => storeTrouble(plan, store, hasColdNight(forecast))),
    ...frost(plan, recorder),
    ...butane(plan, recorder),
    ...actsNotOffered(plan),
    ...findWeakPost(forecast.posts ?? []),
    ...findLowNotes(plan, forecast),
    ...weakClimate(forecast),
  ];
}

function severityOf(chance: number): Severity | null {
  return chance >= CONDITION_FROM ? "condition" : chance >= NOTE_FROM ? "note" : null;
}

function chanceFigure(chance: number, runs: number): Figure {
  return figure(shownChancePct(chance), "%", "trip.chance", { chance, runs }, "computed");
}

function storeTrouble(plan: TripPlan, store: StoreForecast, isCold: boolean): Finding[] {
  const { chance } = store.trouble;
  const severity = severityOf(chance);
  const code = CODES[store.store];
  if (code === undefined) return [];
  if (severity === null)
    return [
      ...batteryLow(plan, store, isCold),
      ...driveLow(plan, store, () => mendsFor(plan, store, null, isCold)),
    ];
  const at = store.trouble.middleAt ?? null;
  return [
    {
      code,
      gate: "resources",
      severity,
      basis: "physics",
      about: store.store,
      facts: {
        chance: chanceFigure(chance, plan.input.runs),
        usable: store.capacityAh ?? store.capacity,
        usePerDay: store.usePerDayAh ?? store.usePerDay,
        at: at ?? "",
        night: at === null ? 0 : nightOf(plan, at),
        stop: at === null ? "none" : placeAt(plan, at),
        mainDraw: store.draws[0]?.kind ?? "none",
        mainShare: figure(
          Math.round((store.draws[0]?.share ?? 0) * 100),
          "%",
          "-",
          { runs: plan.input.runs },
          "computed",
        ),
      },
      sources: [],
      mends: mendsFor(plan, store, at, isCold),
    },
  ];
}

/** No trouble, but little left at the worst hour of the lower tenth of the lives: worth saying, since habits differ. */
function batteryLow(plan: TripPlan, store: StoreForecast, isCold: boolean): Finding[] {
  if (store.store !== "battery12") return [];
  const { input, timeline } = plan;
  const { p10 } = store.band;
  const least = Math.min(...p10);
  if (least > LOW_SHARE * store.capacity.value) return [];
  const hour = p10.indexOf(least);
  return [
    {
      code: "trip.batteryLow",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: store.store,
      facts: {
        left: figure(
          Math.round((least / store.capacity.value) * 100),
          "%",
          "-",
          { runs: input.runs, share: 0.1 },
          "computed",
        ),
        at: timeline.localAt(Math.min(hour, timeline.steps * timeline.dtH)),
        usable: store.capacityAh!,
        usePerDay: store.usePerDayAh!,
      },
      sources: [],
      mends: mendsFor(plan, store, null, isCold),
    },
  ];
}

/** Nights are counted from noon to noon, the first from the day of departure. */
function nightOf({ input, timeline }: TripPlan, at: string): number {
  const step = Math.min(timeline.stepAt(at), timeline.steps - 1);
  const noonShift = timeline.clockH[0]! < 12 ? 0 : 0.5;
  const days = timeline.day[step]! + timeline.clockH[step]! / 24 - 0.5;
  return Math.max(1, Math.floor(days) + 1, input.trip.stops.length === 0 ? 1 : Math.ceil(days - noonShift));
}

function placeAt({ input, timeline }: TripPlan, at: string): string {
  const step = timeline.stepAt(at);
  const stop = timeline.stops.findIndex(({ arrive, leave }) => step >= arrive && step <= leave);
  return stop < 0 ? "none" : input.trip.stops[stop]!.place.name;
}

/** Some night of the trip is cold enough for the heater to run. */
function hasColdNight({ stops }: TripForecast): boolean {
  return stops.some(({ coldestNightC }) => coldestNightC !== null && coldestNightC.p10 < COLD_OUTSIDE_C);
}

const isOffPost = ({ stops }: TripPlan["input"]["trip"]) =>
  stops.some(({ acts, pitch }) => !acts.includes("plugIn") || pitch.postAmperes === 0);

function mendsFor(
  { input, timeline }: TripPlan,
  store: StoreForecast,
  at: string | null,
  isCold: boolean,
): Mend[] {
  const step = at === null ? timeline.steps : timeline.stepAt(at);
  const before = input.trip.stops.filter((_, index) => timeline.stops[index]!.arrive <= step);
  const without = (
    act: "plugIn" | "fillWater" | "emptyWaste" | "emptyCassette" | "exchangeLpg",
    mend: string,
  ): Mend[] =>
    before
      .filter((stop) => !stop.acts.includes(act) && isOffered(stop, act))
      .map((stop): Mend => ({ code: mend, facts: { stop: stop.place.name } }));
  const plain = (code: string): Mend => ({ code, facts: {} });
  // silly in July is worse than silent
  const cooler = isCold ? [plain("trip.lowerNightHeating")] : [];
  switch (store.store) {
    case "battery12":
      return [
        ...without("plugIn", "trip.plugIn"),
        ...(isOffPost(input.trip) ? [plain("trip.hookUpEverySecondNight")] : []),
        ...cooler,
      ];
    case "lpg":
      return [
        ...without("exchangeLpg", "trip.exchangeLpg"),
        plain((input.trip.departWith.lpg ?? 1) < 1 ? "trip.fullCylinders" : "trip.addLpgStop"),
        ...cooler,
      ];
    case "freshWater":
      return [...without("fillWater", "trip.fillWater"), plain("trip.useLessWater")];
    case "wasteWater":
      return [...without("emptyWaste", "trip.emptyWaste"), plain("trip.addServicePoint")];
    case "cassette":
      return [...without("emptyCassette", "trip.emptyCassette"), plain("trip.addServicePoint")];
    case "fuel":
      return [plain("trip.fillFuel")];
    case "def":
      return [plain("trip.fillDef")];
    case "tractionBattery":
      return [...without("plugIn", "trip.plugIn"), plain("trip.chargeOnTheWay"), ...cooler];
    case "starterBattery":
      return [plain("trip.driveAnHour")];
    default:
      return [];
  }
}

/** The frost valve drops the water where the cabin falls below its temperature: heating off, or out of gas or battery. */
function frost({ input, systems }: TripPlan, { spread, cabinLeast }: TripRecorder): Finding[] {
  const valve = systems.find(({ spec }) => typeof spec.frostValveC === "number" && spec.frostValveC > 0);
  if (valve === undefined) return [];
  const opensC = valve.spec.frostValveC as number;
  const chance = spread.chance((i) => cabinLeast[i]! < opensC);
  const severity = severityOf(chance);
  if (severity === null) return [];
  const [p10] = spread.quantiles(cabinLeast, [0.1]);
  return [
    {
      code: "trip.frostValve",
      gate: "season",
      severity,
      basis: "physics",
      about: valve.id,
      facts: {
        chance: chanceFigure(chance, input.runs),
        opensAt: figure(opensC, "°C", "-", {}, "declared"),
        coldestCabin: figure(Math.round(p10!), "°C", "-", { share: 0.1 }, "computed"),
      },
      sources: [],
      mends: [
        { code: "trip.heatAtNight", facts: {} },
        { code: "trip.pumpOffAtNight", facts: {} },
        { code: "trip.drainWater", facts: {} },
      ],
    },
  ];
}

function butane({ input, systems }: TripPlan, { spread, coldest }: TripRecorder): Finding[] {
  const gas = systems.find(({ kind, spec }) => kind === "lpg" && spec.fuel === "butane");
  if (gas === undefined) return [];
  const butaneStopsC = boilingPointC("butane", LEAST_BAR);
  const chance = spread.chance((i) => coldest.some((least) => least[i]! < butaneStopsC));
  const severity = severityOf(chance);
  if (severity === null) return [];
  return [
    {
      code: "trip.butaneCold",
      gate: "season",
      severity,
      basis: "physics",
      about: gas.id,
      facts: {
        chance: chanceFigure(chance, input.runs),
        stopsAt: figure(
          butaneStopsC,
          "°C",
          "gas.boilingPoint",
          { fuel: "butane", pressureBar: LEAST_BAR },
          "computed",
        ),
      },
      sources: [],
      mends: [{ code: "trip.takePropane", facts: {} }],
    },
  ];
}

function actsNotOffered({ input }: TripPlan): Finding[] {
  return input.trip.stops.flatMap((stop, index) =>
    stop.acts
      .filter((act) => !isOffered(stop, act))
      .map(
        (act): Finding => ({
          code: "trip.actNotOffered",
          gate: "resources",
          severity: "condition",
          basis: "policy",
          about: `stops.${index}`,
          facts: { stop: stop.place.name, act },
          sources: [],
          mends: [],
        }),
      ),
  );
}

function weakClimate({ notes }: TripForecast): Finding[] {
  const weak = notes.filter((note) => note.weak && note.forecastDays === 0);
  if (weak.length === 0) return [];
  return [
    {
      code: "trip.weakClimate",
      gate: "resources",
      severity: "note",
      basis: "physics",
      facts: { places: weak.length, station: weak[0]!.nearestStation, distance: weak[0]!.distance },
      sources: [],
      mends: [],
    },
  ];
}
