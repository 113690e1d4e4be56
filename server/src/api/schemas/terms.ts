import { insurancePolicySchema, termsSchema } from "@setfair/engine";
import * as z from "zod";
import { idSchema } from "./common.ts";
import { named } from "./named.ts";

named("Terms", termsSchema);
named("InsurancePolicy", insurancePolicySchema);

const hireVersion = z.object({ versionId: idSchema, terms: termsSchema }).nullable();
const insuranceVersion = z.object({ versionId: idSchema, policy: insurancePolicySchema }).nullable();

export const termsAnswerSchema = named(
  "TermsAnswer",
  z.object({
    hire: hireVersion,
    insurance: insuranceVersion,
    /** the versions written last, whatever their date: a new one is based on its `versionId`, or on `none` */
    newest: z.object({ hire: hireVersion, insurance: insuranceVersion }),
  }),
);
export const putTermsSchema = named(
  "PutTerms",
  z.strictObject({
    hire: z.optional(termsSchema),
    insurance: z.optional(insurancePolicySchema),
    /** what things are worth and repairs cost stay as they are on the day from which the hire terms hold, whatever is sent */
    pricesStay: z.optional(z.boolean()),
  }),
);
