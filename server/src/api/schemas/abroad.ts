import { abroadPapersSchema, CROSSINGS, Temporal } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, findingSchema, roomResultSchema } from "./common.ts";
import { named } from "./named.ts";

named("AbroadPapers", abroadPapersSchema);
/** Whether a name is a zone of the time zone database. */
function isZone(zone: string): boolean {
  try {
    Temporal.PlainDateTime.from("2000-01-01T00:00").toZonedDateTime(zone);
    return true;
  } catch {
    return false;
  }
}
const crossing = z.strictObject({
  kind: z.enum(CROSSINGS),
  on: dateSchema,
  /** civil time at which it leaves, in `zone` */
  at: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time HH:MM")
    .optional(),
  /** IANA time zone of the port; the depot's own where left out */
  zone: z.string().max(60).refine(isZone, "expected an IANA time zone, such as Europe/Paris").optional(),
});
const country = z.string().regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)");

/** What has been said and got together for a journey abroad. */
export const abroadSchema = named(
  "Abroad",
  z.strictObject({
    through: z.array(country).max(15),
    crossings: z.array(crossing).max(20),
    noCrossing: z.boolean(),
    papers: abroadPapersSchema,
    kitAboard: z.array(z.string().min(1).max(40)).max(60),
    got: z.array(z.string().min(1).max(80)).max(200),
    /** rules of zones or motorways that the route keeps out of; none where left out */
    avoided: z.array(z.string().min(1).max(80)).max(60).optional(),
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
    /** what a change of it is based on */
    version: z.int(),
    /** country of the depot */
    home: z.string(),
    /** null while there is no vehicle or no trip; the room's own result (`CountriesResult`) */
    countries: roomResultSchema.nullable(),
    crossing: roomResultSchema.nullable(),
    findings: z.array(findingSchema),
  }),
);
