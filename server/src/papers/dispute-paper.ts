import type { Settlement, SettlementLine } from "@setfair/engine";
import type { Content } from "pdfmake/interfaces";
import { conditionOf, settlementOf } from "../desk/after-hire.ts";
import { asItLeft } from "../desk/as-it-left.ts";
import { partOf } from "../desk/hire-data.ts";
import { accountNames } from "../desk/names.ts";
import { entriesOfHire } from "../desk/settlement-entries.ts";
import { conditionBody } from "./condition-paper.ts";
import { conversation } from "./evidence/conversation.ts";
import { recordText } from "./evidence/evidence-words.ts";
import { type HireEvidence, hireEvidence } from "./evidence/kept-records.ts";
import { pictureGrid } from "./evidence/pictures.ts";
import { proofBlock } from "./evidence/proof-block.ts";
import { signatureBlock } from "./evidence/signature-block.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, table } from "./pieces.ts";
import { receiptPaper } from "./receipt-paper.ts";
import { lineName, lineWorking, settlementTotals } from "./statement-lines.ts";
import { lineTable } from "./statement-paper.ts";

/**
 * Everything about one settlement for somebody who was not there: what is disputed with both sides of its evidence,
 * the statement, what was said, the payments, the condition record, each signature with the text that was shown, and
 * every record in order of arrival with its hash.
 */
export async function disputePaper(call: PaperCall): Promise<Content[]> {
  const { data, store, words } = call;
  const { result } = await settlementOf(store, data);
  const evidence = await hireEvidence(call);
  const entries = await entriesOfHire(store, data);
  const signatures = evidence.kept.filter(({ record }) => record.kind === "signature");
  return [
    facts(hireFacts(call)),
    quiet(words.t("proof.pack.about")),
    ...(await disputedLines(call, result)),
    heading(words.t("settlement.title"), true),
    ...(result.lines.length === 0 ? [{ text: words.t("settlement.nothing") }] : [lineTable(result, words)]),
    facts(settlementTotals(result, words)),
    ...conversation({ result, entries, words, nameOf: await accountNames(store) }),
    heading(words.t("papers.title.receipt")),
    ...receiptPaper(call).slice(2),
    heading(words.t("papers.title.condition"), true),
    ...(await conditionBody(call, evidence)),
    heading(words.t("proof.allSignatures"), true),
    ...signatures.flatMap((each) => signatureBlock(each, words, true)),
    ...proofBlock(evidence, words),
    ...chronicle(evidence, call),
  ];
}

/** Lines in dispute, or where none is yet, those that charge something; each with how its place left and came back. */
async function disputedLines(call: PaperCall, result: Settlement): Promise<Content[]> {
  const { words } = call;
  const disputed = result.lines.filter((line) => line.disputed);
  const shown = disputed.length > 0 ? disputed : result.lines.filter(({ amount }) => amount.pence > 0);
  const blocks: Content[] = [
    heading(words.t(disputed.length > 0 ? "proof.pack.disputed" : "proof.pack.charged")),
  ];
  if (shown.length === 0) blocks.push({ text: words.t("settlement.nothing") });
  for (const line of shown) blocks.push(...(await oneLine(call, line)));
  return blocks;
}

async function oneLine(call: PaperCall, line: SettlementLine): Promise<Content[]> {
  const { data, store, words, pictures } = call;
  const { differences } = (await conditionOf(store, data)).result;
  const difference = differences.find(({ id }) => id === line.evidence.differenceId);
  const left = difference === undefined ? null : asItLeft(difference, data.records);
  const decided = partOf(data, "settlement")?.classes[line.evidence.differenceId ?? ""];
  const nameOf = await accountNames(store);
  const grid = { pictures, words, columns: 2 } as const;
  const before = (left?.photographs ?? []).map((sha256) => ({
    sha256,
    words: words.t(left?.of === "side" ? "proof.leftSide" : "proof.leftPlace"),
  }));
  const after = line.evidence.photographs
    .filter((sha256) => left?.photographs.includes(sha256) !== true)
    .map((sha256) => ({ sha256, words: words.t("proof.cameBack") }));
  return [
    { text: `${lineName(line, words)}: ${words.moneyText(line.amount)}`, style: "strong" },
    { text: lineWorking(line, words) },
    ...(decided === undefined
      ? []
      : [
          {
            text: words.t("proof.decided", {
              class: decided.class,
              by: nameOf(decided.by),
              at: words.dateText(decided.at, "fullTime"),
              reason: decided.reason,
            }),
          },
        ]),
    ...(await pictureGrid([...before, ...after], grid)),
    quiet(words.t("proof.recordsOf", { ids: line.evidence.records.join(", ") || "–" })),
  ];
}

/** Every record of the hire in the order in which it arrived. */
function chronicle({ asTheyCame }: HireEvidence, { words }: PaperCall): Content[] {
  return [
    heading(words.t("proof.chronicle"), true),
    quiet(words.t("proof.chronicleHow")),
    {
      fontSize: 9,
      stack: [
        table(
          [
            words.t("proof.place"),
            words.t("papers.what"),
            words.t("proof.byDevice"),
            words.t("proof.atDepot"),
            words.t("proof.hashStart"),
          ],
          asTheyCame.map((each) => [
            String(each.receipt.seq),
            recordText(each, words),
            words.dateText(each.record.deviceTime, "dayTime"),
            words.dateText(each.receipt.at, "dayTime"),
            each.record.hash.slice(0, 16),
          ]),
          { widths: [30, "*", 84, 84, 88] },
        ),
      ],
    },
  ];
}
