import { insurancePolicySchema, termsSchema } from "@setfair/engine";
import * as z from "zod";
import { idSchema } from "./common.ts";
import { named } from "./named.ts";

named("Terms", termsSchema);
named("InsurancePolicy", insurancePolicySchema);

export const termsAnswerSchema = named(
  "TermsAnswer",
  z.object({
    /** the versions written last, whatever their date: what a new one of each is based on */
    newest: z.object({ hire: z.string(), insurance: z.string() }),
    hire: z.object({ versionId: idSchema, terms: termsSchema }).nullable(),
    insurance: z.object({ versionId: idSchema, policy: insurancePolicySchema }).nullable(),
  }),
);
export const putTermsSchema = named(
  "PutTerms",
  z.strictObject({ hire: z.optional(termsSchema), insurance: z.optional(insurancePolicySchema) }),
);
