import {
  chargedLines,
  creditWhole,
  disputedLines,
  draftInvoice,
  type InvoiceDraft,
  type InvoiceLine,
  type IsoDate,
} from "@setfair/engine";
import { badField, Refusal } from "../api/refusal.ts";
import { asDocument, type CustomerDocument, toJson } from "../desk/documents.ts";
import { type HireData, partOf } from "../desk/hire-data.ts";
import type { InvoiceRow, Store } from "../store/types.ts";
import type { OpenMoney } from "./change-money.ts";
import { askedBy } from "./hire-money.ts";

/** The firm as it stands on its invoices. */
export interface FirmDocument {
  readonly name: string;
  readonly address: string;
  readonly vatNumber: string | null;
}
/** An invoice frozen as issued: what a PDF is made from, for ever. */
export interface InvoiceDocument extends Pick<InvoiceDraft, "lines" | "parts" | "net" | "vat" | "total"> {
  readonly firm: FirmDocument | null;
  readonly billTo: { readonly name: string; readonly address: string | null };
  readonly hire: {
    readonly reference: string;
    readonly hirer: string;
    readonly from: string;
    readonly to: string;
    readonly vehicle: string | null;
  };
  readonly reason: string | null;
  /** number of the invoice that a credit note takes back */
  readonly ofNumber: string | null;
  /** what the hirer disputed when it was issued: named, not asked for, no part of the sums; left out where nothing was */
  readonly disputed?: readonly InvoiceLine[];
}

export const invoiceDocument = (row: InvoiceRow): InvoiceDocument =>
  asDocument<InvoiceDocument>(row.document);

/** I-00001, C-00001: the series, then the number that runs through the firm. */
export const numberText = ({ series, number }: Pick<InvoiceRow, "series" | "number">): string =>
  `${series === "invoice" ? "I" : "C"}-${String(number).padStart(5, "0")}`;

export const FIRM_TERMS = "firmOnInvoices";

/** The firm's name, address and VAT number in force on a day; null where nobody has entered them. */
export async function firmOnInvoices(store: Store, on: IsoDate): Promise<FirmDocument | null> {
  const version = await store.terms.on(FIRM_TERMS, on);
  return version === null ? null : asDocument<FirmDocument>(version.document);
}

const linesOf = (invoices: readonly InvoiceRow[]): readonly InvoiceLine[] =>
  invoices.flatMap((row) => invoiceDocument(row).lines);

/** What is still to be invoiced; null where nothing is. */
export function toInvoice(data: HireData, invoices: readonly InvoiceRow[]): InvoiceDraft | null {
  return draftInvoice(chargedLines(askedBy(data), data.today), linesOf(invoices));
}

/** What the hirer disputes now and is not asked for. */
export const disputedNow = (data: HireData): readonly InvoiceLine[] =>
  disputedLines(askedBy(data), data.today);

async function documentOf(
  { store, data }: OpenMoney,
  draft: InvoiceDraft,
  about: Pick<InvoiceDocument, "reason" | "ofNumber">,
): Promise<InvoiceDocument> {
  const { address } = asDocument<Partial<CustomerDocument>>(data.customer?.document ?? {});
  const payer = partOf(data, "payer")?.payer ?? null;
  const vehicle = data.vehicle?.document.description;
  const { lines, parts, net, vat, total } = draft;
  const disputed = disputedNow(data);
  return {
    firm: await firmOnInvoices(store, data.today),
    billTo:
      payer === null
        ? { name: data.row.customerName, address: address ?? null }
        : { name: payer.name, address: payer.address ?? null },
    hire: {
      reference: data.row.number,
      hirer: data.row.customerName,
      from: data.from,
      to: data.to,
      vehicle: vehicle === undefined ? null : `${vehicle.name} ${vehicle.registration}`,
    },
    ...about,
    ...(disputed.length === 0 ? {} : { disputed }),
    lines,
    parts,
    net,
    vat,
    total,
  };
}

async function issue(
  open: OpenMoney,
  draft: InvoiceDraft,
  about: Pick<InvoiceDocument, "reason" | "ofNumber">,
  of: string | null,
): Promise<void> {
  const { store, data, by } = open;
  const document = await documentOf(open, draft, about);
  const row = await store.invoices.issue({
    hireId: data.row.id,
    series: draft.kind,
    on: data.today,
    of,
    document: toJson(document),
    by,
  });
  await store.audit.add({
    by,
    act: `hire.${draft.kind === "invoice" ? "invoiced" : "credited"}`,
    about: data.row.id,
    document: { number: numberText(row), pence: draft.total.pence },
  });
}

/** Invoices what is not invoiced yet. Refused where nothing is. */
export async function issueInvoice(open: OpenMoney): Promise<void> {
  const draft = toInvoice(open.data, await open.store.invoices.ofHires([open.data.row.id]));
  if (draft === null) {
    throw new Refusal("missing", {
      problems: [{ path: "lines", expected: "something charged that is not invoiced yet" }],
    });
  }
  await issue(open, draft, { reason: null, ofNumber: null }, null);
}

/** Takes back a whole invoice; what it charged is then to be invoiced again. */
export async function creditInvoice(open: OpenMoney, invoiceId: string, reason: string): Promise<void> {
  const all = await open.store.invoices.ofHires([open.data.row.id]);
  const invoice = all.find(({ id }) => id === invoiceId);
  if (invoice === undefined) throw new Refusal("notFound");
  if (invoice.series !== "invoice") throw badField("invoiceId", "expected an invoice, not a credit note");
  if (all.some(({ of }) => of === invoiceId))
    throw badField("invoiceId", "expected an invoice that no credit note took back");
  const draft = { ...creditWhole(invoiceDocument(invoice).lines), kind: "creditNote" as const };
  await issue(open, draft, { reason, ofNumber: numberText(invoice) }, invoiceId);
}
