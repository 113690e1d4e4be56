import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { DUE_KINDS } from "../diary/due-kinds.ts";
import { isoDateSchema, isoLocalSchema } from "../situation.ts";

const km = z.number().check(z.minimum(0), z.maximum(2_000_000));

/** The last time a duty was done, or what its papers say; a day, a distance or both. */
export const dueEntrySchema = z.strictObject({
  kind: z.enum(DUE_KINDS),
  /** last day on which it is good; null where only the distance counts */
  dueOn: z.nullable(isoDateSchema),
  /** odometer up to which it is good, km */
  dueKm: z.nullable(km),
});
export type DueEntry = z.infer<typeof dueEntrySchema>;

export const upkeepInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  book: z.array(dueEntrySchema).check(z.maxLength(80)),
  /** the hire, civil times of the depot */
  from: isoLocalSchema,
  to: isoLocalSchema,
  today: isoDateSchema,
  /** odometer as last read, and how far it is likely to stand at the end of the hire, km */
  odometer: z.optional(z.strictObject({ readKm: km, endKm: km })),
  /** days beyond the end of the hire for which law duties must be good; a policy of the depot */
  marginDays: z.optional(z.int().check(z.minimum(0), z.maximum(60))),
});
export type UpkeepInput = z.infer<typeof upkeepInputSchema>;

export type DueStatus = "law" | "policy" | "guidance";
export type DueState = "inDate" | "lapsesInMargin" | "lapses" | "lapsed" | "missing" | "unknown";
export interface DueLine extends DueEntry {
  readonly status: DueStatus;
  readonly state: DueState;
  /** rule or account of practice that the duty rests on */
  readonly source: string;
}
export interface UpkeepResult {
  readonly due: readonly DueLine[];
  /** odometer at the end of the hire, where one was given */
  readonly endKm: Figure | null;
}
export type CheckUpkeep = (input: UpkeepInput) => RoomAnswer<UpkeepResult>;

/** One duty as dated data: who asks for it, how often, on which fitted systems. */
export interface Duty {
  readonly kind: (typeof DUE_KINDS)[number];
  readonly status: DueStatus;
  readonly everyDays?: number;
  readonly everyMonths?: number;
  readonly everyKm?: number;
  readonly firstAfterMonths?: number;
  /** any of these systems; empty for every vehicle */
  readonly fits: readonly string[];
  /** no vehicle goes without a date for it */
  readonly required?: boolean;
  /** done every few weeks: stops the keys when over, never a hire that is booked ahead */
  readonly routine?: boolean;
  readonly source: string;
  readonly confidence: "read" | "secondary" | "memory";
  readonly readOn: IsoDate;
  readonly validFrom: IsoDate;
  readonly country: string;
}

export const DEFECT_CLASSES = ["safety", "comfort"] as const;
export const openDefectSchema = z.strictObject({
  id: z.string().check(z.minLength(1), z.maxLength(80)),
  class: z.enum(DEFECT_CLASSES),
  what: z.string().check(z.minLength(1), z.maxLength(200)),
  /** this hirer was told and signed */
  disclosed: z.boolean(),
});
export type OpenDefect = z.infer<typeof openDefectSchema>;

export const DAMP_BANDS = ["none", "recheck", "investigate", "strip"] as const;
export type DampBand = (typeof DAMP_BANDS)[number];

export const TURNAROUND_SKILLS = ["cleaner", "yard", "technician"] as const;
export type TurnaroundSkill = (typeof TURNAROUND_SKILLS)[number];
/** A job of the turnaround; text `turnaround.<code>`, or the check's own where it is one. */
export interface TurnaroundJob {
  /** unique within the turnaround */
  readonly id: string;
  readonly code: string;
  /** check of a fitted system, or difference that the return showed */
  readonly about: string | null;
  readonly minutes: number;
  readonly skill: TurnaroundSkill;
  /** jobs that must be done before */
  readonly after: readonly string[];
}
