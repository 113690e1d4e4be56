import { createHash, randomBytes } from "node:crypto";

/** A token is shown once, to whom it is for; only its hash is kept. */
export interface Token {
  /** 256 random bits, base64url */
  readonly token: string;
  readonly tokenHash: string;
}

/** SHA-256 in hex. No salt or slow hash: the token is random and as long as the hash. */
export function hashToken(token: string): string {
  return createHash("sha256").update(token, "utf8").digest("hex");
}

export function newToken(): Token {
  const token = randomBytes(32).toString("base64url");
  return { token, tokenHash: hashToken(token) };
}
