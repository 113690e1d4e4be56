import { createCipheriv, createDecipheriv, randomBytes } from "node:crypto";

/** Encrypts short texts at rest. `bound` names the place, so that a sealed text does not open elsewhere. */
export interface Sealer {
  seal(text: string, bound: string): string;
  /** @throws where the key is another, the text was changed, or it belongs to another place */
  open(sealed: string, bound: string): string;
}

const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/** AES-256-GCM with a random nonce. @source NIST SP 800-38D */
export function makeSealer(key: Buffer): Sealer {
  return {
    seal(text, bound) {
      const nonce = randomBytes(NONCE_BYTES);
      const cipher = createCipheriv("aes-256-gcm", key, nonce).setAAD(Buffer.from(bound));
      const body = Buffer.concat([cipher.update(text, "utf8"), cipher.final()]);
      return `v1.${Buffer.concat([nonce, cipher.getAuthTag(), body]).toString("base64url")}`;
    },
    open(sealed, bound) {
      const all = Buffer.from(sealed.replace(/^v1\./, ""), "base64url");
      const decipher = createDecipheriv("aes-256-gcm", key, all.subarray(0, NONCE_BYTES), {
        authTagLength: TAG_BYTES,
      })
        .setAAD(Buffer.from(bound))
        .setAuthTag(all.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES));
      return Buffer.concat([
        decipher.update(all.subarray(NONCE_BYTES + TAG_BYTES)),
        decipher.final(),
      ]).toString("utf8");
    },
  };
}
