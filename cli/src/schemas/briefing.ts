import { MOMENTS } from "@setfair/engine";
import * as z from "zod/mini";
import { answerSchema, figureSchema } from "./answer.ts";

const card = z.strictObject({
  id: z.string(),
  moment: z.enum(MOMENTS),
  mentions: z.array(z.string()),
  chance: z.number(),
  costPence: z.number(),
  minutes: z.number(),
  must: z.boolean(),
  handsOn: z.boolean(),
  hasCaution: z.boolean(),
  hasQuestion: z.boolean(),
  facts: z.record(z.string(), z.union([z.number(), z.string()])),
});
const placed = z.strictObject({
  card,
  systemId: z.string(),
  systemKind: z.string(),
  risk: figureSchema,
  minutes: figureSchema,
  why: z.enum(["must", "worthTheTime", "noTimeLeft", "alreadyKnown"]),
});

export const briefingOutputSchema = answerSchema(
  z.strictObject({ demonstrate: z.array(placed), reading: z.array(placed), minutes: figureSchema }),
);
