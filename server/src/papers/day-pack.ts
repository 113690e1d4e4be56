import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { COMPOSE, type PaperName } from "./papers.ts";
import { facts, quiet } from "./pieces.ts";

/** Papers that a hire takes to the counter, and those that wait for it when it comes back. */
const OF: Readonly<Record<"out" | "back", readonly PaperName[]>> = {
  out: ["agreement", "countries", "walkOut"],
  back: ["walkBack"],
};

/**
 * The papers of one hire for a day on which nothing else works, each on a page of its own. One that cannot be
 * made yet stands there with its name, so that nobody takes the pack for whole.
 */
export async function packOfHire(call: PaperCall, walk: "out" | "back"): Promise<Content[]> {
  const papers: Content[] = [];
  for (const paper of OF[walk]) {
    const title: Content = {
      text: `${call.words.t(`papers.title.${paper}`)} · ${call.data.row.number}`,
      style: "title",
      pageBreak: "before",
    };
    const content = await composed(call, paper);
    papers.push(title, ...content);
  }
  return papers;
}

async function composed(call: PaperCall, paper: PaperName): Promise<readonly Content[]> {
  try {
    return await COMPOSE[paper](call);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return [facts(hireFacts(call)), quiet(call.words.t("papers.packNotYet"))];
  }
}
