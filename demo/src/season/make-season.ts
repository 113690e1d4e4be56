import { deriveVehicle, type Party, type Terms } from "@setfair/engine";
import { addDays } from "../dates.ts";
import { type DemoCustomer, type DemoHire, type DemoStage, demoDriver } from "../demo-hire.ts";
import { loadFor } from "../trips.ts";
import type { DemoVehicle } from "../vehicles.ts";
import { demandOn, isSchoolHoliday, weekdayOf } from "./calendar.ts";
import { type Draws, drawsFrom } from "./draws.ts";
import { inventPerson } from "./people.ts";

/** Days in which a vehicle is spoken for already, both ends in. */
export interface TakenDays {
  readonly vehicleId: string;
  readonly from: string;
  readonly to: string;
}
export interface SeasonPlan {
  readonly today: string;
  readonly terms: Terms;
  readonly vehicles: readonly DemoVehicle[];
  readonly taken: readonly TakenDays[];
}

const SEED = 20_260;
const DAYS_BACK = 160;
const DAYS_AHEAD = 130;
/** walk-rounds record by record for what came back in the last days; older hires have their papers only */
const WALKED_DAYS = 21;
const OUT_TIMES = ["13:30", "14:30", "15:30"] as const;
const AFTER_TURNAROUND = "15:30";
const BACK_TIMES = ["09:30", "10:00", "10:30"] as const;

interface Maker extends SeasonPlan {
  readonly draws: Draws;
  readonly customers: DemoCustomer[];
}

/**
 * A season around a day: hires of the past, on the road now, booked ahead, asked for, lost and cancelled.
 * The same day gives the same season. No vehicle is in two places, nor out while it is turned round.
 */
export function makeSeason(plan: SeasonPlan): readonly DemoHire[] {
  const maker: Maker = { ...plan, draws: drawsFrom(SEED), customers: [] };
  const hires = [...theDay(maker), ...plan.vehicles.flatMap((vehicle) => hiresOf(maker, vehicle))];
  return [...hires, ...fallenThrough(maker, hires), ...openAsks(maker)];
}

/** days from the day of loading on which these go out; seven nights each, which every season allows */
const AROUND_TODAY = [
  ["wl4", -7, false],
  ["wl4", 0, true],
  ["ze2", -3, false],
  ["cv2", -7, false],
  ["cv2", 1, false],
  ["ac4", -9, false],
] as const;

/** What the hires of {@link theDay} hold, so that nothing else takes it. */
export const daysAroundToday = (today: string): readonly TakenDays[] =>
  AROUND_TODAY.map(([vehicleId, start]) => ({
    vehicleId,
    from: addDays(today, start - 1),
    to: addDays(today, start + 8),
  }));

/** A day with something of everything, whatever the season: two back, one of them turned round and out again, one on the road. */
function theDay(maker: Maker): DemoHire[] {
  return AROUND_TODAY.flatMap(([vehicleId, start, isTurn]) => {
    const vehicle = maker.vehicles.find(({ id }) => id === vehicleId);
    const from = addDays(maker.today, start);
    return vehicle === undefined ? [] : [bookedHire(maker, vehicle, { from, to: addDays(from, 7), isTurn })];
  });
}

function hiresOf(maker: Maker, vehicle: DemoVehicle): DemoHire[] {
  const { today, draws } = maker;
  const since = vehicle.document.description.firstRegistered;
  const end = addDays(today, DAYS_AHEAD);
  const hires: DemoHire[] = [];
  let day = [addDays(today, -DAYS_BACK + draws.whole(0, 9)), addDays(since, 7)].sort()[1] ?? today;
  while (day < end) {
    const length = lengthFrom(maker, day);
    const to = addDays(day, length);
    const goes = isGoodStart(draws, day) && draws.share() < demandOn(day) * bookedShare(today, day);
    if (!goes || isTaken(maker, vehicle.id, day, to)) {
      day = addDays(day, 1);
      continue;
    }
    const isTurn = hires.at(-1)?.to.slice(0, 10) === day;
    hires.push(bookedHire(maker, vehicle, { from: day, to, isTurn }));
    day = to;
  }
  return hires;
}

/** People fetch on Fridays and Saturdays, some on Mondays (practice). */
const START_SHARE = [0.2, 0.45, 0.2, 0.2, 0.35, 0.95, 1] as const;
const isGoodStart = (draws: Draws, day: string) => draws.share() < (START_SHARE[weekdayOf(day)] ?? 0.3);

/** The further ahead, the less is booked yet. */
function bookedShare(today: string, day: string): number {
  const ahead = (Date.parse(day) - Date.parse(today)) / 86_400_000;
  return ahead <= 7 ? 0.62 : Math.max(0.08, 0.7 - ahead / 200);
}

function isTaken({ taken }: Maker, vehicleId: string, from: string, to: string): boolean {
  return taken.some((held) => held.vehicleId === vehicleId && from <= held.to && to >= held.from);
}

/** 3 to 14 nights, never fewer than the terms ask of any night. */
function lengthFrom({ draws, terms }: Maker, day: string): number {
  const usual = isSchoolHoliday(day)
    ? draws.oneOf([7, 7, 7, 10, 14])
    : draws.oneOf([3, 3, 4, 4, 5, 7, 7, 10, 14]);
  const least = (nights: number) =>
    Math.max(
      3,
      ...Array.from({ length: nights }, (_, k) => {
        const date = addDays(day, k).slice(5);
        const season = terms.seasons.find(({ spans }) =>
          spans.some(({ from, to }) =>
            from <= to ? date >= from && date <= to : date >= from || date <= to,
          ),
        );
        return season?.minimumNights ?? 3;
      }),
    );
  return Math.max(usual, least(Math.max(usual, 7)));
}

