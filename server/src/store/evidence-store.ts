import { BadInput } from "@setfair/engine";
import { hashJson } from "@setfair/records";
import { uuidv7 } from "uuidv7";
import { fromText, toInstantText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type {
  FrozenTable,
  HirerLinkTable,
  NoteTable,
  OverrideTable,
  PaymentTable,
  PhotographTable,
} from "./tables.ts";
import type {
  FrozenRow,
  HirerLinkRow,
  NoteRow,
  OverrideRow,
  PaymentRow,
  PhotographRow,
  Store,
} from "./types.ts";

const readPhotograph = (row: PhotographTable): PhotographRow => ({
  sha256: row.sha256,
  bytes: row.bytes,
  widthPx: row.width_px,
  heightPx: row.height_px,
  hireId: row.hire_id,
  takenAt: row.taken_at,
  receivedAt: row.received_at,
});
const readPayment = (row: PaymentTable): PaymentRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as PaymentRow["kind"], // written from a PaymentRow only
  currency: row.currency,
  pence: row.pence,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});
const readOverride = (row: OverrideTable): OverrideRow => ({
  id: row.id,
  hireId: row.hire_id,
  findingCode: row.finding_code,
  about: row.about,
  basis: row.basis as OverrideRow["basis"], // written from an OverrideRow only
  reason: row.reason,
  by: row.by_id,
  at: row.at,
});
const readNote = (row: NoteTable): NoteRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as NoteRow["kind"], // written from a NoteRow only
  text: row.body,
  dueAt: row.due_at,
  doneAt: row.done_at,
  by: row.by_id,
  at: row.at,
});
const readLink = (row: HirerLinkTable): HirerLinkRow => ({
  id: row.id,
  hireId: row.hire_id,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
  createdAt: row.created_at,
});
const readFrozen = (row: FrozenTable): FrozenRow => ({
  id: row.id,
  hireId: row.hire_id,
  room: row.room,
  document: fromText(row.document),
  hash: row.hash,
  by: row.by_id,
  at: row.at,
});

export function photographsStore(door: Door): Store["photographs"] {
  const get = async (sha256: string) => {
    const row = await door.from("photograph").selectAll().where("sha256", "=", sha256).executeTakeFirst();
    return row === undefined ? null : readPhotograph(row);
  };
  return {
    get,
    async add({ sha256, bytes, widthPx, heightPx, hireId, takenAt }) {
      await door
        .insert("photograph", {
          sha256,
          bytes,
          width_px: widthPx,
          height_px: heightPx,
          hire_id: hireId,
          taken_at: takenAt === null ? null : toInstantText(takenAt, "takenAt"),
          received_at: door.now(),
        })
        .onConflict((on) => on.columns(["firm_id", "depot_id", "sha256"]).doNothing())
        .execute();
      return (await get(sha256))!;
    },
    async ofHire(hireId) {
      const rows = await door
        .from("photograph")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("received_at")
        .orderBy("sha256")
        .execute();
      return rows.map(readPhotograph);
    },
  };
}

export function paymentsStore(door: Door): Store["payments"] {
  return {
    async add({ id = uuidv7(), hireId, kind, currency, pence, document, by }) {
      if (!Number.isSafeInteger(pence) || pence < 0) {
        throw new BadInput([{ path: "pence", expected: "whole pence, 0 or more" }]);
      }
      await door
        .insert("payment", {
          id,
          hire_id: hireId,
          kind,
          currency,
          pence,
          document: toText(document),
          by_id: by,
          at: door.now(),
        })
        .onConflict((on) => on.columns(["firm_id", "depot_id", "id"]).doNothing())
        .execute();
      const row = readPayment(
        await door.from("payment").selectAll().where("id", "=", id).executeTakeFirstOrThrow(),
      );
      if (row.hireId !== hireId || row.kind !== kind || row.pence !== pence || row.currency !== currency) {
        throw new BadInput([{ path: "id", expected: "an id that no other payment has" }]);
      }
      return row;
    },
    async ofHire(hireId) {
      const rows = await door
        .from("payment")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("at")
        .orderBy("id")
        .execute();
      return rows.map(readPayment);
    },
  };
}

export function overridesStore(door: Door): Store["overrides"] {
  return {
    async add({ hireId, findingCode, about, basis, reason, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        finding_code: findingCode,
        about,
        basis,
        reason,
        by_id: by,
        at: door.now(),
      };
      await door.insert("finding_override", row).execute();
      return { id: row.id, hireId, findingCode, about, basis, reason, by, at: row.at };
    },
    async ofHire(hireId) {
      const rows = await door
        .from("finding_override")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("id")
        .execute();
      return rows.map(readOverride);
    },
  };
}

export function notesStore(door: Door): Store["notes"] {
  return {
    async add({ hireId, kind, text, dueAt, by }) {
      const due = dueAt === null ? null : toInstantText(dueAt, "dueAt");
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        kind,
        body: text,
        due_at: due,
        done_at: null,
        by_id: by,
        at: door.now(),
      };
      await door.insert("note", row).execute();
      return { id: row.id, hireId, kind, text, dueAt: due, doneAt: null, by, at: row.at };
    },
    async done(id) {
      const { numUpdatedRows } = await door
        .change("note", { done_at: door.now() })
        .where("id", "=", id)
        .where("done_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async ofHire(hireId) {
      const rows = await door.from("note").selectAll().where("hire_id", "=", hireId).orderBy("id").execute();
      return rows.map(readNote);
    },
    async open() {
      const rows = await door
        .from("note")
        .selectAll()
        .where("kind", "=", "promise")
        .where("done_at", "is", null)
        .orderBy("due_at")
        .orderBy("id")
        .execute();
      return rows.map(readNote);
    },
  };
}

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
      return readLink({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async ofHire(hireId) {
      const rows = await door
        .from("hirer_link")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("id")
        .execute();
      return rows.map(readLink);
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

export function frozenStore(door: Door): Store["frozen"] {
  return {
    async add({ hireId, room, document, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        room,
        document: toText(document),
        hash: hashJson(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("frozen", row).execute();
      return readFrozen({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async get(id) {
      const row = await door.from("frozen").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : readFrozen(row);
    },
    async ofHire(hireId) {
      const rows = await door
        .from("frozen")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("id")
        .execute();
      return rows.map(readFrozen);
    },
  };
}
