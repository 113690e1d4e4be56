import * as z from "zod";
import { idSchema, instantSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

/** Who may be given a sign-in; a hirer comes by a link and has none. */
export const STAFF_ROLES = ["manager", "desk", "yard"] as const;
const role = z.enum(STAFF_ROLES);
/** as long as the first manager's at set-up */
const password = z.string().min(12).max(200);

export const accountSchema = named(
  "Account",
  z.object({
    id: idSchema,
    name: z.string(),
    login: z.string(),
    role,
    /** since when it is shut; null while it can be used */
    shutAt: instantSchema.nullable(),
    createdAt: instantSchema,
    /** what a change of it is based on */
    version: z.string(),
  }),
);
export const accountsSchema = named("Accounts", z.object({ accounts: z.array(accountSchema) }));

export const newAccountSchema = named(
  "NewAccount",
  z.strictObject({ name: textSchema(80), login: textSchema(200), role, password }),
);
export const changeAccountSchema = named(
  "ChangeAccount",
  z.strictObject({ name: textSchema(80), role, shut: z.boolean() }),
);
export const setPasswordSchema = named("SetPassword", z.strictObject({ password }));
export const ownPasswordSchema = named(
  "OwnPassword",
  z.strictObject({ current: z.string().min(1).max(200), password }),
);
