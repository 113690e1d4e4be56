import { driverSchema } from "@setfair/engine";
import * as z from "zod";
import { idSchema, instantSchema, textSchema } from "./common.ts";
import { discountSchema, lostReasonSchema } from "./enquiries.ts";
import { named } from "./named.ts";

// What a page sends about one hire.

export const setVehicleSchema = named("SetVehicle", z.strictObject({ vehicleId: idSchema }));

export const setDriversSchema = named(
  "SetDrivers",
  z.strictObject({ drivers: z.array(driverSchema).max(6) }),
);

export const quoteRequestSchema = named(
  "QuoteRequest",
  z.strictObject({
    /** extras by the id in the terms, with the number wanted */
    extras: z
      .array(z.strictObject({ id: idSchema, count: z.int().min(1).max(20) }))
      .max(30)
      .default([]),
    /** within what the terms let this role give; recorded with its reason */
    discount: z.optional(discountSchema),
    /** the customer accepted the quote as shown */
    accept: z.boolean().default(false),
  }),
);

export const endSchema = named(
  "EndHire",
  z.strictObject({
    as: z.enum(["lost", "cancelled", "noShow"]),
    reason: textSchema(500),
    code: lostReasonSchema.optional(),
  }),
);

export const hirerLinkSchema = named(
  "HirerLink",
  z.object({ url: z.string(), token: z.string(), expires: instantSchema }),
);
