import { type CreateTableBuilder, type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

type Kind = "text" | "text?" | "int";
type Columns = Readonly<Record<string, Kind>>;
interface TableSpec {
  readonly columns: Columns;
  /** after firm_id and depot_id */
  readonly key: readonly string[];
  /** columns → table whose key they are, within the depot */
  readonly refs?: Readonly<Record<string, string>>;
}

const version: TableSpec = {
  columns: {
    id: "text",
    of_id: "text",
    valid_from: "text",
    seq: "int",
    document: "text",
    hash: "text",
    created_at: "text",
  },
  key: ["id"],
};
const words = (of: string): TableSpec => ({
  columns: { word: "text", target_id: "text" },
  key: ["word", "target_id"],
  refs: { target_id: of },
});
const ofHire = (columns: Columns, key: readonly string[] = ["id"]): TableSpec => ({
  columns: { hire_id: "text", ...columns },
  key,
  refs: { hire_id: "hire" },
});

/** In an order in which every table that is referred to comes first. */
const TABLES: Readonly<Record<string, TableSpec>> = {
  account: {
    columns: {
      id: "text",
      login: "text",
      name: "text",
      role: "text",
      password_hash: "text",
      disabled_at: "text?",
      created_at: "text",
    },
    key: ["id"],
  },
  vehicle_version: version,
  terms_version: version,
  customer: {
    columns: {
      id: "text",
      name: "text",
      document: "text",
      version: "int",
      erased_at: "text?",
      created_at: "text",
    },
    key: ["id"],
  },
  customer_word: words("customer"),
  hire: {
    columns: {
      id: "text",
      number: "text",
      stage: "text",
      customer_id: "text?",
      customer_name: "text",
      vehicle_id: "text?",
      registration: "text",
      from_at: "text",
      to_at: "text",
      version: "int",
      created_at: "text",
      updated_at: "text",
    },
    key: ["id"],
    refs: { customer_id: "customer" },
  },
  hire_word: words("hire"),
  hire_part: ofHire(
    { name: "text", document: "text", version: "int", updated_at: "text", updated_by: "text" },
    ["hire_id", "name"],
  ),
  booking: ofHire(
    { vehicle_id: "text", from_at: "text", to_at: "text", ready_at: "text", turnaround_minutes: "int" },
    ["hire_id"],
  ),
  guard: { columns: { name: "text", counter: "int" }, key: ["name"] },
  record: {
    columns: {
      id: "text",
      hash: "text",
      device_id: "text",
      chain: "text",
      seq: "int",
      kind: "text",
      hire_id: "text?",
      vehicle_id: "text?",
      person_id: "text?",
      receipt_seq: "int",
      body: "text",
      erased_at: "text?",
    },
    key: ["id"],
  },
  receipt: {
    columns: { seq: "int", record_id: "text", record_hash: "text", prev: "text?", at: "text", hash: "text" },
    key: ["seq"],
    refs: { record_id: "record" },
  },
  photograph: {
    columns: {
      sha256: "text",
      bytes: "int",
      width_px: "int",
      height_px: "int",
      hire_id: "text?",
      taken_at: "text?",
      received_at: "text",
    },
    key: ["sha256"],
    refs: { hire_id: "hire" },
  },
  payment: ofHire({
    id: "text",
    kind: "text",
    currency: "text",
    pence: "int",
    document: "text",
    by_id: "text",
    at: "text",
  }),
  finding_override: ofHire({
    id: "text",
    finding_code: "text",
    about: "text",
    basis: "text",
    reason: "text",
    by_id: "text",
    at: "text",
  }),
  note: ofHire({
    id: "text",
    kind: "text",
    body: "text",
    due_at: "text?",
    done_at: "text?",
    by_id: "text",
    at: "text",
  }),
  hirer_link: ofHire({
    id: "text",
    token_hash: "text",
    expires_at: "text",
    revoked_at: "text?",
    created_at: "text",
  }),
  frozen: ofHire({ id: "text", room: "text", document: "text", hash: "text", by_id: "text", at: "text" }),
  licence: ofHire({ driver_id: "text", sealed: "text?", erase_at: "text", erased_at: "text?" }, [
    "hire_id",
    "driver_id",
  ]),
  job: {
    columns: {
      id: "text",
      kind: "text",
      payload: "text",
      run_at: "text",
      attempts: "int",
      state: "text",
      locked_until: "text?",
      last_error: "text?",
      dedupe_key: "text?",
      created_at: "text",
      finished_at: "text?",
    },
    key: ["id"],
  },
  audit: {
    columns: { id: "text", at: "text", by_id: "text", act: "text", about: "text", document: "text" },
    key: ["id"],
  },
  erasure: { columns: { kind: "text", target_id: "text", at: "text" }, key: ["kind", "target_id"] },
};

/** name → table, columns, unique */
const INDEXES: readonly (readonly [string, string, readonly string[], boolean])[] = [
  ["account_login", "account", ["login"], true],
  ["vehicle_version_of", "vehicle_version", ["firm_id", "depot_id", "of_id", "valid_from", "seq"], true],
  ["terms_version_of", "terms_version", ["firm_id", "depot_id", "of_id", "valid_from", "seq"], true],
  ["hire_number", "hire", ["firm_id", "depot_id", "number"], true],
  ["hire_from", "hire", ["firm_id", "depot_id", "from_at", "id"], false],
  ["hire_stage", "hire", ["firm_id", "depot_id", "stage", "from_at", "id"], false],
  ["hire_vehicle", "hire", ["firm_id", "depot_id", "vehicle_id", "from_at"], false],
  ["hire_customer", "hire", ["firm_id", "depot_id", "customer_id"], false],
  ["hire_word_target", "hire_word", ["firm_id", "depot_id", "target_id", "word"], false],
  ["customer_word_target", "customer_word", ["firm_id", "depot_id", "target_id", "word"], false],
  ["customer_name", "customer", ["firm_id", "depot_id", "name", "id"], false],
  ["booking_vehicle", "booking", ["firm_id", "depot_id", "vehicle_id", "from_at"], false],
  ["booking_ready", "booking", ["firm_id", "depot_id", "ready_at"], false],
  ["record_chain", "record", ["firm_id", "depot_id", "device_id", "chain", "seq"], true],
  ["record_receipt", "record", ["firm_id", "depot_id", "receipt_seq"], true],
  ["record_hire", "record", ["firm_id", "depot_id", "hire_id", "receipt_seq"], false],
  ["record_person", "record", ["firm_id", "depot_id", "person_id"], false],
  ["receipt_record", "receipt", ["firm_id", "depot_id", "record_id"], true],
  ["photograph_hire", "photograph", ["firm_id", "depot_id", "hire_id"], false],
  ["payment_hire", "payment", ["firm_id", "depot_id", "hire_id"], false],
  ["finding_override_hire", "finding_override", ["firm_id", "depot_id", "hire_id"], false],
  ["note_hire", "note", ["firm_id", "depot_id", "hire_id"], false],
  ["note_due", "note", ["firm_id", "depot_id", "kind", "done_at", "due_at"], false],
  ["hirer_link_token", "hirer_link", ["token_hash"], true],
  ["hirer_link_hire", "hirer_link", ["firm_id", "depot_id", "hire_id"], false],
  ["frozen_hire", "frozen", ["firm_id", "depot_id", "hire_id"], false],
  ["licence_erase", "licence", ["firm_id", "depot_id", "erase_at"], false],
  ["job_id", "job", ["id"], true],
  ["job_due", "job", ["state", "run_at"], false],
  ["job_dedupe", "job", ["firm_id", "depot_id", "dedupe_key"], true],
  ["audit_about", "audit", ["firm_id", "depot_id", "about", "id"], false],
  ["session_expires", "session", ["expires_at"], false],
];

/** All tables of the first version. Text compares by code point on both stores. */
export async function firstTables(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await firmTables(db, text);
  for (const [name, spec] of Object.entries(TABLES)) await createTable(db, name, spec, text);
  await db.schema
    .createTable("session")
    .addColumn("token_hash", text, (c) => c.primaryKey().notNull())
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("account_id", text, (c) => c.notNull())
    .addColumn("created_at", text, (c) => c.notNull())
    .addColumn("expires_at", text, (c) => c.notNull())
    .addForeignKeyConstraint("session_account", ["firm_id", "depot_id", "account_id"], "account", [
      "firm_id",
      "depot_id",
      "id",
    ])
    .execute();
  for (const [name, table, columns, unique] of INDEXES) {
    const index = db.schema
      .createIndex(name)
      .on(table)
      .columns([...columns]);
    await (unique ? index.unique() : index).execute();
  }
}

type TextType = ReturnType<typeof sql>;

async function firmTables(db: Kysely<unknown>, text: TextType): Promise<void> {
  await db.schema
    .createTable("firm")
    .addColumn("firm_id", text, (c) => c.primaryKey().notNull())
    .addColumn("name", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("created_at", text, (c) => c.notNull())
    .execute();
  await db.schema
    .createTable("depot")
    .addColumn("firm_id", text, (c) => c.notNull().references("firm.firm_id"))
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("name", text, (c) => c.notNull())
    .addColumn("time_zone", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("version", "bigint", (c) => c.notNull())
    .addPrimaryKeyConstraint("depot_key", ["firm_id", "depot_id"])
    .execute();
  await db.schema
    .createTable("setup_link")
    .addColumn("token_hash", text, (c) => c.primaryKey().notNull())
    .addColumn("created_at", text, (c) => c.notNull())
    .addColumn("expires_at", text, (c) => c.notNull())
    .addColumn("used_at", text)
    .execute();
}

async function createTable(
  db: Kysely<unknown>,
  name: string,
  spec: TableSpec,
  text: TextType,
): Promise<void> {
  let table: CreateTableBuilder<string, string> = db.schema
    .createTable(name)
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull());
  for (const [column, kind] of Object.entries(spec.columns)) {
    table = table.addColumn(column, kind === "int" ? "bigint" : text, (c) =>
      kind === "text?" ? c : c.notNull(),
    );
  }
  table = table
    .addPrimaryKeyConstraint(`${name}_key`, ["firm_id", "depot_id", ...spec.key])
    .addForeignKeyConstraint(`${name}_depot`, ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"]);
  for (const [column, of] of Object.entries(spec.refs ?? {})) {
    table = table.addForeignKeyConstraint(`${name}_${column}`, ["firm_id", "depot_id", column], of, [
      "firm_id",
      "depot_id",
      "id",
    ]);
  }
  await table.execute();
}
