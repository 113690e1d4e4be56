import canonicalize from "canonicalize";

/** A JSON value as RFC 8785 needs it (I-JSON): finite numbers, well-formed strings, no undefined. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
export type JsonObject = { readonly [key: string]: Json };

const MAX_DEPTH = 32;

/** No half of a surrogate pair stands alone. */
const isWellFormed = (text: string) => !/\p{Surrogate}/u.test(text);

/** Where a value is not I-JSON: the path and what was expected; null when it is. Own check, since a library may drop what it cannot write. */
export function findNotJson(value: unknown, path = "", depth = 0): { path: string; expected: string } | null {
  if (depth > MAX_DEPTH) return { path, expected: `at most ${MAX_DEPTH} levels` };
  if (value === null || typeof value === "boolean") return null;
  if (typeof value === "number") return Number.isFinite(value) ? null : { path, expected: "a finite number" };
  if (typeof value === "string")
    return isWellFormed(value) ? null : { path, expected: "well-formed Unicode" };
  if (typeof value !== "object") return { path, expected: "a JSON value" };
  if (Array.isArray(value))
    return firstOf(
      value.map((item, index) => [String(index), item] as const),
      path,
      depth,
    );
  if (Object.getPrototypeOf(value) !== Object.prototype && Object.getPrototypeOf(value) !== null) {
    return { path, expected: "a plain JSON object" };
  }
  return firstOf(Object.entries(value), path, depth);
}

function firstOf(entries: readonly (readonly [string, unknown])[], path: string, depth: number) {
  for (const [key, item] of entries) {
    const here = path === "" ? key : `${path}.${key}`;
    const found = isWellFormed(key)
      ? findNotJson(item, here, depth + 1)
      : { path: here, expected: "a well-formed key" };
    if (found !== null) return found;
  }
  return null;
}

/**
 * Canonical JSON.
 * @source RFC 8785, JSON Canonicalization Scheme, 2020
 * @throws TypeError where the value is not I-JSON, naming the field
 */
export function canonicalJson(value: unknown): string {
  const wrong = findNotJson(value);
  if (wrong !== null) throw new TypeError(`${wrong.path || "value"}: expected ${wrong.expected}`);
  return canonicalize(value) as string;
}
