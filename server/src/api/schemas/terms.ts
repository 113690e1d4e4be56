import { insurancePolicySchema, termsSchema } from "@setfair/engine";
import * as z from "zod";
import { idSchema } from "./common.ts";
import { named } from "./named.ts";

named("Terms", termsSchema);
named("InsurancePolicy", insurancePolicySchema);

export const termsAnswerSchema = named(
  "TermsAnswer",
  z.object({
    hire: z.object({ versionId: idSchema, terms: termsSchema }).nullable(),
    insurance: z.object({ versionId: idSchema, policy: insurancePolicySchema }).nullable(),
  }),
);
export const putTermsSchema = named(
  "PutTerms",
  z.strictObject({ hire: z.optional(termsSchema), insurance: z.optional(insurancePolicySchema) }),
);
