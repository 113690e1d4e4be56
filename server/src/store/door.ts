import { BadInput } from "@setfair/engine";
import type {
  DeleteQueryBuilder,
  DeleteResult,
  Insertable,
  InsertQueryBuilder,
  InsertResult,
  Kysely,
  SelectQueryBuilder,
  UpdateQueryBuilder,
  UpdateResult,
} from "kysely";
import { type InTransaction, mayRetry } from "./dialects.ts";
import type { Sealer } from "./seal.ts";
import type { Scoped, ScopedTables, Tables } from "./tables.ts";
import type { Erasure, Scope } from "./types.ts";

/** What a door needs from around it. */
export interface DoorContext {
  /** instant now, as the tables hold it */
  readonly now: () => string;
  readonly sealer: Sealer;
  readonly inTransaction: InTransaction;
  /** told of every erasure once it stands: the list must outlive the database, since a restore applies it again */
  readonly onErasure: (erasure: Erasure) => Promise<void>;
  /** leaves nothing of what was erased in files beside the tables, as far as nobody reads them just now */
  readonly overwrite: () => void;
}

type TableName = keyof ScopedTables & string;
/** Rows of these are never changed nor removed: they are what happened. */
type AppendOnly =
  | "receipt"
  | "payment"
  | "invoice"
  | "finding_override"
  | "frozen"
  | "audit"
  | "vehicle_version"
  | "terms_version"
  | "rule_change"
  | "upkeep_entry"
  | "stock_event"
  | "erasure";
type Changing = Exclude<TableName, AppendOnly>;

/**
 * The one door to the rows of a depot. Every query made here carries the depot's firm_id and depot_id; the
 * stores use nothing else. The casts tell Kysely's types what holds for each table one by one: that it is
 * scoped (ScopedTables), which a type parameter cannot be narrowed to.
 */
export class Door {
  readonly #db: Kysely<Tables>;
  readonly scope: Scope;
  readonly context: DoorContext;
  readonly #afterCommit: (() => Promise<void>)[] | null;

  constructor(
    db: Kysely<Tables>,
    scope: Scope,
    context: DoorContext,
    afterCommit: (() => Promise<void>)[] | null = null,
  ) {
    this.#db = db;
    this.scope = scope;
    this.context = context;
    this.#afterCommit = afterCommit;
  }

  now(): string {
    return this.context.now();
  }

  from<T extends TableName>(table: T): SelectQueryBuilder<Tables, T, object> {
    const query = this.#db.selectFrom(table as TableName) as unknown as SelectQueryBuilder<
      Tables,
      "hire",
      object
    >;
    const scoped = query.where("firm_id", "=", this.scope.firmId).where("depot_id", "=", this.scope.depotId);
    return scoped as unknown as SelectQueryBuilder<Tables, T, object>;
  }

  insert<T extends TableName>(
    table: T,
    values: Omit<Insertable<Tables[T]>, keyof Scoped> | readonly Omit<Insertable<Tables[T]>, keyof Scoped>[],
  ): InsertQueryBuilder<Tables, T, InsertResult> {
    const rows = (Array.isArray(values) ? values : [values]) as readonly Record<string, unknown>[];
    const scoped = rows.map((row) => ({
      ...checkText(table, row),
      firm_id: this.scope.firmId,
      depot_id: this.scope.depotId,
    }));
    return this.#db.insertInto(table as TableName).values(scoped as never) as unknown as InsertQueryBuilder<
      Tables,
      T,
      InsertResult
    >;
  }

  change<T extends Changing>(
    table: T,
    set: Partial<Omit<Tables[T], keyof Scoped>>,
  ): UpdateQueryBuilder<Tables, T, T, UpdateResult> {
    const query = this.#db
      .updateTable(table as TableName)
      .set(checkText(table, set as Record<string, unknown>) as never);
    const scoped = (query as unknown as UpdateQueryBuilder<Tables, "hire", "hire", UpdateResult>)
      .where("firm_id", "=", this.scope.firmId)
      .where("depot_id", "=", this.scope.depotId);
    return scoped as unknown as UpdateQueryBuilder<Tables, T, T, UpdateResult>;
  }

  remove<T extends Changing>(table: T): DeleteQueryBuilder<Tables, T, DeleteResult> {
    const query = this.#db.deleteFrom(table as TableName) as unknown as DeleteQueryBuilder<
      Tables,
      "hire",
      DeleteResult
    >;
    const scoped = query.where("firm_id", "=", this.scope.firmId).where("depot_id", "=", this.scope.depotId);
    return scoped as unknown as DeleteQueryBuilder<Tables, T, DeleteResult>;
  }

  /** The firm above this depot: its own row only. */
  firm(): Promise<Tables["firm"]> {
    return this.#db
      .selectFrom("firm")
      .selectAll()
      .where("firm_id", "=", this.scope.firmId)
      .executeTakeFirstOrThrow();
  }

  /**
   * Locks a named thing of the depot until the transaction ends, and counts. Writing the row is the lock: on
   * PostgreSQL others wait for it, on SQLite the transaction holds the file already.
   */
  async lock(name: string): Promise<number> {
    if (this.#afterCommit === null) throw new Error(`lock ${name}: only inside a transaction`);
    const row = await this.insert("guard", { name, counter: 1 })
      .onConflict((on) =>
        on
          .columns(["firm_id", "depot_id", "name"])
          .doUpdateSet((set) => ({ counter: set("guard.counter", "+", 1) })),
      )
      .returning("counter")
      .executeTakeFirstOrThrow();
    return row.counter;
  }

  /** Counts a named thing of the firm, across its depots: the next number, which a rollback gives back. Others wait until this transaction ends. */
  async countForFirm(name: string): Promise<number> {
    if (this.#afterCommit === null) throw new Error(`count ${name}: only inside a transaction`);
    const row = await this.#db
      .insertInto("firm_counter")
      .values({ firm_id: this.scope.firmId, name, counter: 1 })
      .onConflict((on) =>
        on
          .columns(["firm_id", "name"])
          .doUpdateSet((set) => ({ counter: set("firm_counter.counter", "+", 1) })),
      )
      .returning("counter")
      .executeTakeFirstOrThrow();
    return Number(row.counter);
  }

  /** Runs all or nothing; inside another it joins it. Lost races are run again, so `work` must do nothing outside the store. */
  async within<T>(work: (door: Door) => Promise<T>): Promise<T> {
    if (this.#afterCommit !== null) return work(this);
    for (let attempt = 1; ; attempt++) {
      const after: (() => Promise<void>)[] = [];
      try {
        const answer = await this.#db
          .transaction()
          .execute((trx) =>
            this.context.inTransaction.run(true, () => work(new Door(trx, this.scope, this.context, after))),
          );
        for (const act of after) await act();
        return answer;
      } catch (error) {
        if (attempt >= 8 || !mayRetry(error)) throw error;
      }
    }
  }

  /** Done once the transaction stands; at once where there is none. */
  async afterCommit(act: () => Promise<void>): Promise<void> {
    if (this.#afterCommit === null) await act();
    else this.#afterCommit.push(act);
  }
}

/** PostgreSQL holds no NUL in text; refused alike on both stores, with the field's name. */
function checkText<R extends Record<string, unknown>>(table: string, row: R): R {
  for (const [column, value] of Object.entries(row)) {
    if (typeof value === "string" && value.includes("\0")) {
      throw new BadInput([{ path: `${table}.${column}`, expected: "text without a NUL character" }]);
    }
  }
  return row;
}
