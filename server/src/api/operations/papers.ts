import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const papersOperations = {
  readPaper: operation({
    method: "GET",
    url: "/hires/:id/papers/:paper",
    tag: "papers",
    summary: "A paper of the hire as a PDF, made from the hire as it stands",
    access: may("hire.see"),
    params: s.paperParams,
    perMinute: 60,
  }),
  readDisputePack: operation({
    method: "GET",
    url: "/hires/:id/dispute-pack",
    tag: "papers",
    summary:
      "Everything for a dispute as a ZIP: one PDF, photographs as taken, records, receipts, how to check them",
    access: may("hire.settle"),
    params: byId,
    perMinute: 10,
  }),
  readOwnPaper: operation({
    method: "GET",
    url: "/guide/:token/papers/:paper",
    tag: "guide",
    summary: "The hirer's own copy as a PDF, with its hash and the head of the chain",
    access: "link",
    params: s.ownPaperParams,
    perMinute: 20,
  }),
  readDaySheet: operation({
    method: "GET",
    url: "/day-sheet",
    tag: "papers",
    summary: "The day as a PDF: out, back, on the road, what is still open",
    access: may("hire.see"),
    query: s.todayQuerySchema,
    perMinute: 60,
  }),
  readDayPack: operation({
    method: "GET",
    url: "/day-pack",
    tag: "papers",
    summary:
      "The day sheet and, for each hire of the day, its agreement, countries and blank walk-round, to print the evening before",
    access: may("customer.see"),
    query: s.todayQuerySchema,
    perMinute: 6,
  }),
} as const;
