import { BadInput } from "@setfair/engine";
import type { Database, HirerLinkRow, LinkAnswer, Store } from "../store/types.ts";
import { hashToken, newToken } from "./tokens.ts";

/** Days after the return for which a link may still serve at most. */
export const LONGEST_AFTER_RETURN_DAYS = 60;

/**
 * An unguessable link to one hire. `expiresAt` must lie ahead and at most 60 days after the return.
 * The token goes to the hirer and is kept nowhere.
 */
export async function makeHirerLink(
  store: Store,
  hireId: string,
  expiresAt: Date,
  now: Date,
): Promise<{ readonly token: string; readonly link: HirerLinkRow } | null> {
  const hire = await store.hires.get(hireId);
  if (hire === null) return null;
  const latest = Math.max(Date.parse(hire.to), now.getTime()) + LONGEST_AFTER_RETURN_DAYS * 86_400_000;
  if (!(expiresAt.getTime() > now.getTime() && expiresAt.getTime() <= latest)) {
    throw new BadInput([
      {
        path: "expiresAt",
        expected: `ahead, and at most ${LONGEST_AFTER_RETURN_DAYS} days after the return`,
      },
    ]);
  }
  const { token, tokenHash } = newToken();
  return { token, link: await store.links.create({ hireId, tokenHash, expiresAt: expiresAt.toISOString() }) };
}

/** Which hire a link opens; null where it is unknown, too old or withdrawn. */
export function hirerOf(database: Database, token: string): Promise<LinkAnswer | null> {
  return database.system.hirerLink(hashToken(token));
}
