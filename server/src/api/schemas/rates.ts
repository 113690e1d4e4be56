import { termsSchema } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, findingSchema, idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

const runSchema = z.object({ from: z.string(), to: z.string(), days: z.int() });
export const checkTermsSchema = named(
  "CheckTerms",
  z.strictObject({
    terms: termsSchema,
    /** first day of the year that is shown */
    from: dateSchema,
  }),
);
export const termsPreviewSchema = named(
  "TermsPreview",
  z.object({
    findings: z.array(findingSchema),
    gaps: z.array(runSchema),
    overlaps: z.array(runSchema.extend({ wins: z.string(), over: z.string() })),
    classes: z.array(z.string()),
    days: z.array(
      z.object({
        date: dateSchema,
        season: z.string().nullable(),
        under: z.array(z.string()),
        minimumNights: z.int(),
        nightPence: z.record(z.string(), z.int()),
        weekPence: z.record(z.string(), z.int()),
      }),
    ),
  }),
);
export const termsVersionsSchema = named(
  "TermsVersions",
  z.object({
    versions: z.array(
      z.object({
        versionId: idSchema,
        termsId: z.string(),
        validFrom: dateSchema,
        writtenAt: instantSchema,
        /** before: over · now: holds today · later: from its day on */
        when: z.enum(["before", "now", "later"]),
      }),
    ),
  }),
);
export const termsVersionSchema = named(
  "TermsVersion",
  z.object({ versionId: idSchema, terms: termsSchema }),
);
