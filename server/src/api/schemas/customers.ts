import * as z from "zod";
import { textSchema } from "./common.ts";
import { named } from "./named.ts";

/** What a notice of a fine asks of a driver beside name and birthday. What is left out stays as it is. */
export const driverParticularsSchema = named(
  "PutDriverParticulars",
  z.strictObject({
    address: textSchema(300).optional(),
    /** sealed at rest, erased a while after the return */
    licenceNumber: z.string().trim().min(4).max(30).optional(),
  }),
);
export const licenceNumberSchema = named("LicenceNumber", z.object({ licenceNumber: z.string() }));
