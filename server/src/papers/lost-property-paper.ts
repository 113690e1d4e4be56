import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { asDocument } from "../desk/documents.ts";
import { entriesOfHire } from "../desk/settlement-entries.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, signLines } from "./pieces.ts";

interface Lost {
  readonly what: string;
  readonly where: string;
  readonly now: string;
  readonly costPence: number;
  readonly note: string;
}

/** A slip that goes with what was left behind: what, which hire, where it was found, what became of it, what it cost. */
export async function lostPropertyPaper(call: PaperCall): Promise<Content[]> {
  const { data, store, words } = call;
  const lost = (await entriesOfHire(store, data)).filter(({ kind }) => kind === "lost");
  if (lost.length === 0)
    throw new Refusal("missing", {
      problems: [{ path: "lost", expected: "something left behind in this hire" }],
    });
  return [
    facts(hireFacts(call)),
    ...lost.flatMap(({ document, at }): Content[] => {
      const { what, where, now, costPence, note } = asDocument<Lost>(document);
      return [
        heading(what),
        facts([
          [words.t("proof.lost.where"), where],
          [words.t("proof.lost.found"), words.dateText(at, "fullTime")],
          [words.t("proof.lost.now"), words.t("proof.lost.is", { now })],
          [words.t("proof.lost.cost"), words.moneyText({ currency: "GBP", pence: costPence })],
          ...(note === "" ? [] : [[words.t("papers.note"), note] as const]),
        ]),
      ];
    }),
    quiet(words.t("proof.lost.charge")),
    signLines([words.t("proof.lost.received"), words.t("papers.signFirm")]),
  ];
}
