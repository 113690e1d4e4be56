import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const calibrationOperations = {
  forecastOutcomes: operation({
    method: "GET",
    url: "/forecast-outcomes",
    tag: "trip",
    summary:
      "How good forecasts were: measured use beside forecast use, before and after what returns taught",
    access: may("vehicle.see"),
    query: s.forecastOutcomesQuerySchema,
    answer: s.forecastOutcomesSchema,
  }),
  readUse: operation({
    method: "GET",
    url: "/hires/:id/use",
    tag: "after",
    summary: "What a hire that is over used, as far as it was read, beside its forecast",
    access: may("hire.see"),
    params: byId,
    answer: s.useOfHireSchema,
  }),
  writeUse: operation({
    method: "PUT",
    url: "/hires/:id/use",
    tag: "after",
    summary: "Litres by the till, gas by weight, levels and kilometres of a hire that is over",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.useSheetSchema,
    answer: s.useOfHireSchema,
  }),
} as const;
