import { uuidv7 } from "uuidv7";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { HirerLinkTable } from "./tables.ts";
import type { HirerLinkRow, Store } from "./types.ts";

const read = (row: HirerLinkTable): HirerLinkRow => ({
  id: row.id,
  hireId: row.hire_id,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
  createdAt: row.created_at,
});

/** Links of a hirer to one hire; the token itself is never here. */
export function linksStore(door: Door): Store["links"] {
  return {
    async create({ hireId, tokenHash, expiresAt }) {
      const row = {
        id: uuidv7(),
        token_hash: tokenHash,
        hire_id: hireId,
        expires_at: toInstantText(expiresAt, "expiresAt"),
        revoked_at: null,
        created_at: door.now(),
      };
      await door.insert("hirer_link", row).execute();
      return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async ofHire(hireId) {
      const rows = await door
        .from("hirer_link")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
    async revoke(id) {
      const { numUpdatedRows } = await door
        .change("hirer_link", { revoked_at: door.now() })
        .where("id", "=", id)
        .where("revoked_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
  };
}
