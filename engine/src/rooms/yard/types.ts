import * as z from "zod/mini";
import type { Budget } from "../../base/budget.ts";
import type { RoomAnswer } from "../../base/finding.ts";

const idSchema = z.string().check(z.minLength(1), z.maxLength(200));
const minuteSchema = z.int().check(z.minimum(0), z.maximum(100_000));
const spreadSchema = z.strictObject({
  p10: z.number().check(z.minimum(0), z.maximum(100_000)),
  p50: z.number().check(z.minimum(0), z.maximum(100_000)),
  p90: z.number().check(z.minimum(0), z.maximum(100_000)),
});
export type Spread = z.infer<typeof spreadSchema>;

/** Minutes count from the opening of the day. */
export const scheduleInputSchema = z.strictObject({
  /** earliest-finish: all done as soon as possible; day: least weighted lateness, then least overtime, then earliest finish */
  objective: z.enum(["earliest-finish", "day"]),
  resources: z
    .array(
      z.strictObject({
        id: idSchema,
        /** units at all times, or by shifts (outside them none); shifts that overlap add up */
        capacity: z.union([
          z.int().check(z.minimum(0), z.maximum(1_000_000)),
          z.array(
            z.strictObject({
              from: minuteSchema,
              to: minuteSchema,
              units: z.int().check(z.minimum(0), z.maximum(1_000_000)),
              /** work that needs these units is overtime, counted in unit-minutes */
              overtime: z.optional(z.boolean()),
            }),
          ),
        ]),
      }),
    )
    .check(z.maxLength(100)),
  jobs: z
    .array(
      z.strictObject({
        id: idSchema,
        /** planned with p50, up to whole minutes, where a spread is given; so is `notBefore` */
        minutes: z.union([minuteSchema, spreadSchema]),
        /** units of resources or skill pools that it holds from start to end */
        needs: z._default(z.record(z.string(), z.int().check(z.minimum(0), z.maximum(1_000_000))), {}),
        /** jobs that must have ended */
        after: z._default(z.array(idSchema), []),
        notBefore: z._default(z.union([minuteSchema, spreadSchema]), 0),
        dueBy: z.optional(minuteSchema),
        /** what a minute of lateness counts; 1 where left out */
        weight: z._default(z.number().check(z.minimum(0), z.maximum(1e6)), 1),
      }),
    )
    .check(z.maxLength(2000)),
});
export type ScheduleInput = z.infer<typeof scheduleInputSchema>;

export interface ScheduledJob {
  readonly job: string;
  /** minutes from the opening */
  readonly start: number;
  readonly end: number;
}
export const UNPLACED_WHY = ["noShiftLongEnough", "shiftsFull", "waitsForUnplaced"] as const;
export type UnplacedWhy = (typeof UNPLACED_WHY)[number];

export interface Schedule {
  /** by start, then by the order given */
  readonly schedule: readonly ScheduledJob[];
  /** end of the last job */
  readonly finish: number;
  /** no schedule finishes sooner */
  readonly lowerBound: number;
  /** jobs that end after their `dueBy` */
  readonly late: readonly { readonly job: string; readonly dueBy: number; readonly minutes: number }[];
  /** jobs for which the shifts hold no room; empty where all are placed */
  readonly unplaced: readonly { readonly job: string; readonly why: UnplacedWhy }[];
  /** sum of weight × minutes late */
  readonly weightedLateness: number;
  /** unit-minutes within shifts marked as overtime that the regular units could not cover */
  readonly overtimeUnitMinutes: number;
}
export interface ScheduleResult extends Schedule {
  /** earliest-finish: finish cannot be bettered; day: neither lateness nor overtime can */
  readonly proven: boolean;
  /** with spreads: how likely each `dueBy` is kept when this order of jobs is followed */
  readonly chances?: readonly { readonly job: string; readonly dueBy: number; readonly chance: number }[];
  readonly milliseconds: number;
}

/** Findings: `yard.late` for each late job, `yard.unplaced` for each without room. Throws BadInput. */
export type ProposeSchedule = (input: ScheduleInput, budget?: Budget) => RoomAnswer<ScheduleResult>;

/** One thing wrong with a schedule. */
export interface ScheduleFault {
  readonly code: string;
  readonly job?: string;
  readonly resource?: string;
}
export type CheckSchedule = (input: ScheduleInput, schedule: Schedule) => readonly ScheduleFault[];
