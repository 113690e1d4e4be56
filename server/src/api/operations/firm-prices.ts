import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, may } from "./shared.ts";

export const firmPricesOperations = {
  readFirmPrices: operation({
    method: "GET",
    url: "/terms/prices",
    tag: "terms",
    summary: "What things are worth, what repairs cost, since when, and who changed what",
    access: may("terms.see"),
    answer: s.firmPricesSchema,
  }),
  putFirmPrices: operation({
    method: "PUT",
    url: "/terms/prices",
    tag: "terms",
    summary:
      "Both lists from a day on, as a new version of the hire terms; later versions with the old lists follow",
    access: may("terms.write"),
    query: basedOn,
    body: s.putFirmPricesSchema,
    answer: s.firmPricesSchema,
  }),
  readPriceList: operation({
    method: "POST",
    url: "/terms/prices/lists/:list",
    tag: "terms",
    summary: "Reads comma-separated values of one list and keeps nothing: rows that are refused are named",
    access: may("terms.write"),
    params: s.byPriceList,
    body: s.readPriceListSchema,
    answer: s.priceListAnswerSchema,
    bodyLimit: 2_000_000,
    perMinute: 30,
  }),
  writePriceList: operation({
    method: "GET",
    url: "/terms/prices/lists/:list",
    tag: "terms",
    summary: "One list that holds today as comma-separated values",
    access: may("terms.see"),
    params: s.byPriceList,
    perMinute: 30,
  }),
} as const;
