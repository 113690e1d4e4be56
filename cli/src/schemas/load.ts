import { LOAD_LINE_KINDS, LOAD_PLACES } from "@setfair/engine";
import * as z from "zod/mini";
import { answerSchema, figureSchema } from "./answer.ts";

const against = z.strictObject({
  load: figureSchema,
  limit: figureSchema,
  margin: figureSchema,
  sdKg: z.number(),
  chanceOver: figureSchema,
});
const line = z.strictObject({
  id: z.string(),
  kind: z.enum(LOAD_LINE_KINDS),
  name: z.string(),
  mass: figureSchema,
  behindFrontAxleM: z.nullable(z.number()),
  front: figureSchema,
  rear: figureSchema,
  sdKg: z.number(),
  removable: z.boolean(),
});
const step = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("leaveItem"), id: z.string(), name: z.string(), byKg: z.number() }),
  z.strictObject({
    kind: z.literal("lessWater"),
    fromLitres: z.number(),
    toLitres: z.number(),
    byKg: z.number(),
  }),
  z.strictObject({ kind: z.literal("fewerCylinders"), from: z.int(), to: z.int(), byKg: z.number() }),
  z.strictObject({
    kind: z.literal("lessOfItem"),
    id: z.string(),
    name: z.string(),
    leftKg: z.number(),
    byKg: z.number(),
  }),
  z.strictObject({
    kind: z.literal("moveItem"),
    id: z.string(),
    name: z.string(),
    from: z.enum(LOAD_PLACES),
    to: z.enum(LOAD_PLACES),
    behindFrontAxleM: z.number(),
    byKg: z.number(),
  }),
]);

export const loadOutputSchema = answerSchema(
  z.strictObject({
    lines: z.array(line),
    total: against,
    front: against,
    rear: against,
    tyres: z.nullable(z.strictObject({ front: against, rear: against })),
    payload: figureSchema,
    payloadUsed: figureSchema,
    minimumPayload: figureSchema,
    plated: z.strictObject({
      mam: figureSchema,
      technicalMax: figureSchema,
      unladen: z.nullable(figureSchema),
    }),
    frontShare: figureSchema,
    places: z.array(
      z.strictObject({ place: z.enum(LOAD_PLACES), load: figureSchema, limit: z.nullable(figureSchema) }),
    ),
    counterOffer: z.nullable(
      z.strictObject({ short: figureSchema, payloadNeeded: figureSchema, vehiclesLikeThis: figureSchema }),
    ),
    needsWeighbridge: z.boolean(),
    legal: z.boolean(),
    leastChange: z.strictObject({
      objective: z.literal("leastTrouble"),
      trouble: z.number(),
      outcome: z.enum(["notNeeded", "found", "none"]),
      steps: z.array(step),
      after: z.strictObject({ totalKg: z.number(), frontKg: z.number(), rearKg: z.number() }),
      complete: z.boolean(),
    }),
  }),
);
