import type { Settlement, SettlementLine } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { settlementOf } from "../desk/after-hire.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, findingList, heading, quiet, table } from "./pieces.ts";

/** The statement after the return: each line with its working and evidence, the deposit, and by when it goes back. */
export async function statementPaper(call: PaperCall): Promise<Content[]> {
  const { data, store, words } = call;
  const { result, findings } = await settlementOf(store, data);
  return [
    facts(hireFacts(call)),
    heading(words.t("settlement.title")),
    result.lines.length === 0 ? { text: words.t("settlement.nothing") } : lineTable(result, words),
    facts(totals(result, words)),
    ...(findings.length === 0 ? [] : [heading(words.t("papers.notes")), findingList(findings, words)]),
    quiet(words.t("settlement.releaseBy", { on: words.dateText(result.releaseBy, "full") })),
    quiet(words.t("papers.disputeLine")),
    quiet(words.t("papers.termsVersion", { id: result.termsId })),
  ];
}

const aboutText = (about: string, words: Words): string => {
  const charge = `charge.${about}`;
  return words.has(about) ? words.t(about) : words.has(charge) ? words.t(charge) : about;
};

function lineTable(result: Settlement, words: Words): Content {
  const why = (line: SettlementLine): string =>
    [
      line.quantity === null ? "" : words.figureText(line.quantity),
      line.because === null ? "" : words.t(`settlement.because.${line.because}`),
      ...line.working.map((figure) => words.figureText(figure)),
      words.t("settlement.evidence", {
        records: line.evidence.records.length,
        photographs: line.evidence.photographs.length,
      }),
    ]
      .filter((text) => text !== "")
      .join(" · ");
  return table(
    [words.t("papers.what"), words.t("papers.working"), words.t("money.amount")],
    result.lines.map((line) => [
      words.t(`settlement.${line.code}`, { about: aboutText(line.about, words) }),
      why(line),
      words.moneyText(line.amount),
    ]),
    { amounts: true, widths: ["*", "*", "auto"] },
  );
}

function totals(result: Settlement, words: Words): readonly (readonly [string, string])[] {
  const rows = [
    "overExcess",
    "total",
    "depositHeld",
    "depositKept",
    "depositWithheld",
    "depositReturned",
    "stillOwed",
  ] as const;
  return rows
    .filter((id) => result[id].pence !== 0 || id === "total" || id === "depositReturned")
    .map((id) => [words.t(`settlement.${id}`), words.moneyText(result[id])] as const);
}
