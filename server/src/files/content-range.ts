/**
 * Reads `Content-Range: bytes first-last/total` of a part (RFC 9110 §14.4). Without the header the body is the
 * whole: `length` is its size. Where all bytes came and no answer did, `bytes *\/total` with an empty body asks for the
 * rest of nothing.
 * @returns null where the header is there and cannot be used, or does not fit the length of the body
 */
export function readContentRange(
  header: string | undefined,
  length: number | undefined,
): { readonly from: number; readonly total: number } | null {
  if (header === undefined) return length === undefined ? null : { from: 0, total: length };
  const all = /^bytes \*\/(\d{1,15})$/.exec(header.trim());
  if (all !== null) return length === 0 ? { from: Number(all[1]), total: Number(all[1]) } : null;
  const match = /^bytes (\d{1,15})-(\d{1,15})\/(\d{1,15})$/.exec(header.trim());
  if (match === null) return null;
  const [from, last, total] = match.slice(1).map(Number) as [number, number, number];
  if (from > last || last >= total) return null;
  if (length !== undefined && length !== last - from + 1) return null;
  return { from, total };
}
