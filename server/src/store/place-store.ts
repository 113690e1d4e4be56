import { uuidv7 } from "uuidv7";
import type { Role } from "../auth/roles.ts";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { AccountTable, DepotTable, Scoped } from "./tables.ts";
import type { AccountRow, DepotRow, Store } from "./types.ts";

export const readDepot = (row: DepotTable): DepotRow => ({
  id: row.depot_id,
  firmId: row.firm_id,
  name: row.name,
  timeZone: row.time_zone,
  document: fromText(row.document),
  version: row.version,
});

export const readAccount = (row: Omit<AccountTable, keyof Scoped>): AccountRow => ({
  id: row.id,
  login: row.login,
  name: row.name,
  role: row.role as Role, // written by accountsStore only, from a Role
  disabledAt: row.disabled_at,
  createdAt: row.created_at,
});

/** Logins are one per installation, whatever their case. */
export const foldLogin = (login: string): string => login.trim().toLowerCase();

export function depotStore(door: Door): Store["depot"] {
  const get = async () => readDepot(await door.from("depot").selectAll().executeTakeFirstOrThrow());
  return {
    get,
    async update(change, version) {
      const set = {
        ...(change.name === undefined ? {} : { name: change.name }),
        ...(change.timeZone === undefined ? {} : { time_zone: change.timeZone }),
        ...(change.document === undefined ? {} : { document: toText(change.document) }),
        version: version + 1,
      };
      const { numUpdatedRows } = await door
        .change("depot", set)
        .where("version", "=", version)
        .executeTakeFirst();
      if (numUpdatedRows === 1n) return { ok: true, version: version + 1 };
      return { ok: false, why: "stale", version: (await get()).version };
    },
  };
}

export function accountsStore(door: Door): Store["accounts"] {
  const get = async (id: string) => {
    const row = await door.from("account").selectAll().where("id", "=", id).executeTakeFirst();
    return row === undefined ? null : readAccount(row);
  };
  return {
    get,
    async list() {
      const rows = await door.from("account").selectAll().orderBy("name").orderBy("id").execute();
      return rows.map(readAccount);
    },
    async create({ id = uuidv7(), login, name, role, passwordHash }) {
      const added = await door
        .insert("account", {
          id,
          login: foldLogin(login),
          name,
          role,
          password_hash: passwordHash,
          disabled_at: null,
          created_at: door.now(),
        })
        .onConflict((on) => on.column("login").doNothing())
        .returning("id")
        .executeTakeFirst();
      if (added === undefined) return { ok: false, why: "loginTaken" };
      return { ok: true, account: (await get(id))! };
    },
    update: (id, change) =>
      door.within(async (inner) => {
        const set = {
          ...(change.name === undefined ? {} : { name: change.name }),
          ...(change.role === undefined ? {} : { role: change.role }),
          ...(change.passwordHash === undefined ? {} : { password_hash: change.passwordHash }),
          ...(change.disabled === undefined ? {} : { disabled_at: change.disabled ? inner.now() : null }),
        };
        if (Object.keys(set).length === 0) return false;
        const { numUpdatedRows } = await inner.change("account", set).where("id", "=", id).executeTakeFirst();
        // whoever knew the old password, or had the old role, signs in again
        await inner.remove("session").where("account_id", "=", id).execute();
        return numUpdatedRows === 1n;
      }),
  };
}
