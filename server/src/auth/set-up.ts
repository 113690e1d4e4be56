import { BadInput } from "@setfair/engine";
import * as z from "zod";
import type { Database, Scope } from "../store/types.ts";
import { hashPassword } from "./passwords.ts";
import { hashToken, newToken } from "./tokens.ts";

const name = z.string().trim().min(1).max(120);
const isTimeZone = (zone: string) => {
  try {
    return new Intl.DateTimeFormat("en", { timeZone: zone }) !== null;
  } catch {
    return false;
  }
};
const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "a time as HH:MM, such as 09:00");

/** What the one-time link asks for: firm, depot, hours, terms, first manager. */
export const setUpSchema = z.strictObject({
  firm: z.strictObject({ name }),
  depot: z.strictObject({
    name,
    timeZone: z.string().max(60).refine(isTimeZone, "expected an IANA time zone, such as Europe/London"),
    telephone: z.string().max(40).optional(),
    address: z.string().max(400).optional(),
    /** by day of the week, 1 Monday to 7 Sunday; a day left out is closed */
    hours: z
      .array(z.strictObject({ day: z.int().min(1).max(7), opens: clock, closes: clock }))
      .max(14)
      .refine((days) => days.every(({ opens, closes }) => opens < closes), "expected closes after opens"),
  }),
  terms: z
    .array(
      z.strictObject({
        of: z.string().min(1).max(40),
        validFrom: z.iso.date(),
        document: z.record(z.string(), z.unknown()),
      }),
    )
    .max(20),
  manager: z.strictObject({
    login: z.string().trim().min(3).max(120),
    name,
    password: z.string().min(10).max(200),
  }),
});

/** Hours that a set-up link serves. */
export const SET_UP_HOURS = 48;

/** A link that makes a firm, once. The token stands in the address and is kept nowhere. */
export async function makeSetUpLink(
  database: Database,
  now: Date,
): Promise<{ token: string; expiresAt: string }> {
  const { token, tokenHash } = newToken();
  const expiresAt = new Date(now.getTime() + SET_UP_HOURS * 3_600_000).toISOString();
  await database.system.createSetupLink({ tokenHash, expiresAt });
  return { token, expiresAt };
}

export type SetUpAnswer =
  | { readonly ok: true; readonly scope: Scope; readonly accountId: string }
  | { readonly ok: false; readonly why: "linkUnusable" };

/**
 * Makes the firm. The link is used up only when everything was made.
 * @throws BadInput naming each field
 */
export async function setUp(database: Database, token: string, input: unknown): Promise<SetUpAnswer> {
  const parsed = setUpSchema.safeParse(input);
  if (!parsed.success) {
    throw new BadInput(
      parsed.error.issues.map(({ path, message }) => ({
        path: path.map(String).join("."),
        expected: message,
      })),
    );
  }
  const { firm, depot, terms, manager } = parsed.data;
  const { name, timeZone, ...document } = depot;
  if ((await database.system.accountByLogin(manager.login)) !== null) {
    throw new BadInput([{ path: "manager.login", expected: "a login that nobody else has" }]);
  }
  const passwordHash = await hashPassword(manager.password);
  return database.system.setUp(hashToken(token), {
    firm,
    depot: { name, timeZone, document },
    terms,
    manager: { login: manager.login, name: manager.name, passwordHash },
  });
}
