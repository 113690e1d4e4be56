import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import { type Check, VIEWS, type View } from "../../systems/contract.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const share = z.number().check(z.minimum(0), z.maximum(1));
const photographs = z
  .array(z.string().check(z.regex(/^[0-9a-f]{64}$/, "expected the SHA-256 of a photograph in hexadecimal")))
  .check(z.maxLength(20));

export const MARK_KINDS = ["scratch", "dent", "tear", "stain", "crack", "missing"] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

/** `content` of the records that a walk-round appends; `kind` is the record's kind too. */
export const readingContentSchema = z.strictObject({
  kind: z.literal("reading"),
  checkId: text(80),
  value: z.number(),
  unit: text(20),
  photographs: z.optional(photographs),
});
export const lookContentSchema = z.strictObject({
  kind: z.literal("look"),
  checkId: text(80),
  outcome: z.enum(["same", "mark", "tooWetOrDirty"]),
  photographs: z.optional(photographs),
});
export const markContentSchema = z.strictObject({
  kind: z.literal("mark"),
  checkId: z.optional(text(80)),
  part: text(80),
  view: z.enum(VIEWS),
  /** place on the drawing of the view, as shares of its width and height */
  xShare: share,
  yShare: share,
  markKind: z.enum(MARK_KINDS),
  sizeMm: z.optional(z.int().check(z.minimum(1), z.maximum(9000))),
  note: z.optional(z.string().check(z.maxLength(500))),
  photographs,
});
export const countContentSchema = z.strictObject({
  kind: z.literal("count"),
  checkId: text(80),
  counted: z.int().check(z.minimum(0), z.maximum(999)),
  expected: z.int().check(z.minimum(0), z.maximum(999)),
  photographs: z.optional(photographs),
});
export const conditionContentSchema = z.discriminatedUnion("kind", [
  readingContentSchema,
  lookContentSchema,
  markContentSchema,
  countContentSchema,
]);
export type ConditionContent = z.infer<typeof conditionContentSchema>;

/** A record of the walk-round as the room sees it: its id and its content, nothing of the envelope. */
export const conditionRecordSchema = z.strictObject({ recordId: text(64), content: conditionContentSchema });
export type ConditionRecord = z.infer<typeof conditionRecordSchema>;

export interface WalkRoundCheck extends Check {
  /** the fitted system that asks */
  readonly systemId: string;
  readonly systemKind: string;
}
export interface WalkRoundStep {
  readonly view: View;
  readonly checks: readonly WalkRoundCheck[];
}
/** Steps in the fixed order of the views; views without a check are kept, since marks are looked for on each. */
export interface WalkRound {
  readonly vehicleId: string;
  readonly when: "out" | "back";
  readonly steps: readonly WalkRoundStep[];
}
export type ComposeWalkRound = (vehicle: VehicleDescription, when: "out" | "back") => WalkRound;

/** Something that came back otherwise than it went. `id` is stable: the same records give the same id. */
export type Difference = {
  readonly id: string;
  readonly checkId: string | null;
  readonly systemKind: string | null;
  /** tariff or repair line of the terms, from the check */
  readonly charge: string | null;
  readonly outRecords: readonly string[];
  readonly backRecords: readonly string[];
  readonly photographs: readonly string[];
} & (
  | {
      readonly kind: "reading";
      readonly out: Figure;
      readonly back: Figure;
      readonly change: Figure;
      readonly tolerance: Figure;
    }
  | { readonly kind: "count"; readonly expected: number; readonly counted: number; readonly short: number }
  /** looked at and not as it went, without a mark on the drawing: a tank not emptied, a hob not cleaned */
  | { readonly kind: "look"; readonly view: View }
  | {
      readonly kind: "mark";
      readonly part: string;
      readonly view: View;
      readonly markKind: MarkKind;
      readonly sizeMm: number | null;
      readonly xShare: number;
      readonly yShare: number;
    }
);

export interface ConditionResult {
  readonly differences: readonly Difference[];
  /** marks of the back record that were on the out record: [back, out] record ids */
  readonly existing: readonly { readonly back: string; readonly out: string }[];
  /** checks with two differing records in one walk-round: asked of whoever signs */
  readonly questions: readonly {
    readonly checkId: string;
    readonly when: "out" | "back";
    readonly records: readonly string[];
  }[];
  /** checks that were too wet or dirty to see: a second look is due */
  readonly secondLooks: readonly { readonly checkId: string; readonly when: "out" | "back" }[];
  /** checks of the walk-round that have no record back */
  readonly missing: readonly string[];
}
export type CompareCondition = (
  out: readonly ConditionRecord[],
  back: readonly ConditionRecord[],
  walkRound: WalkRound,
) => RoomAnswer<ConditionResult>;
