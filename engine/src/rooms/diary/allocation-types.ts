import * as z from "zod/mini";
import type { Budget } from "../../base/budget.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import { Temporal } from "../../base/time.ts";

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)$/;
const instantSchema = z.string().check(
  z.refine((text) => INSTANT.test(text) && isInstant(text), {
    error: "expected an instant such as 2026-05-09T15:00Z",
  }),
);
function isInstant(text: string): boolean {
  try {
    Temporal.Instant.from(text);
    return true;
  } catch {
    return false;
  }
}

const idSchema = z.string().check(z.minLength(1), z.maxLength(200));

/** Half open: what starts at `to` does not meet it. */
export const periodSchema = z.strictObject({ from: instantSchema, to: instantSchema });
export type Period = z.infer<typeof periodSchema>;

export const allocationInputSchema = z.strictObject({
  /** fewest-vehicles: every hire on as few as possible; plan: most value, then fewest moves, then most sellable gaps */
  objective: z.enum(["fewest-vehicles", "plan"]),
  /** between two hires of one vehicle; 0 where left out */
  turnaroundMinutes: z._default(z.int().check(z.minimum(0), z.maximum(100_000)), 0),
  /** length of the hire that a gap should still hold, for the count of sellable gaps; three nights where left out */
  sellableMinutes: z._default(z.int().check(z.minimum(1), z.maximum(1_000_000)), 4320),
  vehicles: z
    .array(z.strictObject({ id: idSchema, unavailable: z._default(z.array(periodSchema), []) }))
    .check(z.maxLength(2000)),
  hires: z
    .array(
      z.strictObject({
        id: idSchema,
        from: instantSchema,
        to: instantSchema,
        /** those that may serve it */
        vehicles: z.array(idSchema),
        /** it stays on this one, or is refused */
        fixed: z.optional(idSchema),
        /** where it stands today; going elsewhere is a move */
        now: z.optional(idSchema),
        /** what it is worth against the others; 1 where left out */
        value: z._default(z.number().check(z.minimum(0), z.maximum(1e9)), 1),
      }),
    )
    .check(z.maxLength(10_000)),
});
export type AllocationInput = z.infer<typeof allocationInputSchema>;

export const REFUSED_WHY = ["noVehicleAllowed", "vehiclesUnavailable", "vehiclesTaken"] as const;
/** noVehicleAllowed: its list is empty · vehiclesUnavailable: each is off the road then · vehiclesTaken: by others, that count for more */
export type RefusedWhy = (typeof REFUSED_WHY)[number];

export interface Seat {
  readonly hire: string;
  readonly vehicle: string;
}
export interface Allocation {
  readonly seated: readonly Seat[];
  readonly refused: readonly { readonly hire: string; readonly why: RefusedWhy }[];
  readonly moves: readonly { readonly hire: string; readonly from: string; readonly to: string }[];
  /** sum of the values seated */
  readonly value: number;
  readonly vehiclesUsed: number;
  /** no plan that seats as much gets by with fewer vehicles */
  readonly lowerBound: number;
  /** no plan seats more value */
  readonly upperBound: number;
  /** fewest-vehicles: value and vehicles cannot be bettered; plan: value and moves cannot (gaps are bettered, not proven) */
  readonly proven: boolean;
  /**
   * how many further hires of `sellableMinutes` the free time between the first start and the last end would still
   * hold, over all vehicles, with the turnaround from and to the neighbours and between themselves
   */
  readonly sellableGaps: number;
}
export interface AllocationResult extends Allocation {
  readonly milliseconds: number;
}

/** Findings: `diary.notSeated` for each refused hire. Throws BadInput where the input contradicts itself. */
export type ProposeAllocation = (input: AllocationInput, budget?: Budget) => RoomAnswer<AllocationResult>;

/** One thing wrong with a plan. */
export interface PlanFault {
  readonly code: string;
  readonly hire?: string;
  readonly vehicle?: string;
}
/** Certifies, and shares only types with what proposes: an empty list where the plan holds. */
export type CheckPlan = (input: AllocationInput, plan: Allocation) => readonly PlanFault[];
