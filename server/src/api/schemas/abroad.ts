import { abroadPapersSchema, CROSSINGS } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, findingSchema, roomResultSchema } from "./common.ts";
import { named } from "./named.ts";

named("AbroadPapers", abroadPapersSchema);
const country = z.string().regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)");

/** What has been said and got together for a journey abroad. */
export const abroadSchema = named(
  "Abroad",
  z.strictObject({
    through: z.array(country).max(15),
    crossings: z.array(z.strictObject({ kind: z.enum(CROSSINGS), on: dateSchema })).max(20),
    noCrossing: z.boolean(),
    papers: abroadPapersSchema,
    kitAboard: z.array(z.string().min(1).max(40)).max(60),
    got: z.array(z.string().min(1).max(80)).max(200),
    overhang: z.boolean(),
    plateShowsUk: z.boolean(),
    gaugeWorks: z.boolean().optional(),
    fillShare: z.number().min(0).max(1).optional(),
  }),
);

export const abroadStateSchema = named(
  "AbroadState",
  z.object({
    abroad: abroadSchema,
    /** country of the depot */
    home: z.string(),
    /** null while there is no vehicle or no trip; the room's own result (`CountriesResult`) */
    countries: roomResultSchema.nullable(),
    crossing: roomResultSchema.nullable(),
    findings: z.array(findingSchema),
  }),
);
