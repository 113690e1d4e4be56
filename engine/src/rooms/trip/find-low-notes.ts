import { figure } from "../../base/figure.ts";
import type { Finding, Mend } from "../../base/finding.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { StoreForecast, TripForecast } from "./types.ts";

/** by the clock: nobody goes out to the gas locker, h */
const ASLEEP_FROM_H = 22;
const ASLEEP_TO_H = 7;
/** gas that has to run out under a heater for anybody to notice at night, °C outside: practice */
const COLD_NIGHT_C = 5;

/**
 * What is no trouble of a store but worth saying: a tank into its reserve, a cylinder that is empty in the night, a
 * cassette to change, a cylinder that is to be changed abroad.
 */
export function findLowNotes(plan: TripPlan, forecast: TripForecast): Finding[] {
  const byStore = forecast.stores.flatMap((store) => [
    ...intoReserve(plan, forecast, store),
    ...changeOverAtNight(plan, forecast, store),
    ...changeCassette(plan, forecast, store),
  ]);
  return [...byStore, ...exchangeAbroad(plan)];
}

function intoReserve({ input }: TripPlan, { ranges, axis }: TripForecast, store: StoreForecast): Finding[] {
  const range = ranges?.find((one) => one.store === store.store);
  // the battery that drives has a finding of its own, and what runs dry is trouble already
  if (range === undefined || store.store === "tractionBattery" || store.trouble.chance > 0) return [];
  const reserve = (range.reserve.value / 100) * store.capacity.value;
  const hour = store.band.p10.findIndex((level) => level < reserve);
  if (hour < 0) return [];
  const mend: Mend = { code: store.store === "def" ? "trip.fillDef" : "trip.fillFuel", facts: {} };
  return [
    {
      code: store.store === "def" ? "trip.defReserve" : "trip.fuelReserve",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: store.store,
      facts: {
        at: axis.at[hour]!,
        reserve: range.reserve,
        range: figure(
          Math.round(range.atDeparture.value),
          "km",
          "trip.range",
          range.atDeparture.inputs,
          "computed",
        ),
        road: range.road,
        runs: input.runs,
      },
      sources: [],
      mends: [mend],
    },
  ];
}

/** Cylinders are changed over by hand: in the middle life one of them is empty while everybody is asleep in the cold. */
function changeOverAtNight(
  { systems, timeline }: TripPlan,
  { axis, outsideC }: TripForecast,
  { store, band }: StoreForecast,
): Finding[] {
  if (store !== "lpg") return [];
  const gas = systems.find(
    ({ kind, spec }) => kind === "lpg" && Number(spec.cylinders) > 1 && spec.automaticChangeOver === false,
  );
  if (gas === undefined || gas.spec.arrangement === "tank") return [];
  const each = Number(gas.spec.kgEach);
  const hour = band.p50.findIndex((kg, k) => {
    const before = band.p50[k - 1];
    return before !== undefined && Math.ceil(kg / each) < Math.ceil(before / each) && kg > 0;
  });
  if (hour < 0) return [];
  const at = timeline.localAt(Math.min(axis.hours[hour]!, timeline.steps * timeline.dtH));
  const clockH = Number(at.slice(11, 13));
  const isAsleep = clockH >= ASLEEP_FROM_H || clockH < ASLEEP_TO_H;
  if (!isAsleep || outsideC.p50[hour]! > COLD_NIGHT_C) return [];
  return [
    {
      code: "trip.changeOverAtNight",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: gas.id,
      facts: { at, each: figure(each, "kg", "-", {}, "declared") },
      sources: [],
      mends: [{ code: "trip.changeOverInTheEvening", facts: {} }],
    },
  ];
}

/** With a spare aboard: when, in the middle life, the cassette in use is full and somebody changes it. */
function changeCassette(
  { systems }: TripPlan,
  { axis }: TripForecast,
  { store, band }: StoreForecast,
): Finding[] {
  if (store !== "cassette") return [];
  const toilet = systems.find(
    ({ kind, spec }) => kind === "cassetteToilet" && Number(spec.spareCassettes) > 0,
  );
  if (toilet === undefined) return [];
  const each = Number(toilet.spec.litres);
  const hour = band.p50.findIndex((litres) => litres >= each);
  if (hour < 0) return [];
  return [
    {
      code: "trip.cassetteChange",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: toilet.id,
      facts: { at: axis.at[hour]!, each: figure(each, "L", "-", {}, "declared") },
      sources: [],
      mends: [{ code: "trip.swapCassette", facts: {} }],
    },
  ];
}

/** Cylinders for exchange belong to a country's own suppliers: common practice, no source. */
function exchangeAbroad({ input: { trip }, systems }: TripPlan): Finding[] {
  const gas = systems.find(({ kind, spec }) => kind === "lpg" && spec.arrangement === "exchange");
  const abroad = trip.stops.findIndex(
    ({ acts, pitch, place }) =>
      pitch.lpgExchange && acts.includes("exchangeLpg") && place.country !== trip.depot.country,
  );
  if (gas === undefined || abroad < 0) return [];
  return [
    {
      code: "trip.exchangeAbroad",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: `stops.${abroad}`,
      facts: { stop: trip.stops[abroad]!.place.name },
      sources: [],
      mends: [{ code: "trip.fullCylinders", facts: {} }],
    },
  ];
}
