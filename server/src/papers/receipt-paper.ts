import type { Content } from "pdfmake/interfaces";
import { asDocument } from "../desk/documents.ts";
import { moneyOfHire } from "../desk/money-of-hire.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, table } from "./pieces.ts";

/** Everything that came in, went back or is held for this hire, and what is still owed. */
export function receiptPaper(call: PaperCall): Content[] {
  const { data, words } = call;
  const money = moneyOfHire(data);
  const rows = data.payments.map(({ kind, pence, on, document }) => {
    const { method = "-", note } = asDocument<{ method?: string; note?: string }>(document);
    const how = `method.${method}`;
    return [
      words.dateText(on, "short"),
      [words.t(`payment.${kind}`), note].filter((text) => text !== undefined).join(": "),
      words.has(how) ? words.t(how) : method,
      words.moneyText({ currency: "GBP", pence }),
    ];
  });
  return [
    facts(hireFacts(call)),
    heading(words.t("papers.payments")),
    rows.length === 0
      ? { text: words.t("papers.noPayments") }
      : table(
          [words.t("papers.day"), words.t("papers.what"), words.t("papers.how"), words.t("money.amount")],
          rows,
          { amounts: true, widths: ["auto", "*", "auto", "auto"] },
        ),
    facts([
      [words.t("papers.price"), words.moneyText(money.price)],
      [words.t("papers.paid"), words.moneyText(money.paid)],
      [words.t("papers.owed"), words.moneyText(money.owed)],
      [words.t("papers.depositHeld"), words.moneyText(money.depositHeld)],
    ]),
    quiet(words.t("papers.notVatInvoice")),
  ];
}
