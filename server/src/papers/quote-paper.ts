import type { Quote, QuoteLine } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { partOf } from "../desk/hire-data.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, table } from "./pieces.ts";

/** The price with every compulsory charge in it, the cancellation scale, and until when it holds. */
export function quotePaper(call: PaperCall): Content[] {
  const { data, words } = call;
  const quote = partOf(data, "quote")?.answer.result ?? null;
  if (quote === null)
    throw new Refusal("missing", { problems: [{ path: "quote", expected: "a quote on this hire" }] });
  return [
    facts(hireFacts(call)),
    heading(words.t("quote.title")),
    priceTable(quote, words),
    facts(termsRows(quote, words)),
    heading(words.t("papers.cancellation")),
    ...quote.cancellation.map(
      (step): Content => ({
        text: words.t("quote.cancellation", { days: step.atLeastDaysBefore, percent: step.keepPercent }),
      }),
    ),
    quiet(words.t("papers.termsVersion", { id: quote.termsId })),
  ];
}

export function lineText(line: QuoteLine, words: Words): string {
  const id = `quoteAbout.${line.about}`;
  const about = words.has(id) ? words.t(id) : line.about;
  return words.t(`quote.${line.code}`, { about, count: line.count, each: line.each });
}

export function priceTable(quote: Quote, words: Words): Content {
  const vat = ({ vat: { kind, ratePercent, amount } }: QuoteLine) =>
    words.t(`vat.${kind}`, { rate: ratePercent, money: words.moneyText(amount) });
  return table(
    [words.t("quote.what"), words.t("quote.vat"), words.t("money.amount")],
    [
      ...quote.lines.map((line) => [lineText(line, words), vat(line), words.moneyText(line.amount)]),
      [
        words.t("quote.total"),
        words.t("quote.ofWhichVat", { money: words.moneyText(quote.vat) }),
        words.moneyText(quote.total),
      ],
    ],
    { amounts: true },
  );
}

function termsRows(quote: Quote, words: Words): readonly (readonly [string, string])[] {
  return [
    [words.t("papers.toBook"), words.moneyText(quote.bookingDeposit)],
    [words.t("papers.balance"), words.moneyText(quote.balance)],
    [words.t("papers.deposit"), words.moneyText(quote.securityDeposit)],
    [words.t("papers.excess"), words.moneyText(quote.excess)],
    [words.t("papers.allowance"), words.figureText(quote.allowanceKm)],
    [words.t("papers.over"), words.figureText(quote.excessPencePerKm)],
    [words.t("papers.holdsUntil"), words.dateText(quote.holdsUntil, "full")],
  ];
}
