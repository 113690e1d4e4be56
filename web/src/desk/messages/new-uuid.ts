/** A random UUID (version 4). By hand, since a page that is not secure has no `crypto.randomUUID`. */
export function newUuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const hex = [...bytes]
    .map((byte, k) => (k === 6 ? (byte & 0x0f) | 0x40 : k === 8 ? (byte & 0x3f) | 0x80 : byte))
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}
