import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { may } from "./shared.ts";

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
  readDaySheet: operation({
    method: "GET",
    url: "/day-sheet",
    tag: "papers",
    summary: "The day as a PDF: out, back, on the road, what is still open",
    access: may("hire.see"),
    query: s.todayQuerySchema,
    perMinute: 60,
  }),
} as const;
