import { licenceSchema } from "@setfair/engine";
import * as z from "zod";
import { dateSchema, idSchema, instantSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

/** A check code as the driver made it: kept sealed until it is used or dead, then erased. */
export const newCheckCodeSchema = named(
  "NewCheckCode",
  z.strictObject({ code: z.string().trim().min(4).max(20), madeOn: dateSchema }),
);
/** The entitlement as it was seen; with a code, the code is used up and erased. */
export const licenceCheckSchema = named(
  "LicenceCheck",
  z.strictObject({
    how: z.enum(["code", "other"]),
    /** the driver agreed to the look-up; without it nobody looks */
    consent: z.boolean(),
    /** what was looked at instead: needed where `how` is `other` */
    seen: textSchema(200).optional(),
    /** what the authority's answer says */
    licence: licenceSchema,
  }),
);
export const driverChecksSchema = named(
  "DriverChecks",
  z.object({
    drivers: z.array(
      z.object({
        driverId: idSchema,
        name: z.string(),
        mayDrive: z.enum(["yes", "no", "unchecked"]).nullable(),
        /** first day on which a code made then still lives when the keys go */
        askFrom: dateSchema,
        /** a code can be had at all: not for a licence from elsewhere */
        hasCode: z.boolean(),
        address: z.string().nullable(),
        /** a licence number is kept, sealed, until this day; null where none was given */
        numberUntil: dateSchema.nullable(),
        /** who gave the number that is kept; null where none is, or where that was not noted yet */
        numberGiven: z.object({ by: z.string(), at: instantSchema }).nullable(),
        /** of address and number, and of the code: what a change is based on; 0 where nothing is kept */
        versions: z.object({ particulars: z.int(), code: z.int() }),
        code: z.object({ madeOn: dateSchema, lastDay: dateSchema, isUsable: z.boolean() }).nullable(),
        checks: z.array(
          z.object({
            how: z.enum(["code", "other"]),
            by: z.string(),
            at: instantSchema,
            on: dateSchema,
            seen: z.string().nullable(),
            licence: licenceSchema,
          }),
        ),
      }),
    ),
  }),
);
export const checkCodeAnswerSchema = named("CheckCodeAnswer", z.object({ code: z.string() }));
