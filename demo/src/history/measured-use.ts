import type { Measured, Party, Reading, Stop, Trip, VehicleDescription } from "@setfair/engine";
import { addDays } from "../dates.ts";
import { type Draws, drawsFrom } from "../season/draws.ts";
import {
  batteryWh,
  bell,
  cassetteLitres,
  DEF_OF_FUEL,
  type Factors,
  factorsFrom,
  gasKg,
  heaterLitres,
  OF_PARTY,
  OF_VEHICLE,
  POST_NIGHT_WH,
  QUIET_NIGHT_WH,
  ROAD_OF_PARTY,
  ROAD_OF_VEHICLE,
  type RoughDay,
  roadLitres,
  roadWh,
  shareByHour,
  WASTE_OF_WATER,
  waterLitres,
} from "./rough-use.ts";
import { roughDays } from "./rough-weather.ts";

interface PastHire {
  readonly vehicle: VehicleDescription;
  readonly party: Party;
  readonly trip: Trip;
}

/** A number for a text, so that a vehicle keeps its quirk and a hire its luck. */
export function seedOf(text: string): number {
  let seed = 20_260;
  for (let i = 0; i < text.length; i++) seed = (Math.imul(seed, 31) + text.charCodeAt(i)) >>> 0;
  return seed;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const hourOf = (local: string) => Number(local.slice(11, 13)) + Number(local.slice(14, 16)) / 60;
const dayOf = (local: string) => local.slice(0, 10);
const rounded = (value: number, step: number) => Number((Math.round(value / step) * step).toFixed(3));

/** What the depot and the hirer wrote down of an invented hire that is over. The same hire gives the same. */
export function measuredUse({ vehicle, party, trip }: PastHire): Measured {
  const draws = drawsFrom(seedOf(`${vehicle.id} ${trip.depart}`));
  const quirk = factorsFrom(drawsFrom(seedOf(vehicle.id)), OF_VEHICLE);
  const habit = factorsFrom(draws, OF_PARTY);
  const times = (store: keyof Factors) => quirk[store] * habit[store];
  const days = daysOf(trip, party.travellers.length, draws);
  const planned = sum(trip.stops.map(({ drive }) => drive.distanceKm)) + trip.returnDrive.distanceKm;
  // detours, and roads not taken
  const distanceKm = Math.round(planned * (1.06 + 0.07 * bell(draws)));
  const told = new Notes(vehicle, trip, draws);
  const mild = sum(days.map(({ outsideC }) => outsideC)) / days.length;
  const road = roadLitres(vehicle, distanceKm, mild) * times("fuel");
  told.gas(sum(days.map((day) => gasKg(vehicle, day))) * times("lpg"));
  told.filled("fuel", road + sum(days.map((day) => heaterLitres(vehicle, day))), 1.2);
  told.filled("def", road * DEF_OF_FUEL * times("def"), 0.1);
  trip.stops
    .filter(({ pitch }) => !pitch.freshWater)
    .forEach((stop) => {
      told.stay(stop, days, times);
    });
  told.drives(days, distanceKm / planned);
  return { readings: told.readings, added: told.added, distanceKm };
}

type Days = readonly (RoughDay & { readonly date: string })[];

/** Each civil day of the trip with the place of its night. */
function daysOf(trip: Trip, people: number, draws: Draws): Days {
  const dates: string[] = [];
  for (let date = dayOf(trip.depart); date < dayOf(trip.return); date = addDays(date, 1)) dates.push(date);
  const stops = dates.map(
    (date) => trip.stops.findLast(({ arrive }) => dayOf(arrive) <= date) ?? trip.stops[0]!,
  );
  const outside = roughDays(
    draws,
    stops.map(({ place }, k) => ({ ...place, elevationM: place.elevationM ?? 0, date: dates[k]! })),
  );
  return stops.map(({ pitch }, k) => ({ date: dates[k]!, people, outsideC: outside[k]!, pitch }));
}

/** What was written down, each with the error of how it was read. */
class Notes {
  readonly readings: Reading[] = [];
  readonly added: Measured["added"] = [];

  constructor(
    private readonly vehicle: VehicleDescription,
    private readonly trip: Trip,
    private readonly draws: Draws,
  ) {}

  private holds(kind: string, field: string): number {
    const value = this.vehicle.systems.find((system) => system.kind === kind)?.spec[field];
    return typeof value === "number" ? value : 0;
  }

  /** The cylinders are weighed out and back; an empty one is exchanged for a full one. */
  gas(kg: number): void {
    const { depart, return: back } = this.trip;
    const each = this.holds("lpg", "kgEach");
    const all = each * this.holds("lpg", "cylinders");
    if (all === 0) return;
    const exchanged = Math.max(0, Math.ceil((kg - 0.95 * all) / each)) * each;
    if (exchanged > 0) this.added.push({ store: "lpg", amount: exchanged, at: back });
    this.read("lpg", all, "kg", depart, 0.15, 0.1);
    this.read("lpg", all + exchanged - kg, "kg", back, 0.15, 0.1);
  }

  /** Full out, filled up again at the end: the till or the can says how much. */
  filled(store: "fuel" | "def", litres: number, error: number): void {
    const tank = this.holds(store, "tankLitres");
    if (tank === 0 || litres <= 0) return;
    const { depart, return: back } = this.trip;
    const sd = (100 * error) / tank / Math.SQRT2;
    for (const at of [depart, back]) this.readings.push({ store, value: 100, unit: "%", at, sd });
    const amount = rounded(Math.max(0.1, litres + error * bell(this.draws)), 0.1);
    this.added.push({ store, amount, at: back });
  }

  /** Some nights in a place without anything: the panel on arriving and before leaving. */
  stay(stop: Stop, days: Days, times: (store: keyof Factors) => number): void {
    const luck = Math.exp(0.12 * bell(this.draws));
    const water = this.between(stop, days, (day) => ({
      steady: 0,
      byHabit: waterLitres(this.vehicle, day) * times("freshWater") * luck,
    }));
    const tank = this.holds("freshWater", "litres");
    this.level("freshWater", stop, tank, 0.95 * tank, -water);
    const waste = this.holds("wasteWater", "litres");
    this.level("wasteWater", stop, waste, 0.04 * waste, water * WASTE_OF_WATER * times("wasteWater"));
    const cassette = this.holds("cassetteToilet", "litres");
    const visits = this.between(stop, days, (day) => ({
      steady: 0,
      byHabit: cassetteLitres(day) * times("cassette"),
    }));
    this.level("cassette", stop, cassette, 0, visits);
    this.battery(stop, days, times("battery12"));
  }

  /** The battery is read in the evening and in the morning: a panel on the roof fills it by day. */
  private battery(stop: Stop, days: Days, times: number): void {
    if (this.vehicle.systems.some(({ kind }) => kind === "tractionBattery")) return;
    const ratedWh = 12 * this.holds("leisureBattery", "ratedAh");
    const usableWh = ratedWh * this.holds("leisureBattery", "usableShare");
    const hasSun = this.vehicle.systems.some(({ kind }) => kind === "solar");
    let left = usableWh * 0.97;
    const read = (at: string) => {
      this.read("battery12", ((left + ratedWh - usableWh) / ratedWh) * 100, "%", at, 3, 1);
    };
    const nights = days.filter(({ date }) => date >= dayOf(stop.arrive) && date < dayOf(stop.leave));
    for (const { date } of nights) {
      const evening = date === dayOf(stop.arrive) && hourOf(stop.arrive) > 19 ? stop.arrive : `${date}T19:00`;
      const morning = `${addDays(date, 1)}T07:30`;
      if (hasSun) left = Math.max(left, usableWh * 0.85);
      read(evening);
      const night = { ...stop, arrive: evening, leave: morning };
      left = Math.max(0, left - this.between(night, days, (day) => batteryWh(this.vehicle, day)) * times);
      read(morning);
      if (!hasSun) {
        const day = { ...stop, arrive: morning, leave: `${addDays(date, 1)}T19:00` };
        left = Math.max(0, left - this.between(day, days, (each) => batteryWh(this.vehicle, each)) * times);
      }
    }
  }

  /** What a stay uses: the steady part by the hours, the rest at the hours of habit. */
  private between(
    stop: Pick<Stop, "arrive" | "leave">,
    days: Days,
    ofDay: (day: RoughDay) => { readonly steady: number; readonly byHabit: number },
  ): number {
    const [from, to] = [dayOf(stop.arrive), dayOf(stop.leave)];
    let total = 0;
    for (let date = from; date <= to; date = addDays(date, 1)) {
      const day = days.findLast((each) => each.date <= date) ?? days[0]!;
      const start = date === from ? hourOf(stop.arrive) : 0;
      const end = date === to ? hourOf(stop.leave) : 24;
      const { steady, byHabit } = ofDay(day);
      total += (steady * (end - start)) / 24 + byHabit * (shareByHour(end) - shareByHour(start));
    }
    return total;
  }

  /** A battery that drives is read before and after each drive; what a charge point gave is on its bill. */
  drives(days: Days, detour: number): void {
    const capacity = 1000 * this.holds("tractionBattery", "usableKwh");
    if (capacity === 0) return;
    const { depart, return: back, stops, returnDrive } = this.trip;
    const own = drawsFrom(seedOf(`road ${this.vehicle.id} ${depart}`));
    const quirk = bell(drawsFrom(seedOf(`road ${this.vehicle.id}`)));
    const habit = Math.exp(ROAD_OF_VEHICLE * quirk + ROAD_OF_PARTY * bell(own));
    let level = capacity;
    const drive = (from: string, to: string, km: number) => {
      const { outsideC } = days.findLast(({ date }) => date <= dayOf(from)) ?? days[0]!;
      const used = roadWh(this.vehicle, km * detour, outsideC) * habit;
      this.read("tractionBattery", (100 * level) / capacity, "%", from, 1, 1);
      const put = rounded(Math.max(0, 0.35 * capacity - (level - used)), 100);
      if (put > 0) this.added.push({ store: "tractionBattery", amount: put, at: to });
      level = Math.min(capacity, level - used + put);
      this.read("tractionBattery", (100 * level) / capacity, "%", to, 1, 1);
    };
    let from = depart;
    for (const stop of stops) {
      drive(from, stop.arrive, stop.drive.distanceKm);
      const nights = days.filter(({ date }) => date >= dayOf(stop.arrive) && date < dayOf(stop.leave)).length;
      const night = stop.pitch.postAmperes > 0 ? POST_NIGHT_WH : -QUIET_NIGHT_WH;
      level = Math.min(capacity, Math.max(0.05 * capacity, level + nights * night));
      from = stop.leave;
    }
    drive(from, back, returnDrive.distanceKm);
  }

  private level(
    store: "freshWater" | "wasteWater" | "cassette",
    { arrive, leave }: Stop,
    capacity: number,
    start: number,
    change: number,
  ): void {
    if (capacity === 0) return;
    const end = Math.min(capacity, Math.max(0, start + change));
    this.read(store, (100 * start) / capacity, "%", arrive, 3, 1);
    this.read(store, (100 * end) / capacity, "%", leave, 3, 1);
  }

  private read(
    store: Reading["store"],
    value: number,
    unit: Reading["unit"],
    at: string,
    sd: number,
    step: number,
  ): void {
    const most = unit === "%" ? 100 : 10_000;
    const seen = Math.min(most, Math.max(0, value + sd * bell(this.draws)));
    this.readings.push({ store, value: rounded(seen, step), unit, at, sd });
  }
}
