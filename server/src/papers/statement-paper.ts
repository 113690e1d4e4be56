import type { Settlement } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { settlementOf } from "../desk/after-hire.ts";
import { partOf } from "../desk/hire-data.ts";
import { accountNames } from "../desk/names.ts";
import { entriesOfHire, promisedOn } from "../desk/settlement-entries.ts";
import { conversation } from "./evidence/conversation.ts";
import { hireEvidence } from "./evidence/kept-records.ts";
import { proofBlock } from "./evidence/proof-block.ts";
import { hashLine } from "./evidence/signature-block.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, findingList, heading, quiet, table } from "./pieces.ts";
import { lineName, lineWorking, settlementTotals } from "./statement-lines.ts";

/**
 * The statement after the return: each line with its working, its evidence and what was said of it, the deposit and
 * by when it goes back. Once it was shown it carries the hash of what was frozen and the head of the chain.
 */
export async function statementPaper(call: PaperCall): Promise<Content[]> {
  const { data, store, words } = call;
  const { result, findings } = await settlementOf(store, data);
  const entries = await entriesOfHire(store, data);
  const promised = promisedOn(entries);
  const kept = partOf(data, "settlement");
  const frozen = data.frozen.find(({ id }) => id === kept?.frozenId);
  return [
    facts(hireFacts(call)),
    heading(words.t("settlement.title")),
    result.lines.length === 0 ? { text: words.t("settlement.nothing") } : lineTable(result, words),
    facts(settlementTotals(result, words)),
    ...(findings.length === 0 ? [] : [heading(words.t("papers.notes")), findingList(findings, words)]),
    ...conversation({ result, entries, words, nameOf: await accountNames(store) }),
    quiet(words.t("settlement.releaseBy", { on: words.dateText(result.releaseBy, "full") })),
    ...(promised === null
      ? []
      : [quiet(words.t("proof.promised", { on: words.dateText(promised, "full") }))]),
    quiet(words.t("papers.disputeLine")),
    quiet(words.t("papers.termsVersion", { id: result.termsId })),
    ...(frozen === undefined
      ? [quiet(words.t("proof.notFrozen"))]
      : [
          hashLine(words.t("proof.frozen", { at: words.dateText(frozen.at, "fullTime") }), frozen.hash),
          ...proofBlock(await hireEvidence(call), words),
        ]),
  ];
}

export const lineTable = (result: Settlement, words: Words): Content =>
  table(
    [words.t("papers.what"), words.t("papers.working"), words.t("money.amount")],
    result.lines.map((line) => [
      lineName(line, words),
      lineWorking(line, words),
      words.moneyText(line.amount),
    ]),
    { amounts: true, widths: ["*", "*", "auto"] },
  );
