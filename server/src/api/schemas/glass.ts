import { GATE_STATES, GLASS_STATES } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, findingSchema, gateSchema, instantSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

// The glass and its gates, and a finding that someone lets pass.

export const glassStateSchema = named("GlassState", z.enum(GLASS_STATES));

/** One finding on the glass, and whether someone may let it pass. */
export const gateFindingSchema = named(
  "GateFinding",
  z.object({
    finding: findingSchema,
    /** never (law, safety), only on the insurer's recorded acceptance, or by a named person with a reason */
    overridable: z.enum(["never", "insurer", "person"]),
    override: z
      .object({
        by: z.string(),
        role: z.string(),
        at: instantSchema,
        /** left out where the finding itself is not for whoever asks */
        reason: z.string().optional(),
      })
      .nullable(),
  }),
);

/** One of the thirteen gates as the glass reads it; states are the engine's. */
export const gateOnGlassSchema = named(
  "GateOnGlass",
  z.object({
    gate: gateSchema,
    state: z.enum(GATE_STATES),
    dueAt: instantSchema,
    isDue: z.boolean(),
    checkedAt: instantSchema.nullable(),
    findings: z.array(gateFindingSchema),
  }),
);

const glassReasonSchema = named(
  "GlassReason",
  z.object({ gate: gateSchema, code: z.string(), about: z.string().optional() }),
);

export const glassSchema = named(
  "Glass",
  z.object({
    state: glassStateSchema,
    /** the glass as it stood before the last change, for the set-hand; null the first time */
    before: z.object({ state: glassStateSchema, at: instantSchema }).nullable(),
    gates: z.array(gateOnGlassSchema).length(13),
    /** what makes the state what it is */
    because: z.array(glassReasonSchema),
  }),
);

export const overrideSchema = named(
  "OverrideRequest",
  z.strictObject({
    gate: gateSchema,
    /** code and about of the finding, as on the glass */
    code: textSchema(120),
    about: z.string().max(120).optional(),
    reason: z.string().trim().min(3).max(500),
    /** for findings about cover: what the insurer said, and who said it */
    insurer: z
      .strictObject({ reference: textSchema(60), acceptedBy: textSchema(80), on: dateSchema })
      .optional(),
  }),
);
