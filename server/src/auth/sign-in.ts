import type { Database, SessionAnswer } from "../store/types.ts";
import { checkPassword } from "./passwords.ts";
import { hashToken, newToken } from "./tokens.ts";

/** Hours that a session lasts: a long day at the desk, not a week. */
export const SESSION_HOURS = 14;

export type SignInAnswer =
  | { readonly ok: true; readonly token: string; readonly session: SessionAnswer }
  /** one answer for every reason, so that nobody learns which logins exist */
  | { readonly ok: false; readonly why: "wrongSignIn" };

/** Signs in with login and password; the token goes into the cookie and is kept nowhere. */
export async function signIn(
  database: Database,
  login: string,
  password: string,
  now: Date,
): Promise<SignInAnswer> {
  const account = login.includes("\0") ? null : await database.system.accountByLogin(login);
  const fits = await checkPassword(account?.passwordHash ?? null, password);
  if (account === null || !fits || account.disabledAt !== null) return { ok: false, why: "wrongSignIn" };
  const { token, tokenHash } = newToken();
  await database.system.createSession({
    tokenHash,
    accountId: account.id,
    scope: { firmId: account.firmId, depotId: account.depotId },
    expiresAt: new Date(now.getTime() + SESSION_HOURS * 3_600_000).toISOString(),
  });
  const session = await database.system.session(tokenHash);
  return session === null ? { ok: false, why: "wrongSignIn" } : { ok: true, token, session };
}

/** Who signed a request; null where the token is unknown, too old, or the account is shut out. */
export function sessionOf(database: Database, token: string): Promise<SessionAnswer | null> {
  return database.system.session(hashToken(token));
}

export function signOut(database: Database, token: string): Promise<void> {
  return database.system.endSession(hashToken(token));
}