function stageOf(draws: Draws, today: string, from: string, to: string): DemoStage {
  if (from >= today) return "booked";
  if (to >= today) return "onHire";
  if (to >= addDays(today, -4)) return draws.oneOf(["returned", "settled", "settled", "closed"]);
  return to >= addDays(today, -12) && draws.chance(35) ? "settled" : "closed";
}

interface Days {
  readonly from: string;
  readonly to: string;
  /** the vehicle came back that very morning and has to be turned round first */
  readonly isTurn: boolean;
}

function bookedHire(maker: Maker, vehicle: DemoVehicle, { from, to, isTurn }: Days): DemoHire {
  const { draws, today } = maker;
  const stage = stageOf(draws, today, from, to);
  const party = partyFor(draws, vehicle, isSchoolHoliday(from));
  const customer = customerFor(maker);
  const isSoon = from <= addDays(today, 21);
  const age = vehicle.document.description.masses.mamKg > 3500 ? draws.whole(52, 66) : draws.whole(28, 67);
  const checkedOn = isSoon ? addDays(from < today ? from : today, -draws.whole(1, 9)) : null;
  const heavy = age >= 52;
  const driver = demoDriver({ id: "t1", name: customer.name, age, today, checkedOn, heavy });
  return {
    stage,
    customer,
    wishes: draws.chance(18) ? draws.oneOf(WISHES) : "",
    from: `${from}T${isTurn ? AFTER_TURNAROUND : draws.oneOf(OUT_TIMES)}`,
    to: `${to}T${draws.oneOf(BACK_TIMES)}`,
    vehicleId: vehicle.id,
    party,
    drivers: isSoon || draws.chance(50) ? [driver] : [],
    trip: null,
    load: isSoon ? loadFor(vehicle.document.description, party) : null,
    paid: isSoon,
    walked:
      stage === "onHire" ||
      stage === "returned" ||
      (stage !== "booked" && to >= addDays(today, -WALKED_DAYS)),
  };
}

const WISHES = [
  "Arrives by train: could somebody fetch us from the station?",
  "Celebrating sixty years; a quiet spot for the handover, please.",
  "Has hired with us before and wants the short briefing.",
  "Would like an awning and four chairs.",
  "Walks with a stick; the step must come out fully.",
] as const;

/** Every fourth comes again. */
function customerFor({ draws, customers }: Maker): DemoCustomer {
  if (customers.length > 8 && draws.chance(24)) return draws.oneOf(customers);
  const customer = inventPerson(draws, customers.length);
  customers.push(customer);
  return customer;
}

/** As many as there are belts and beds for; families where there is room and no school. */
function partyFor(draws: Draws, vehicle: DemoVehicle, isHoliday: boolean): Party {
  const { belts, berths } = deriveVehicle(vehicle.document.description);
  const room = Math.min(belts.value, berths.value);
  const isFamily = room > 2 && draws.chance(isHoliday ? 85 : 35);
  const count = isFamily ? draws.whole(3, room) : Math.min(room, draws.chance(12) ? 1 : 2);
  const adults = Math.min(count, 2);
  return {
    travellers: Array.from({ length: count }, (_, k) =>
      k < adults
        ? ({ id: `t${k + 1}`, kind: "adult", massKg: draws.whole(58, 92) } as const)
        : ({
            id: `t${k + 1}`,
            kind: "child",
            ageYears: draws.whole(12, 16),
            massKg: draws.whole(38, 60),
          } as const),
    ),
    sleepers: count,
    dogs: vehicle.document.maxDogs > 0 && draws.chance(15) ? 1 : 0,
    experience: draws.oneOf(["first", "some", "some", "knowsThisVehicle"]),
  };
}

/** Booked and then not taken: they hold no vehicle. */
function fallenThrough(maker: Maker, hires: readonly DemoHire[]): DemoHire[] {
  const { draws, today } = maker;
  const over = hires.filter(({ to }) => to < today);
  return Array.from({ length: Math.min(9, over.length) }, (_, k) => {
    const like = draws.oneOf(over);
    const stage: DemoStage = k < 5 ? "cancelled" : k < 7 ? "noShow" : "lost";
    return {
      ...like,
      stage,
      customer: customerFor(maker),
      drivers: [],
      load: null,
      paid: stage === "noShow",
      walked: false,
      vehicleId: stage === "lost" ? null : like.vehicleId,
    };
  });
}

/** Enquiries and quotes of the last days, for dates some weeks ahead. */
function openAsks(maker: Maker): DemoHire[] {
  const { draws, today, vehicles } = maker;
  return Array.from({ length: 9 }, (_, k) => {
    const from = addDays(today, draws.whole(20, 150));
    const to = addDays(from, lengthFrom(maker, from));
    const vehicle = draws.oneOf(vehicles);
    const stage = k < 5 ? "enquiry" : "quote";
    return {
      stage,
      customer: customerFor(maker),
      wishes: draws.chance(40) ? draws.oneOf(WISHES) : "",
      from: `${from}T${draws.oneOf(OUT_TIMES)}`,
      to: `${to}T${draws.oneOf(BACK_TIMES)}`,
      vehicleId: stage === "quote" ? vehicle.id : null,
      party: partyFor(draws, vehicle, isSchoolHoliday(from)),
      drivers: [],
      trip: null,
      load: null,
      paid: false,
      walked: false,
    };
  });
}
