import * as z from "zod/mini";
import type { Finding, RoomAnswer } from "../../base/finding.ts";
import type { IsoLocal } from "../../base/time.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { isoDateSchema, isoLocalSchema, partySchema } from "../situation.ts";
import { DUE_KINDS } from "./due-kinds.ts";
import { openingHoursSchema } from "./opening-hours.ts";

export const dueDateSchema = z.strictObject({
  kind: z.enum(DUE_KINDS),
  /** last day on which it is good */
  dueOn: isoDateSchema,
});
export type DueDate = z.infer<typeof dueDateSchema>;

/** Half open: another may start at `to` (plus the turnaround). */
export const bookingSchema = z.strictObject({ from: isoLocalSchema, to: isoLocalSchema, hireId: z.string() });
export type Booking = z.infer<typeof bookingSchema>;

export const BLOCK_KINDS = ["mot", "service", "repair", "layUp", "other"] as const;
export type BlockKind = (typeof BLOCK_KINDS)[number];
/** Off the road without a hire, half open; no turnaround of its own. */
export const blockedPeriodSchema = z.strictObject({
  id: z.string(),
  kind: z.enum(BLOCK_KINDS),
  from: isoLocalSchema,
  to: isoLocalSchema,
});

export const fleetVehicleSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  bookings: z.array(bookingSchema),
  blocked: z.optional(z.array(blockedPeriodSchema)),
  dueDates: z.array(dueDateSchema),
  /** most dogs that the depot takes in this vehicle; 0 where left out */
  maxDogs: z.optional(z.int().check(z.minimum(0), z.maximum(6))),
});
export type FleetVehicle = z.infer<typeof fleetVehicleSchema>;

export const feasibleInputSchema = z.strictObject({
  vehicles: z.array(fleetVehicleSchema),
  party: partySchema,
  from: isoLocalSchema,
  to: isoLocalSchema,
  today: isoDateSchema,
  turnaroundMinutes: z.int().check(z.minimum(0), z.maximum(2880)),
  timeZone: z.string(),
  /** other times are offered within them; left out: at any hour */
  hours: z.optional(openingHoursSchema),
  /** leave this hire out of the bookings, when its own dates are being changed */
  hireId: z.optional(z.string()),
});
export type FeasibleInput = z.infer<typeof feasibleInputSchema>;

/** What would have to change for this vehicle to do; the shift keeps the length of the hire. */
export interface NearestChange {
  readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets";
  readonly from?: IsoLocal;
  readonly to?: IsoLocal;
  readonly shiftHours?: number;
  readonly people?: number;
}
export interface VehicleFeasibility {
  readonly vehicleId: string;
  readonly possible: boolean;
  readonly findings: readonly Finding[];
  readonly nearestChanges: readonly NearestChange[];
}
export interface FeasibleResult {
  readonly vehicles: readonly VehicleFeasibility[];
}
export type FeasibleVehicles = (input: FeasibleInput) => RoomAnswer<FeasibleResult>;

export const dueDatesInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  dueDates: z.array(dueDateSchema),
  to: isoLocalSchema,
  today: isoDateSchema,
});
export type DueDatesInput = z.infer<typeof dueDatesInputSchema>;
export type CheckDueDates = (
  input: DueDatesInput,
) => RoomAnswer<{ readonly due: readonly (DueDate & { readonly state: "inDate" | "lapses" | "missing" })[] }>;
