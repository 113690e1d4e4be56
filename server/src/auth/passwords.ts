import { hash, verify } from "@node-rs/argon2";
import { BadInput } from "@setfair/engine";

const SHORTEST = 10;
const LONGEST = 200;

/** Argon2id (the library's own choice), 19 MiB, two passes, one lane: the least that the OWASP Password Storage Cheat Sheet asks (from memory). */
const OPTIONS = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** @throws BadInput where it is too short or too long; the text itself is never in the message */
export async function hashPassword(password: string): Promise<string> {
  if (password.length < SHORTEST || password.length > LONGEST) {
    throw new BadInput([{ path: "password", expected: `${SHORTEST} to ${LONGEST} characters` }]);
  }
  return hash(password.normalize("NFKC"), OPTIONS);
}

let nobody: Promise<string> | null = null;

/** Whether the password fits. Without a hash (no such account) it takes as long and answers no. */
export async function checkPassword(passwordHash: string | null, password: string): Promise<boolean> {
  nobody ??= hash("nobody signs in with this", OPTIONS);
  const against = passwordHash ?? (await nobody);
  if (password.length > LONGEST) return false;
  const fits = await verify(against, password.normalize("NFKC")).catch(() => false);
  return fits && passwordHash !== null;
}
