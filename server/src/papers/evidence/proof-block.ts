import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { heading, quiet } from "../pieces.ts";
import type { HireEvidence } from "./kept-records.ts";
import { hashLine } from "./signature-block.ts";

/** The head of the depot's chain when this paper was made, and what can be done with it. */
export function proofBlock({ head, kept }: HireEvidence, words: Words): Content[] {
  if (head === null) return [];
  const last = kept.at(-1);
  return [
    heading(words.t("proof.title")),
    { text: words.t("proof.what", { n: head.seq }) },
    hashLine(words.t("proof.head"), head.hash),
    ...(last === undefined ? [] : [hashLine(words.t("proof.lastRecord"), last.record.hash)]),
    quiet(words.t("proof.how", { head: head.hash.slice(0, 12) })),
  ];
}
