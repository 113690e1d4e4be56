import type { Settlement } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { noticeId } from "../../desk/settlement-entries.ts";
import type { SettlementEntryRow } from "../../store/types.ts";
import { heading, table } from "../pieces.ts";
import { lineName } from "../statement-lines.ts";

interface Talk {
  readonly result: Settlement;
  readonly entries: readonly SettlementEntryRow[];
  readonly words: Words;
  readonly nameOf: (accountId: string) => string;
}

/** Things that are said of the whole, or are no part of the talk about the statement. */
const LEFT_OUT: readonly string[] = ["lost", "file"];

/** What was said and paid about the settlement, oldest first: by whom, when, of which line. */
export function conversation({ result, entries, words, nameOf }: Talk): Content[] {
  const said = entries.filter(({ kind }) => !LEFT_OUT.includes(kind));
  if (said.length === 0) return [];
  const notices = entries.filter(({ kind }) => kind === "notice");
  const lineOf = (about: string): string => {
    const notice = notices.find((each) => noticeId(each.id) === about || each.about === about);
    if (notice !== undefined) return words.t("proof.notice", { reference: notice.about });
    const line = result.lines.find(({ id, evidence }) => id === about || evidence.differenceId === about);
    return line === undefined ? words.t("proof.whole") : lineName(line, words);
  };
  return [
    heading(words.t("proof.said")),
    table(
      [words.t("proof.when"), words.t("proof.who"), words.t("papers.what"), words.t("proof.words")],
      said.map(({ at, by, kind, about, document }) => [
        words.dateText(at, "fullTime"),
        by === "hirer" ? words.t("papers.hirer") : nameOf(by),
        `${words.t("proof.entry", { kind })}\n${lineOf(about)}`,
        saidText(document, words),
      ]),
      { widths: [92, 80, 120, "*"] },
    ),
  ];
}

function saidText(document: SettlementEntryRow["document"], words: Words): string {
  const parts: string[] = [];
  for (const field of ["text", "reason", "reference", "note"]) {
    const value = document[field];
    if (typeof value === "string" && value !== "") parts.push(value);
  }
  const { partsPence, labourPence, promisedOn, pence } = document;
  if (typeof pence === "number") parts.push(words.moneyText({ currency: "GBP", pence }));
  if (typeof partsPence === "number" && typeof labourPence === "number")
    parts.push(
      words.t("proof.cost", {
        parts: words.moneyText({ currency: "GBP", pence: partsPence }),
        labour: words.moneyText({ currency: "GBP", pence: labourPence }),
      }),
    );
  if (typeof promisedOn === "string")
    parts.push(words.t("proof.promised", { on: words.dateText(promisedOn, "full") }));
  return parts.join(" · ");
}
