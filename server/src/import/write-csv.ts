import { stringify } from "csv-stringify/sync";
import { asDocument } from "../desk/documents.ts";
import { localOf } from "../desk/local-time.ts";
import type { Page, Paged, Store } from "../store/types.ts";

export const EXPORT_KINDS = ["customers", "hires"] as const;
export type ExportKind = (typeof EXPORT_KINDS)[number];

/**
 * Comma-separated values with a byte order mark, so that a spreadsheet reads the letters. What a spreadsheet would
 * take for a formula gets an apostrophe before it; our own import takes that away again.
 */
export function writeCsv(columns: readonly string[], rows: readonly (readonly string[])[]): string {
  return stringify([[...columns], ...rows.map((row) => [...row])], {
    bom: true,
    escape_formulas: true,
    record_delimiter: "windows",
  });
}

async function allOf<T>(read: (page: Page) => Promise<Paged<T>>): Promise<readonly T[]> {
  const all: T[] = [];
  for (let after: string | null = ""; after !== null; ) {
    const page: Paged<T> = await read({ limit: 200, ...(after === "" ? {} : { after }) });
    all.push(...page.rows);
    after = page.next;
  }
  return all;
}

interface Contact {
  readonly telephone?: string;
  readonly email?: string;
  readonly address?: string;
}

/** Customers or hires of the depot as comma-separated values, with the columns that the import reads. */
export async function exportCsv(store: Store, kind: ExportKind): Promise<string> {
  const customers = await allOf((page) => store.customers.search("", page));
  const contacts = new Map(customers.map(({ id, document }) => [id, asDocument<Contact>(document)]));
  if (kind === "customers")
    return writeCsv(
      ["name", "telephone", "email", "address"],
      customers.map(({ name, document }) => {
        const { telephone = "", email = "", address = "" } = asDocument<Contact>(document);
        return [name, telephone, email, address];
      }),
    );
  const { timeZone } = await store.depot.get();
  const local = (instant: string) => localOf(instant, timeZone).replace("T", " ");
  const hires = await allOf((page) => store.hires.list(page));
  return writeCsv(
    ["number", "stage", "name", "telephone", "email", "from", "to", "registration"],
    hires.map((hire) => {
      const { telephone = "", email = "" } = contacts.get(hire.customerId ?? "") ?? {};
      const { number, stage, customerName, registration } = hire;
      return [number, stage, customerName, telephone, email, local(hire.from), local(hire.to), registration];
    }),
  );
}
