import { insurancePolicySchema, placeSchema, termsSchema } from "@setfair/engine";
import * as z from "zod";
import { ROLES } from "../../auth/roles.ts";
import { dateSchema, distancesSchema, idSchema, textSchema } from "./common.ts";
import { openingHoursSchema } from "./depot.ts";
import { named } from "./named.ts";

export const roleSchema = z.enum(ROLES);

export const signInSchema = named(
  "SignIn",
  z.strictObject({ login: z.string().trim().min(1).max(200), password: z.string().min(1).max(200) }),
);

export const sessionSchema = named(
  "Session",
  z.object({
    user: z.object({ id: idSchema, name: z.string(), login: z.string(), role: roleSchema }),
    firm: z.object({ id: idSchema, name: z.string() }),
    depot: z.object({
      id: idSchema,
      name: z.string(),
      telephone: z.string(),
      timeZone: z.string(),
      distances: distancesSchema,
      /** where trips begin and end */
      place: placeSchema,
    }),
    /** actions this person may do, from the role table */
    may: z.array(z.string()),
    /** papers of a hire that this person may open */
    papers: z.array(z.string()),
    /** today in the depot's zone */
    today: dateSchema,
    /** true while the invented firm is loaded */
    demo: z.boolean(),
  }),
);

export const setupStateSchema = named("SetupState", z.object({ open: z.boolean() }));

export const setupSchema = named(
  "Setup",
  z.strictObject({
    firm: z.strictObject({ name: textSchema(80) }),
    depot: z.strictObject({
      name: textSchema(80),
      telephone: textSchema(30),
      timeZone: textSchema(60),
      country: z.string().regex(/^[A-Z]{2}$/),
      latitudeDeg: z.number().min(34).max(72),
      longitudeDeg: z.number().min(-25).max(40),
      hours: openingHoursSchema,
      distances: distancesSchema.optional(),
    }),
    /** hire terms and the insurer's criteria as data; a plain set is proposed where left out */
    terms: z.optional(termsSchema),
    insurance: z.optional(insurancePolicySchema),
    manager: z.strictObject({
      name: textSchema(80),
      login: textSchema(200),
      password: z.string().min(12).max(200),
    }),
  }),
);
