import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, concatBytes, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalJson } from "./json.ts";

/** SHA-256 in lower-case hex. @source FIPS 180-4 */
export function sha256Hex(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** SHA-256 of the canonical JSON of a value; what frozen results and versions of documents are named by. */
export function hashJson(value: unknown): string {
  return sha256Hex(utf8ToBytes(canonicalJson(value)));
}

/**
 * SHA-256 of the 16 raw bytes of the salt followed by the UTF-8 bytes of the canonical JSON.
 * @param salt 32 hex digits
 */
export function hashSalted(salt: string, value: unknown): string {
  return sha256Hex(concatBytes(hexToBytes(salt), utf8ToBytes(canonicalJson(value))));
}
