import { badField, Refusal } from "../api/refusal.ts";
import { asDocument, type VehicleDocument } from "../desk/documents.ts";
import { dateOf, localOf } from "../desk/local-time.ts";
import type { Store } from "../store/types.ts";
import { runOrUndo } from "./dry-run.ts";
import { foldPlate, IMPORTS, type ImportKind, type RowContext } from "./kinds.ts";
import { type DateOrder, findDateOrder } from "./read-days.ts";
import { type Encoding, MOST_BYTES, type ReadTable, readTable } from "./read-table.ts";
import { type AcceptedRow, type RejectedRow, RowRejected } from "./take-row.ts";

export interface ImportAsked {
  readonly kind: ImportKind;
  /** base64 */
  readonly file: string;
  readonly encoding: Encoding | null;
  readonly dateOrder: DateOrder | null;
  /** as the dry run said; null for a dry run */
  readonly confirm: { readonly accepted: number; readonly rejected: number } | null;
  readonly by: string;
  readonly now: Date;
}
export interface ImportAnswer {
  readonly done: boolean;
  /** what only a person can say; nothing was looked at beyond it */
  readonly question: { readonly what: "encoding" | "dateOrder"; readonly sample: string } | null;
  readonly encoding: Encoding | null;
  readonly dateOrder: DateOrder | null;
  readonly columns: readonly string[];
  readonly ignored: readonly string[];
  readonly accepted: readonly AcceptedRow[];
  readonly rejected: readonly RejectedRow[];
}

const asked = (what: "encoding" | "dateOrder", sample: string): ImportAnswer => ({
  done: false,
  question: { what, sample },
  encoding: null,
  dateOrder: null,
  columns: [],
  ignored: [],
  accepted: [],
  rejected: [],
});

/** The bytes of a file that came as base64. */
export function bytesOf(file: string): Uint8Array {
  if (file.length > MOST_BYTES * 1.4) throw new Refusal("tooLarge");
  if (!/^[A-Za-z0-9+/]*={0,2}$/.test(file))
    throw badField("file", "expected the bytes of the file in base64");
  const bytes = Buffer.from(file, "base64");
  if (bytes.length > MOST_BYTES) throw new Refusal("tooLarge");
  return bytes;
}

/** Plates of the vehicles that are described, and of those that are listed only. */
async function platesOf(store: Store, today: string): Promise<Map<string, string>> {
  const plates = new Map<string, string>();
  for (const { registration } of await store.vehicleDrafts.list()) plates.set(foldPlate(registration), "");
  for (const { of, document } of await store.vehicles.allOn(today))
    plates.set(foldPlate(asDocument<VehicleDocument>(document).description.registration), of);
  return plates;
}

async function takeRows(context: RowContext, kind: ImportKind, { rows }: ReadTable) {
  const accepted: AcceptedRow[] = [];
  const rejected: RejectedRow[] = [];
  for (const row of rows) {
    try {
      if (row.isTooLong)
        throw new RowRejected(row, "", "no more cells than the first line has; is a quote missing?");
      accepted.push({ line: row.line, ...(await IMPORTS[kind].take(context, row)) });
    } catch (error) {
      // every check of a row comes before anything is written for it
      if (!(error instanceof RowRejected)) throw error;
      rejected.push(error.rejected);
    }
  }
  return { accepted, rejected };
}

/**
 * Takes in comma-separated values. Without `confirm` it is a dry run: all of it is done and undone, and the answer
 * says what would happen. With it, all of it stands or none, and only where it comes out as the dry run said.
 */
export async function runImport(store: Store, ask: ImportAsked): Promise<ImportAnswer> {
  const { kind, confirm, by } = ask;
  const { columns, days } = IMPORTS[kind];
  const table = readTable(bytesOf(ask.file), columns, ask.encoding);
  if ("question" in table) return asked("encoding", table.sample);
  const written = table.rows.flatMap(({ line, values }) =>
    days.map((column) => ({ line, text: values[column] ?? "" })),
  );
  const dateOrder = findDateOrder(written, ask.dateOrder);
  if (typeof dateOrder === "object") return asked("dateOrder", dateOrder.sample);
  const depot = await store.depot.get();
  const today = dateOf(localOf(ask.now.toISOString(), depot.timeZone));
  return runOrUndo(store, confirm === null, async (inner) => {
    const context = { store: inner, depot, today, by, dateOrder, plates: await platesOf(inner, today) };
    const { accepted, rejected } = await takeRows(context, kind, table);
    if (confirm !== null && (confirm.accepted !== accepted.length || confirm.rejected !== rejected.length))
      throw new Refusal("stale");
    const document = { kind, accepted: accepted.length, rejected: rejected.length };
    await inner.audit.add({ by, act: "import.done", about: kind, document });
    return {
      done: confirm !== null,
      question: null,
      encoding: table.encoding,
      dateOrder: written.some(({ text }) => text !== "") ? dateOrder : null,
      columns: table.columns,
      ignored: table.ignored,
      accepted,
      rejected,
    };
  });
}
