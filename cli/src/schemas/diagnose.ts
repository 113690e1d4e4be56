import { CHECK_ANSWERS, DIAGNOSIS_OUTCOMES } from "@setfair/engine";
import * as z from "zod/mini";
import { answerSchema, figureSchema } from "./answer.ts";

const proposed = z.strictObject({
  check: z.string(),
  minutes: figureSchema,
  /** chance that this check finds the cause, if it comes to it */
  finds: figureSchema,
  /** chance that it comes to it */
  reached: figureSchema,
  causes: z.array(z.string()),
  danger: z.union([z.literal(0), z.literal(1), z.literal(2)]),
});

export const diagnoseOutputSchema = answerSchema(
  z.nullable(
    z.strictObject({
      symptom: z.string(),
      systemId: z.string(),
      systemKind: z.string(),
      dangerous: z.boolean(),
      outcome: z.enum(DIAGNOSIS_OUTCOMES),
      causes: z.array(
        z.strictObject({ cause: z.string(), chance: figureSchema, leadsTo: z.nullable(z.string()) }),
      ),
      next: z.nullable(proposed),
      plan: z.array(proposed),
      expectedMinutes: z.nullable(figureSchema),
      goOnWith: z.nullable(z.string()),
      leftForTrained: z.array(z.string()),
      tried: z.array(z.strictObject({ check: z.string(), answer: z.enum(CHECK_ANSWERS) })),
    }),
  ),
);
