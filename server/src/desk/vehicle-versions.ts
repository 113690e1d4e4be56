import { diffDescriptions } from "@setfair/engine";
import type { z } from "zod";
import type { vehicleVersionsSchema } from "../api/schemas/vehicles.ts";
import type { DatedVersion, Store } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";
import { accountNames } from "./names.ts";

export type VehicleVersions = z.input<typeof vehicleVersionsSchema>;

const described = ({ document }: DatedVersion) => asDocument<VehicleDocument>(document).description;

/** Who wrote each version, by its id; the audit trail says. */
async function authors(store: Store, vehicleId: string): Promise<ReadonlyMap<string, string>> {
  const { rows } = await store.audit.list({ about: vehicleId, limit: 200 });
  const nameOf = await accountNames(store);
  return new Map(
    rows.flatMap(({ act, by, document }) =>
      act === "vehicle.described" && typeof document.versionId === "string"
        ? [[document.versionId, nameOf(by)] as const]
        : [],
    ),
  );
}

/** Every version, newest first, with what differs from the one that held before it. Empty list where there is no such vehicle. */
export async function vehicleVersions(store: Store, id: string, today: string): Promise<VehicleVersions> {
  const versions = await store.vehicles.versions(id);
  const inForce = await store.vehicles.on(id, today);
  const by = await authors(store, id);
  const last = versions.at(-1);
  return {
    id,
    name: inForce === null ? (last === undefined ? "" : described(last).name) : described(inForce).name,
    versions: versions
      .map((version, k) => {
        const before = versions[k - 1];
        return {
          versionId: version.versionId,
          validFrom: version.validFrom,
          at: version.createdAt,
          by: by.get(version.versionId) ?? null,
          isReplaced: versions[k + 1]?.validFrom === version.validFrom,
          isInForce: version.versionId === inForce?.versionId,
          changes: before === undefined ? [] : [...diffDescriptions(described(before), described(version))],
        };
      })
      .reverse(),
  };
}
