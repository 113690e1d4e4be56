import * as z from "zod/mini";
import type { InputProblem } from "../../base/bad-input.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { isoDateSchema } from "../situation.ts";
import { loadLines, type MassLine } from "./load-lines.ts";
import type { LoadInput } from "./types.ts";

const kg = (max: number) => z.number().check(z.minimum(0), z.maximum(max));

/** A weighbridge ticket of a vehicle by axle, with what was aboard, so that it can be brought to the basis of the mass in running order. */
export const vehicleTicketSchema = z.strictObject({
  reference: z.string().check(z.minLength(1), z.maxLength(60)),
  weighedOn: isoDateSchema,
  frontKg: kg(5000),
  rearKg: kg(5000),
  /** smallest step of the scale, kg; 20 where left out (practice: public weighbridges) */
  scaleIntervalKg: z.optional(z.number().check(z.minimum(0.5), z.maximum(50))),
  aboard: z.strictObject({
    fuelShare: kg(1),
    waterLitres: kg(400),
    lpgCylinders: z.int().check(z.minimum(0), z.maximum(4)),
    /** people in the front row and behind it, kg in all */
    frontPeopleKg: kg(400),
    rearPeopleKg: kg(900),
  }),
});
export type VehicleTicket = z.infer<typeof vehicleTicketSchema>;

const USUAL_INTERVAL_KG = 20;

export interface AppliedTickets {
  /** the description with the masses of the latest ticket; as given where there is none */
  readonly description: VehicleDescription;
  readonly applied: VehicleTicket | null;
  /** something was fitted or taken out after the weighing: the masses are kept, the doubt is that of a stated mass */
  readonly isOlderThanFitting: boolean;
}

/** What was aboard, as the load check takes it: the lines are all that differs from the mass in running order. */
function asLoad(vehicle: VehicleDescription, { aboard }: VehicleTicket): LoadInput {
  const rows = specsOf(vehicle, "seatsBelts")[0];
  const person = (id: string, massKg: number) => ({ id, kind: "adult", massKg }) as const;
  return {
    vehicle,
    party: {
      travellers: [
        person("front", aboard.frontPeopleKg),
        ...(aboard.rearPeopleKg > 0 ? [person("rear", aboard.rearPeopleKg)] : []),
      ],
      dogs: 0,
      experience: "some",
    },
    driverId: "front",
    load: {
      seats: [
        { travellerId: "front", behindFrontAxleM: rows?.frontRowM ?? 0.5 },
        { travellerId: "rear", behindFrontAxleM: rows?.rearRowM ?? 2 },
      ],
      items: [],
      waterLitres: aboard.waterLitres,
      fuelShare: aboard.fuelShare,
      lpgCylinders: aboard.lpgCylinders,
    },
  };
}

/**
 * Brings a ticket to the basis of the mass in running order: what was aboard beyond it comes off by moments,
 * what it includes and was not aboard goes on. The standard deviation takes the scale as right within one
 * interval at each axle (from memory: OIML R 76-1, class III in service), and what is not known of the load.
 */
function reduced(vehicle: VehicleDescription, ticket: VehicleTicket): VehicleDescription["masses"] {
  const lines = loadLines(asLoad(vehicle, ticket)).filter(({ kind }) => kind !== "runningOrder");
  const add = (of: (line: MassLine) => number) => lines.reduce((sum, line) => sum + of(line), 0);
  const scaleSdKg = (ticket.scaleIntervalKg ?? USUAL_INTERVAL_KG) / Math.sqrt(3);
  const { masses } = vehicle;
  return {
    ...masses,
    miroKg: ticket.frontKg + ticket.rearKg - add(({ massKg }) => massKg),
    miroFrontKg: ticket.frontKg - add(({ frontKg }) => frontKg),
    miroBasis: {
      ...masses.miroBasis,
      weighed: true,
      sdKg: Math.sqrt(2 * scaleSdKg ** 2 + add(({ sdKg }) => sdKg ** 2)),
      weighedOn: ticket.weighedOn,
    },
  };
}

/**
 * Why a ticket cannot be of this vehicle: more aboard than it holds, or masses that it would not be legal or
 * possible to have in running order. Paths are those of the ticket; kg.
 */
export function findTicketProblems(
  vehicle: VehicleDescription,
  ticket: VehicleTicket,
): readonly InputProblem[] {
  const litres = specsOf(vehicle, "freshWater").reduce((sum, tank) => sum + tank.litres, 0);
  const cylinders = specsOf(vehicle, "lpg").reduce((sum, each) => sum + each.cylinders, 0);
  const { miroKg, miroFrontKg } = reduced(vehicle, ticket);
  const { mamKg } = vehicle.masses;
  const tell = (isWrong: boolean, path: string, expected: string) => (isWrong ? [{ path, expected }] : []);
  return [
    ...tell(
      ticket.aboard.waterLitres > litres,
      "aboard.waterLitres",
      `expected at most the ${litres} L that its tanks hold`,
    ),
    ...tell(
      ticket.aboard.lpgCylinders > cylinders,
      "aboard.lpgCylinders",
      `expected at most the ${cylinders} fitted`,
    ),
    ...tell(
      miroKg >= mamKg || miroKg < mamKg / 3,
      "frontKg",
      `expected both axles of this vehicle; with what was aboard they give ${Math.round(miroKg)} kg in running order, and its plate says ${mamKg} kg`,
    ),
    ...tell(
      miroFrontKg <= 0 || miroFrontKg >= miroKg,
      "rearKg",
      `expected the rear axle alone; with what was aboard the front axle would carry ${Math.round(miroFrontKg)} kg of ${Math.round(miroKg)} kg`,
    ),
  ];
}

/**
 * The latest ticket up to a day (later in the list on a tie) replaces the declared masses, total and by axle,
 * and their doubt. `fittedChangedOn`: the day from which something else is fitted; a ticket from before it
 * is flagged and its doubt is that of a stated mass. Both days `YYYY-MM-DD`; kg.
 */
export function applyTickets(
  description: VehicleDescription,
  tickets: readonly VehicleTicket[],
  on: { readonly day: string; readonly fittedChangedOn: string | null },
): AppliedTickets {
  const valid = tickets.filter(
    (ticket) => ticket.weighedOn <= on.day && findTicketProblems(description, ticket).length === 0,
  );
  const latest = valid.reduce<VehicleTicket | null>(
    (best, ticket) => (best === null || ticket.weighedOn >= best.weighedOn ? ticket : best),
    null,
  );
  if (latest === null) return { description, applied: null, isOlderThanFitting: false };
  const { miroBasis, ...masses } = reduced(description, latest);
  const isOlderThanFitting = on.fittedChangedOn !== null && latest.weighedOn < on.fittedChangedOn;
  const { sdKg: _, ...stated } = { ...miroBasis, weighed: false };
  return {
    description: {
      ...description,
      masses: { ...masses, miroBasis: isOlderThanFitting ? stated : miroBasis },
    },
    applied: latest,
    isOlderThanFitting,
  };
}

const fittedOf = ({ systems, masses }: VehicleDescription) => JSON.stringify([systems, masses.options]);

/** The day from which the fitted systems or the options last changed, of versions oldest first up to a day; null where they never did. */
export function lastFittedChange(versions: readonly VehicleDescription[], day: string): string | null {
  const held = versions.filter(({ validFrom }) => validFrom <= day);
  const at = held.findLastIndex((each, k) => k > 0 && fittedOf(each) !== fittedOf(held[k - 1] ?? each));
  return at === -1 ? null : (held[at]?.validFrom ?? null);
}
