import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

const byHold = z.object({ id: s.idSchema, holdId: s.idSchema });

export const stockOperations = {
  listStock: operation({
    method: "GET",
    url: "/stock",
    tag: "stock",
    summary: "Things that travel with hires, and who has them",
    access: may("hire.see"),
    answer: s.stockListSchema,
  }),
  addStockItem: operation({
    method: "POST",
    url: "/stock",
    tag: "stock",
    summary: "A numbered thing, or a lot of like things",
    access: may("hire.write"),
    body: s.newStockItemSchema,
    answer: s.stockHistorySchema,
  }),
  readStockItem: operation({
    method: "GET",
    url: "/stock/:id",
    tag: "stock",
    summary: "One thing with its history",
    access: may("hire.see"),
    params: byId,
    answer: s.stockHistorySchema,
  }),
  changeStockItem: operation({
    method: "PUT",
    url: "/stock/:id",
    tag: "stock",
    summary: "Change it or take it out of use, with the reason",
    access: may("hire.write"),
    params: byId,
    body: s.changeStockItemSchema,
    answer: s.stockHistorySchema,
  }),
  readHireStock: operation({
    method: "GET",
    url: "/hires/:id/stock",
    tag: "stock",
    summary: "What travels with a hire, and what of it is packed",
    access: may("hire.see"),
    params: byId,
    answer: s.hireStockSchema,
  }),
  setHireStock: operation({
    method: "PUT",
    url: "/hires/:id/stock",
    tag: "stock",
    summary: "What travels with a hire beside the extras of its quote; held from the booking on",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.setHireStockSchema,
    answer: s.hireStockSchema,
  }),
  actOnHireStock: operation({
    method: "POST",
    url: "/hires/:id/stock/:holdId",
    tag: "stock",
    summary: "Packed, taken out again, or back on the shelf",
    access: may("upkeep.write"),
    params: byHold,
    body: s.stockActSchema,
    answer: s.hireStockSchema,
  }),
} as const;
