import type { Finding } from "@setfair/engine";
import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { asDocument } from "../desk/documents.ts";
import { forecastOf } from "../desk/forecast.ts";
import { glassOf, isBeforeKeys } from "../desk/glass.ts";
import { driversOf, partOf } from "../desk/hire-data.ts";
import { driverParticulars } from "../desk/particulars.ts";
import { signaturesOf } from "../desk/record-facts.ts";
import { hireFacts, type PaperCall, vehicleLine } from "./paper-call.ts";
import { facts, findingList, heading, paragraphs, quiet, signLines, table } from "./pieces.ts";
import { priceTable } from "./quote-paper.ts";

/**
 * The hire agreement with the drivers, the price, the conditions as printed and the signed statement of
 * liability: the particulars with which a notice can be passed on to the hirer.
 */
export async function agreementPaper(call: PaperCall): Promise<Content[]> {
  const { data, words } = call;
  const quote = partOf(data, "quote")?.answer.result ?? null;
  if (quote === null || data.vehicle === null) {
    throw new Refusal("missing", {
      problems: [{ path: "quote", expected: "a vehicle and a quote on this hire" }],
    });
  }
  const vehicle = vehicleLine(call);
  const liability = words.t("paper.liability.text", {
    hirer: data.row.customerName,
    address: asDocument<{ address?: string }>(data.customer?.document ?? {}).address ?? "none",
    reference: data.row.number,
    vehicle,
    from: words.dateText(data.from, "fullTime"),
    to: words.dateText(data.to, "fullTime"),
  });
  return [
    facts(hireFacts(call)),
    heading(words.t("papers.drivers")),
    await driverTable(call),
    heading(words.t("quote.title")),
    priceTable(quote, words),
    facts([
      [words.t("papers.deposit"), words.moneyText(quote.securityDeposit)],
      [words.t("papers.excess"), words.moneyText(quote.excess)],
      [words.t("papers.allowance"), words.figureText(quote.allowanceKm)],
    ]),
    heading(words.t("papers.conditions")),
    findingList(await conditionsOf(call), words),
    heading(words.t("paper.liability.title")),
    ...paragraphs(liability),
    quiet(words.t("papers.termsVersion", { id: quote.termsId })),
    ...signedLines(call),
    signLines([words.t("papers.signHirer"), words.t("papers.signFirm")]),
  ];
}

/** The main driver is the hirer where no other address is given. */
async function driverTable({ data, words, store }: PaperCall): Promise<Content> {
  const given = await driverParticulars(store, data);
  const { address: home } = asDocument<{ address?: string }>(data.customer?.document ?? {});
  const rows = driversOf(data).map(({ id, name, born, licence, main }) => {
    const { address, licenceNumber } = given.get(id) ?? { address: null, licenceNumber: null };
    return [
      name,
      words.dateText(born, "short"),
      [
        words.t("papers.licenceFrom", { from: licence.issuedBy }),
        licenceNumber ?? words.t("hirerCard.noNumber"),
      ].join("\n"),
      address ?? (main ? home : undefined) ?? words.t("hirerCard.noAddress"),
    ];
  });
  const head = (["papers.name", "papers.born", "papers.licence", "papers.address"] as const).map((id) =>
    words.t(id),
  );
  return rows.length === 0
    ? { text: words.t("papers.noDriver") }
    : table(head, rows, { widths: ["*", "auto", "auto", "*"] });
}

/** As printed when the keys went; before that, as they stand now. */
async function conditionsOf({ data, store }: PaperCall): Promise<readonly Finding[]> {
  const frozen = data.frozen.findLast(({ room }) => room === "glass");
  if (frozen !== undefined) return asDocument<{ conditions: readonly Finding[] }>(frozen.document).conditions;
  if (!isBeforeKeys(data.row.stage)) return [];
  const forecast = await forecastOf(store, data);
  return glassOf(data, forecast?.answer ?? null).conditions;
}

/** What was signed on a screen, by whom and when. */
function signedLines({ data, words }: PaperCall): Content[] {
  return signaturesOf(data.records)
    .filter(({ purpose, direction }) => purpose === "agreement" && direction !== "back")
    .map(({ by, at, recordId }) =>
      quiet(words.t("papers.signedOnScreen", { by, at: words.dateText(at, "fullTime"), record: recordId })),
    );
}
