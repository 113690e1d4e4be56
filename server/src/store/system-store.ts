import type { Kysely } from "kysely";
import { uuidv7 } from "uuidv7";
import type { Role } from "../auth/roles.ts";
import { toInstantText, toText } from "./codec.ts";
import { eraseCustomer } from "./customers-store.ts";
import type { StoreKind } from "./dialects.ts";
import { Door, type DoorContext } from "./door.ts";
import { eraseRecords } from "./erase-records.ts";
import { findFeed } from "./feeds-store.ts";
import { jobQueue } from "./jobs-store.ts";
import { eraseLicenceNamed } from "./licences-store.ts";
import { accountsStore, foldLogin, readAccount, readDepot } from "./place-store.ts";
import { removePhotographNamed } from "./remove-photographs.ts";
import { scopedStore } from "./scoped-store.ts";
import type { Tables } from "./tables.ts";
import type { Erasure, FirstFirm, LinkAnswer, Scope, SessionAnswer, SystemStore } from "./types.ts";

/** Firm, depot, terms and first manager; nothing of it where one fails. */
async function createFirm(db: Kysely<Tables>, context: DoorContext, first: FirstFirm) {
  const scope: Scope = { firmId: uuidv7(), depotId: uuidv7() };
  const { firm, depot, terms, manager } = first;
  await db
    .insertInto("firm")
    .values({
      firm_id: scope.firmId,
      name: firm.name,
      document: toText(firm.document ?? {}),
      created_at: context.now(),
    })
    .execute();
  const door = new Door(db, scope, context, []);
  await door
    .insert("depot", {
      name: depot.name,
      time_zone: depot.timeZone,
      document: toText(depot.document),
      version: 1,
    })
    .execute();
  const store = scopedStore(door);
  for (const version of terms) await store.terms.put(version);
  const made = await accountsStore(door).create({ ...manager, role: "manager" });
  if (!made.ok) throw new Error(`createFirm: the login ${manager.login} is taken`);
  return { scope, accountId: made.account.id };
}

async function findSession(
  db: Kysely<Tables>,
  now: string,
  tokenHash: string,
): Promise<SessionAnswer | null> {
  const session = await db
    .selectFrom("session")
    .selectAll()
    .where("token_hash", "=", tokenHash)
    .where("expires_at", ">", now)
    .executeTakeFirst();
  if (session === undefined) return null;
  const scope = { firmId: session.firm_id, depotId: session.depot_id };
  const account = await db
    .selectFrom("account")
    .selectAll()
    .where("firm_id", "=", scope.firmId)
    .where("depot_id", "=", scope.depotId)
    .where("id", "=", session.account_id)
    .where("disabled_at", "is", null)
    .executeTakeFirst();
  return account === undefined
    ? null
    : { scope, account: readAccount(account), expiresAt: session.expires_at };
}

async function findHirerLink(db: Kysely<Tables>, now: string, tokenHash: string): Promise<LinkAnswer | null> {
  const row = await db
    .selectFrom("hirer_link")
    .selectAll()
    .where("token_hash", "=", tokenHash)
    .where("expires_at", ">", now)
    .where("revoked_at", "is", null)
    .executeTakeFirst();
  if (row === undefined) return null;
  const scope = { firmId: row.firm_id, depotId: row.depot_id };
  return { scope, hireId: row.hire_id, linkId: row.id, expiresAt: row.expires_at };
}

/** Erases again what was erased before a restore; ids that are not there are passed over. */
async function applyErasure(door: Door, { kind, targetId }: Erasure): Promise<boolean> {
  // a list may name depots that this store does not have
  if ((await door.from("depot").select("depot_id").executeTakeFirst()) === undefined) return false;
  if (kind === "record") return (await eraseRecords(door, [targetId])) > 0;
  if (kind === "licence") return eraseLicenceNamed(door, targetId);
  if (kind === "photograph") return (await removePhotographNamed(door, targetId)) > 0;
  const row = await door.from("customer").select("erased_at").where("id", "=", targetId).executeTakeFirst();
  if (row === undefined || row.erased_at !== null) return false;
  return (await eraseCustomer(door, targetId, "system")) !== null;
}

/** What comes before a scope is known. */
export function systemStore(db: Kysely<Tables>, kind: StoreKind, context: DoorContext): SystemStore {
  const { now } = context;
  return {
    async firmCount() {
      const { n } = await db
        .selectFrom("firm")
        .select((s) => s.fn.countAll<number>().as("n"))
        .executeTakeFirstOrThrow();
      return Number(n);
    },
    createFirm: (first) => db.transaction().execute((trx) => createFirm(trx, context, first)),
    async depots() {
      return (await db.selectFrom("depot").selectAll().orderBy("name").orderBy("depot_id").execute()).map(
        readDepot,
      );
    },
    async accountByLogin(login) {
      const row = await db
        .selectFrom("account")
        .selectAll()
        .where("login", "=", foldLogin(login))
        .executeTakeFirst();
      if (row === undefined) return null;
      return {
        ...readAccount(row),
        role: row.role as Role,
        passwordHash: row.password_hash,
        firmId: row.firm_id,
        depotId: row.depot_id,
      };
    },
    async createSession({ tokenHash, accountId, scope, expiresAt }) {
      await db.deleteFrom("session").where("expires_at", "<=", now()).execute();
      await new Door(db, scope, context)
        .insert("session", {
          token_hash: tokenHash,
          account_id: accountId,
          created_at: now(),
          expires_at: toInstantText(expiresAt, "expiresAt"),
        })
        .execute();
    },
    session: (tokenHash) => findSession(db, now(), tokenHash),
    async endSession(tokenHash) {
      await db.deleteFrom("session").where("token_hash", "=", tokenHash).execute();
    },
    async endSessionsOf(accountId) {
      await db.deleteFrom("session").where("account_id", "=", accountId).execute();
    },
    async createSetupLink({ tokenHash, expiresAt }) {
      await db
        .insertInto("setup_link")
        .values({
          token_hash: tokenHash,
          created_at: now(),
          expires_at: toInstantText(expiresAt, "expiresAt"),
          used_at: null,
        })
        .execute();
    },
    setUp: (tokenHash, first) =>
      db.transaction().execute(async (trx) => {
        const { numUpdatedRows } = await trx
          .updateTable("setup_link")
          .set({ used_at: now() })
          .where("token_hash", "=", tokenHash)
          .where("used_at", "is", null)
          .where("expires_at", ">", now())
          .executeTakeFirst();
        if (numUpdatedRows !== 1n) return { ok: false, why: "linkUnusable" } as const;
        return { ok: true, ...(await createFirm(trx, context, first)) } as const;
      }),
    hirerLink: (tokenHash) => findHirerLink(db, now(), tokenHash),
    calendarFeed: (tokenHash) => findFeed(db, tokenHash),
    async erasures() {
      const rows = await db.selectFrom("erasure").selectAll().orderBy("at").orderBy("target_id").execute();
      return rows.map((row) => ({
        firmId: row.firm_id,
        depotId: row.depot_id,
        kind: row.kind as Erasure["kind"], // written from an Erasure only
        targetId: row.target_id,
        at: row.at,
      }));
    },
    async applyErasures(erasures) {
      let applied = 0;
      for (const erasure of erasures) {
        const scope = { firmId: erasure.firmId, depotId: erasure.depotId };
        // with the day on which it was erased, not that of the restore
        const door = new Door(db, scope, { ...context, now: () => erasure.at });
        if (await door.within((inner) => applyErasure(inner, erasure))) applied += 1;
      }
      return applied;
    },
    jobs: jobQueue(db, kind, now),
  };
}
