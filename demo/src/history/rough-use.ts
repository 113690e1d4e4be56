/**
 * What the invented hires of the past used: rules of thumb, day by day, written down without looking at what the
 * engine computes, so that forecast and outcome are two people's work. No step under a day but the split of a day
 * into morning and evening, no physics, a habit of the hirers and a quirk of each vehicle. Every number is a rule
 * of thumb without a source. See README.md beside this folder.
 */
import type { Stop, VehicleDescription } from "@setfair/engine";
import type { Draws } from "../season/draws.ts";

/** About normal, mean 0 and standard deviation 1: the sum of twelve draws. */
export function bell(draws: Draws): number {
  return Array.from({ length: 12 }, () => draws.share()).reduce((sum, share) => sum + share, -6);
}
const around = (draws: Draws, spread: number) => Math.exp(spread * bell(draws));

export const ROUGH_STORES = [
  "lpg",
  "fuel",
  "def",
  "freshWater",
  "wasteWater",
  "cassette",
  "battery12",
] as const;
export type RoughStore = (typeof ROUGH_STORES)[number];
export type Factors = Readonly<Record<RoughStore, number>>;

/** A factor for each store: what makes this vehicle, or these people, unlike others. */
export function factorsFrom(draws: Draws, spread: Factors): Factors {
  return Object.fromEntries(
    ROUGH_STORES.map((store) => [store, around(draws, spread[store])]),
  ) as unknown as Factors;
}
export const OF_VEHICLE: Factors = {
  lpg: 0.12,
  fuel: 0.06,
  def: 0.12,
  freshWater: 0.08,
  wasteWater: 0.05,
  cassette: 0.08,
  battery12: 0.12,
};
export const OF_PARTY: Factors = {
  lpg: 0.22,
  fuel: 0.07,
  def: 0.08,
  freshWater: 0.25,
  wasteWater: 0.1,
  cassette: 0.2,
  battery12: 0.22,
};

type Spec = Readonly<Record<string, unknown>>;
const specOf = ({ systems }: VehicleDescription, kind: string): Spec | null =>
  systems.find((system) => system.kind === kind)?.spec ?? null;
const numberOf = (spec: Spec | null, field: string, otherwise: number) =>
  typeof spec?.[field] === "number" ? spec[field] : otherwise;

/** How much of a day's use falls before an hour of it: two fifths from 7 to 10, three fifths from 17 to 22. */
export function shareByHour(hour: number): number {
  const part = (from: number, to: number) => Math.min(1, Math.max(0, (hour - from) / (to - from)));
  return 0.4 * part(7, 10) + 0.6 * part(17, 22);
}

export interface RoughDay {
  readonly people: number;
  /** mean of the day and night outside, °C */
  readonly outsideC: number;
  readonly pitch: Stop["pitch"];
}

const colderThan = (limitC: number, { outsideC }: RoughDay) => Math.max(0, limitC - outsideC);
const isOnPost = ({ pitch }: RoughDay) => pitch.postAmperes > 0;

/** kg of gas in a day: 0.08 for each degree below 16 °C and six metres of vehicle, hot water, meals, fridge; on a post a third of the warmth. */
export function gasKg(vehicle: VehicleDescription, day: RoughDay): number {
  const source = String(specOf(vehicle, "heating")?.source ?? "");
  const isGas = source.startsWith("gas");
  const onPost = isOnPost(day);
  const warmth = isGas ? 0.08 * colderThan(16, day) * (vehicle.dimensions.lengthM / 6) : 0;
  const hotWater = isGas ? 0.05 * day.people : 0;
  const meals = specOf(vehicle, "cooking")?.energy === "electric" ? 0 : 0.06 * day.people;
  const fridge = specOf(vehicle, "fridge")?.type === "absorption" && !onPost ? 0.3 : 0;
  return (warmth + hotWater) * (onPost ? 0.33 : 1) + meals + fridge;
}

/** litres that a diesel heater burns in a day off a post: a tenth for each degree below 16 °C and six metres of vehicle */
export function heaterLitres(vehicle: VehicleDescription, day: RoughDay): number {
  const isDiesel = String(specOf(vehicle, "heating")?.source ?? "").startsWith("diesel");
  const length = vehicle.dimensions.lengthM / 6;
  return isDiesel ? 0.1 * colderThan(16, day) * length * (isOnPost(day) ? 0.33 : 1) : 0;
}

/** litres for a road: what the description declares, 3 % more for every ten degrees below 15 °C */
export function roadLitres(vehicle: VehicleDescription, km: number, outsideC: number): number {
  const cold = 1 + 0.003 * Math.max(0, 15 - outsideC);
  return (km / 100) * vehicle.consumption.litresPer100Km * cold;
}
/** DEF is taken as one litre for fifty of fuel */
export const DEF_OF_FUEL = 0.02;

/** litres from the tank in a day: twelve a head where there is a washroom, seven where there is none */
export const waterLitres = (vehicle: VehicleDescription, { people }: RoughDay): number =>
  people * (specOf(vehicle, "cassetteToilet") === null ? 7 : 12);
export const WASTE_OF_WATER = 0.85;
/** litres in a day and head, all visits aboard where there is nothing else */
export const cassetteLitres = ({ people, pitch }: RoughDay): number =>
  people * (pitch.cassettePoint ? 1.6 : 2.8);

/**
 * Wh that the battery gives in a day and night off a post: 4 W all the time, 30 Wh an evening and head, a
 * compressor fridge by warmth, the heater's fan half the time at freezing, an electric hob through the inverter.
 */
export function batteryWh(vehicle: VehicleDescription, day: RoughDay) {
  const isCompressor = specOf(vehicle, "fridge")?.type === "compressor";
  const fan = numberOf(specOf(vehicle, "heating"), "fanW", 0) * 0.5 * (colderThan(15, day) / 15) * 24;
  const cooks = specOf(vehicle, "inverter") !== null && specOf(vehicle, "cooking")?.energy === "electric";
  return {
    /** spread over the 24 hours */
    steady: 4 * 24 + (isCompressor ? 280 + 10 * (day.outsideC - 15) : 0) + fan,
    /** at the hours of {@link shareByHour} */
    byHabit: 30 * day.people + (cooks ? 150 * day.people : 0),
  };
}

/** Wh that a drive takes from the battery that drives: a twentieth more than declared, a tenth more under 12 °C, a quarter under 5 °C */
export function roadWh(vehicle: VehicleDescription, km: number, outsideC: number): number {
  const declared = numberOf(specOf(vehicle, "tractionBattery"), "kwhPer100Km", 0) * 10;
  const cold = outsideC < 5 ? 1.25 : outsideC < 12 ? 1.1 : 1;
  return km * declared * 1.05 * cold;
}
/** of a vehicle and of its party, as {@link OF_VEHICLE} and {@link OF_PARTY} */
export const ROAD_OF_VEHICLE = 0.06;
export const ROAD_OF_PARTY = 0.09;
/** Wh that a night at a post gives it, and that the living part takes in a night without one */
export const POST_NIGHT_WH = 18_000;
export const QUIET_NIGHT_WH = 2500;
