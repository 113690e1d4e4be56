import * as z from "zod/mini";
import { STORE_IDS } from "../../stores/stores.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { CHECK_ANSWERS, HANDS } from "./types.ts";

const id = z.string().check(z.minLength(1), z.maxLength(120));

/** `setfair diagnose`: one vehicle, one symptom, and what is known so far. */
export const diagnosisInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  /** id of a symptom of a fitted system, e.g. heating.noHeat */
  symptom: id,
  /** what was tried, in order; the last answer to a check counts */
  answers: z._default(
    z.array(z.strictObject({ check: id, answer: z.enum(CHECK_ANSWERS) })).check(z.maxLength(100)),
    [],
  ),
  /** chance, 0 to 1, that a store is at the end that is trouble */
  stores: z.optional(
    z
      .array(
        z.strictObject({
          store: z.enum(STORE_IDS),
          troubleChance: z.number().check(z.minimum(0), z.maximum(1)),
        }),
      )
      .check(z.maxLength(20)),
  ),
  /** how often the depot found each cause behind this symptom */
  history: z.optional(
    z
      .array(z.strictObject({ cause: id, count: z.int().check(z.minimum(0), z.maximum(100_000)) }))
      .check(z.maxLength(200)),
  ),
  /** whose hands: a hirer's where left out */
  hands: z._default(z.enum(HANDS), "hirer"),
});
export type DiagnosisInput = z.infer<typeof diagnosisInputSchema>;
