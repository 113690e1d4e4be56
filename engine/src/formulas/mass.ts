/** Masses of the vehicle. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Least pay-mass of a motor caravan, kg: 10 (people, driver included, + overall length in m). */
export function minimumPayloadKg(people: number, lengthM: number): number {
  return 10 * (people + lengthM);
}

export interface PlacedMass {
  readonly massKg: number;
  readonly behindFrontAxleM: number;
}

/** Loads on both axles by moments about the front one, kg; a mass behind the rear axle lifts the front. */
export function axleLoads(
  wheelbaseM: number,
  items: readonly PlacedMass[],
): { readonly frontKg: number; readonly rearKg: number } {
  let total = 0;
  let moment = 0;
  for (const item of items) {
    total += item.massKg;
    moment += item.massKg * item.behindFrontAxleM;
  }
  const rearKg = moment / wheelbaseM;
  return { frontKg: total - rearKg, rearKg };
}

/** A ratio of lengths: any unit gives the same loads, so the range also takes old examples in inches. */
const place = z.strictObject({ massKg: between(-100_000, 100_000), behindFrontAxleM: between(-1000, 1000) });

export const MASS_FORMULAS = [
  entry(
    "mass.minimumPayload",
    "kg",
    "eu-1230-2012",
    "annex I part A 2.6.4.1.2",
    { people: z.int().check(z.minimum(1), z.maximum(20)), lengthM: above0(30) },
    (a) => minimumPayloadKg(a.people, a.lengthM),
  ),
  entry(
    "mass.axleLoads",
    "kg",
    "moments",
    "rear = Σ m x / wheelbase",
    { wheelbaseM: above0(1000), items: z.array(place).check(z.maxLength(1000)) },
    (a) => ({ ...axleLoads(a.wheelbaseM, a.items) }),
  ),
  entry(
    "mass.conventionalLoad",
    "kg",
    "seat-mass-75",
    "p. 32",
    { seatsWithDriver: z.int().check(z.minimum(1), z.maximum(20)) },
    (a) => 75 * (a.seatsWithDriver - 1),
  ),
];
