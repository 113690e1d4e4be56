import type { Content } from "pdfmake/interfaces";
import { agreementPaper } from "./agreement-paper.ts";
import { conditionPaper } from "./condition-paper.ts";
import { countryPaper } from "./country-paper.ts";
import { disputePaper } from "./dispute-paper.ts";
import { lostPropertyPaper } from "./lost-property-paper.ts";
import type { PaperCall } from "./paper-call.ts";
import { quotePaper } from "./quote-paper.ts";
import { receiptPaper } from "./receipt-paper.ts";
import { statementPaper } from "./statement-paper.ts";
import { walkRoundPaper } from "./walk-round-paper.ts";

export const PAPERS = [
  "quote",
  "agreement",
  "countries",
  "receipt",
  "statement",
  "walkOut",
  "walkBack",
  "condition",
  "dispute",
  "lostProperty",
] as const;
export type PaperName = (typeof PAPERS)[number];

/** How each paper of a hire is composed; refuses with what is missing where the hire is not so far. */
export const COMPOSE: Readonly<Record<PaperName, (call: PaperCall) => Content[] | Promise<Content[]>>> = {
  quote: quotePaper,
  agreement: agreementPaper,
  countries: countryPaper,
  receipt: receiptPaper,
  statement: statementPaper,
  walkOut: walkRoundPaper("out"),
  walkBack: walkRoundPaper("back"),
  condition: conditionPaper,
  dispute: disputePaper,
  lostProperty: lostPropertyPaper,
};
