import type { InvoiceLine } from "@setfair/engine";
import { createWords, type Words } from "@setfair/words";
import type { FastifyReply } from "fastify";
import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import type { AppContext } from "../context.ts";
import { type InvoiceDocument, invoiceDocument, numberText } from "../money/invoices.ts";
import type { InvoiceRow, Store } from "../store/types.ts";
import { facts, heading, quiet, table } from "./pieces.ts";
import { renderPdf } from "./render-pdf.ts";

const pounds = (pence: number, words: Words): string => words.moneyText({ currency: "GBP", pence });

const aboutText = (about: string, words: Words): string =>
  [`quoteAbout.${about}`, about, `charge.${about}`]
    .filter((id) => words.has(id))
    .map((id) => words.t(id))[0] ?? about;

function lineText({ text, facts: said }: InvoiceLine, words: Words): string {
  const note = typeof said.note === "string" && said.note !== "" ? `: ${said.note}` : "";
  const about = aboutText(String(said.about ?? ""), words);
  const each = { currency: "GBP", pence: Number(said.eachPence ?? 0) } as const;
  return words.has(text) ? `${words.t(text, { about, count: Number(said.count ?? 1), each })}${note}` : text;
}

function lineTable({ lines }: InvoiceDocument, words: Words): Content {
  return table(
    [
      words.t("papers.what"),
      words.t("invoice.net"),
      words.t("invoice.rate"),
      words.t("invoice.vat"),
      words.t("money.amount"),
    ],
    lines.map((line) => [
      lineText(line, words),
      pounds(line.netPence, words),
      words.t("invoice.rateOf", { kind: line.vat, rate: line.ratePercent }),
      pounds(line.vatPence, words),
      pounds(line.grossPence, words),
    ]),
    { amounts: true, widths: ["*", "auto", "auto", "auto", "auto"] },
  );
}

/** What the hirer disputes: named with its sum, which is no part of the total. */
function disputedTable({ disputed = [] }: InvoiceDocument, words: Words): Content[] {
  if (disputed.length === 0) return [];
  const sum = disputed.reduce((total, { grossPence }) => total + grossPence, 0);
  return [
    heading(words.t("invoice.disputed.title")),
    table(
      [words.t("papers.what"), words.t("money.amount")],
      [
        ...disputed.map((line) => [lineText(line, words), pounds(line.grossPence, words)]),
        [words.t("invoice.disputed.sum"), pounds(sum, words)],
      ],
      { amounts: true, widths: ["*", "auto"] },
    ),
    quiet(words.t("invoice.disputed.note")),
  ];
}

function head(row: InvoiceRow, document: InvoiceDocument, words: Words) {
  const { firm, billTo, hire, ofNumber, reason } = document;
  const rows: (readonly [string, string | null])[] = [
    [words.t(row.series === "invoice" ? "invoice.number" : "invoice.creditNumber"), numberText(row)],
    [words.t("invoice.on"), words.dateText(row.on, "full")],
    [words.t("invoice.takesBack"), ofNumber],
    [words.t("invoice.reason"), reason],
    [words.t("invoice.from"), firm === null ? null : `${firm.name}, ${firm.address}`],
    [words.t("invoice.vatNumber"), firm?.vatNumber ?? null],
    [words.t("invoice.to"), billTo.address === null ? billTo.name : `${billTo.name}, ${billTo.address}`],
    [words.t("papers.hirer"), hire.hirer],
    [words.t("papers.hire"), hire.reference],
    [words.t("papers.vehicle"), hire.vehicle],
    [words.t("invoice.hireFrom"), words.dateText(hire.from, "fullTime")],
    [words.t("invoice.hireTo"), words.dateText(hire.to, "fullTime")],
  ];
  return rows.flatMap(([name, value]) => (value === null ? [] : [[name, value] as const]));
}

/** An invoice or credit note as it was issued: lines with their VAT, VAT by rate, total. */
export function invoicePaper(row: InvoiceRow, words: Words): Content[] {
  const document = invoiceDocument(row);
  const isVatInvoice = document.firm?.vatNumber != null;
  return [
    facts(head(row, document, words)),
    heading(words.t("invoice.lines")),
    lineTable(document, words),
    heading(words.t("invoice.byRate")),
    table(
      [words.t("invoice.rate"), words.t("invoice.net"), words.t("invoice.vat"), words.t("money.amount")],
      [
        ...document.parts.map(({ kind, ratePercent, net, vat, gross }) => [
          words.t("invoice.rateOf", { kind, rate: ratePercent }),
          words.moneyText(net),
          words.moneyText(vat),
          words.moneyText(gross),
        ]),
        [
          words.t("invoice.total"),
          words.moneyText(document.net),
          words.moneyText(document.vat),
          words.moneyText(document.total),
        ],
      ],
      { amounts: true, widths: ["*", "auto", "auto", "auto"] },
    ),
    ...disputedTable(document, words),
    quiet(words.t(isVatInvoice ? "invoice.rounding" : "invoice.noVatNumber")),
  ];
}

/** Sends the PDF of an invoice of this hire. */
export async function sendInvoice(
  { now }: AppContext,
  store: Store,
  { id, invoiceId }: { readonly id: string; readonly invoiceId: string },
  reply: FastifyReply,
): Promise<undefined> {
  const row = await store.invoices.get(invoiceId);
  if (row === null || row.hireId !== id) throw new Refusal("notFound");
  const { timeZone } = await store.depot.get();
  const words = createWords("en-GB", undefined, () => timeZone);
  const { firm } = invoiceDocument(row);
  const number = numberText(row);
  const pdf = await renderPdf(
    {
      title: words.t(`invoice.title.${row.series}`, { number }),
      from: firm?.name ?? (await store.firm.get()).name,
      reference: `${number}, ${words.dateText(now().toISOString(), "short")}`,
      content: invoicePaper(row, words),
    },
    words,
  );
  reply
    .header("cache-control", "private, no-store")
    .header("content-disposition", `inline; filename="${number}.pdf"`);
  await reply.type("application/pdf").send(pdf);
  return undefined;
}
