import * as z from "zod/mini";
import { type Finding, GATES, type Gate } from "../../base/finding.ts";
import type { IsoInstant } from "../../base/time.ts";

/** Worst first. */
export const GLASS_STATES = ["cannotGo", "notYet", "goesWithConditions", "readyWithNotes", "ready"] as const;
export type GlassState = (typeof GLASS_STATES)[number];

export const GATE_STATES = [
  "refused",
  "referred",
  "notCheckedYet",
  "conditions",
  "overridden",
  "notes",
  "clear",
  "later",
] as const;
export type GateState = (typeof GATE_STATES)[number];

export const OVERRIDE_ROLES = ["desk", "yard", "manager", "insurer"] as const;
export type OverrideRole = (typeof OVERRIDE_ROLES)[number];

/** Hours before the keys at which a gate falls due; data of the depot. */
export const leadTimesSchema = z.record(z.enum(GATES), z.number().check(z.minimum(0), z.maximum(8784)));
export type LeadTimes = z.infer<typeof leadTimesSchema>;

export const overrideSchema = z.strictObject({
  code: z.string(),
  about: z.optional(z.string()),
  /** who: a person's id, never a name */
  by: z.string().check(z.minLength(1)),
  role: z.enum(OVERRIDE_ROLES),
  reason: z.string().check(z.minLength(3), z.maxLength(500)),
});
export type Override = z.infer<typeof overrideSchema>;

export interface GateReading {
  readonly gate: Gate;
  /** null: nobody has looked yet */
  readonly checkedAt: IsoInstant | null;
  readonly findings: readonly Finding[];
}
export interface GlassInput {
  readonly now: IsoInstant;
  /** when the keys went; null before */
  readonly handedOver: IsoInstant | null;
  readonly keysAt: IsoInstant;
  /** gates left out count as not checked yet */
  readonly gates: readonly GateReading[];
  readonly overrides: readonly Override[];
  /** the depot's; the defaults of `DEFAULT_LEAD_TIMES` where left out */
  readonly leadTimes?: LeadTimes;
}
export interface GateOnGlass {
  readonly gate: Gate;
  readonly state: GateState;
  readonly dueAt: IsoInstant;
  /** it counts: at its time, or before where a refusal stands that waiting does not mend */
  readonly isDue: boolean;
  readonly checkedAt: IsoInstant | null;
  readonly findings: readonly (Finding & { readonly override?: Override })[];
}
export interface GlassReading {
  /** `onTheRoad` once the keys have gone: the question is no longer asked */
  readonly state: GlassState | "onTheRoad";
  /** all thirteen, in the order in which the tool asks */
  readonly gates: readonly GateOnGlass[];
  /** findings that go with the vehicle: conditions and overridden ones */
  readonly conditions: readonly Finding[];
  /** gates and findings that make the state what it is; empty when ready */
  readonly because: readonly { readonly gate: Gate; readonly code: string; readonly about?: string }[];
  /** open findings to act on once on the road */
  readonly toActOn: number;
  /** overrides that were asked for and do not hold (law, safety, wrong role) */
  readonly rejectedOverrides: readonly Override[];
}
export type ReadGlass = (input: GlassInput) => GlassReading;
export type MayOverride = (finding: Pick<Finding, "basis">, role: OverrideRole) => boolean;
