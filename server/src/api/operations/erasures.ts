import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const erasuresOperations = {
  readErasure: operation({
    method: "GET",
    url: "/hires/:id/customer/erasure",
    tag: "hires",
    summary: "What holds the erasure of the hirer, whether one waits, and which tablets still keep something",
    access: may("customer.erase"),
    params: byId,
    answer: s.erasureSchema,
  }),
  eraseCustomer: operation({
    method: "POST",
    url: "/hires/:id/customer/erasure",
    tag: "hires",
    summary:
      "Erase the hirer as a person, now or as soon as nothing holds it; money and findings stay, unnamed",
    access: may("customer.erase"),
    params: byId,
    query: s.erasureQuerySchema,
    answer: s.erasureSchema,
  }),
  withdrawErasure: operation({
    method: "DELETE",
    url: "/hires/:id/customer/erasure",
    tag: "hires",
    summary: "Take back an erasure that waits",
    access: may("customer.erase"),
    params: byId,
    answer: s.erasureSchema,
  }),
  readErasurePaper: operation({
    method: "GET",
    url: "/hires/:id/customer/erasure/paper",
    tag: "papers",
    summary:
      "What was erased or waits, what stays and why, and the tablets that still keep something, as a PDF",
    access: may("customer.erase"),
    params: byId,
    perMinute: 60,
  }),
  tabletKeeps: operation({
    method: "POST",
    url: "/yard/kept",
    tag: "yard",
    summary: "A tablet says of which hires it keeps something, and is told which of them to forget",
    access: may("record.write"),
    body: s.tabletKeepsSchema,
    answer: s.tabletForgetsSchema,
  }),
} as const;
