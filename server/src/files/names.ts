import type { Scope } from "../store/types.ts";

const HASH = /^[0-9a-f]{64}$/;
const ID = /^[0-9a-zA-Z-]{1,80}$/;
const ORIGINAL = /^([0-9a-zA-Z-]{1,80})\/([0-9a-zA-Z-]{1,80})\/([0-9a-f]{2})\/(\3[0-9a-f]{62})\.jpg$/;

/** Every part of a name is checked, so that no path can lead elsewhere. */
export const isPhotographName = (scope: Scope, sha256: string): boolean =>
  HASH.test(sha256) && ID.test(scope.firmId) && ID.test(scope.depotId);

/** Where an original lies below the folder of photographs, or in the bucket: the same in both. */
export const pathOfOriginal = ({ firmId, depotId }: Scope, sha256: string): string =>
  `${firmId}/${depotId}/${sha256.slice(0, 2)}/${sha256}.jpg`;

/** Whose original lies at a path; null for what is not one, such as a smaller picture. */
export function scopeOfPath(path: string): { readonly scope: Scope; readonly sha256: string } | null {
  const match = ORIGINAL.exec(path);
  if (match === null) return null;
  const [, firmId = "", depotId = "", , sha256 = ""] = match;
  return { scope: { firmId, depotId }, sha256 };
}
