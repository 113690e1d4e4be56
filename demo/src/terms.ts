import {
  type InsurancePolicy,
  insurancePolicySchema,
  parseWith,
  type Terms,
  termsSchema,
} from "@setfair/engine";
import insuranceData from "./insurance.json" with { type: "json" };
import termsData from "./terms.json" with { type: "json" };

/** The terms and the insurer's criteria of the invented firm, checked by their rooms. */
export const demoTerms = (today: string): Terms =>
  parseWith(termsSchema, { ...termsData, validFrom: `${yearOf(today) - 1}-01-01` });
export const demoInsurance = (today: string): InsurancePolicy =>
  parseWith(insurancePolicySchema, {
    ...insuranceData,
    validFrom: `${yearOf(today) - 1}-01-01`,
    validTo: `${yearOf(today) + 2}-12-31`,
  });
const yearOf = (date: string) => Number(date.slice(0, 4));
