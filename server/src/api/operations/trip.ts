import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const tripOperations = {
  setTrip: operation({
    method: "PUT",
    url: "/hires/:id/trip",
    tag: "trip",
    summary: "The trip with its stops; refused where another was kept since `basedOn`",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.tripSchema,
    answer: s.hirePageSchema,
  }),
  readForecast: operation({
    method: "GET",
    url: "/hires/:id/forecast",
    tag: "trip",
    summary: "Will it last? Lived 500 times; cached by its input",
    access: may("hire.see"),
    params: byId,
    answer: s.forecastStateSchema,
  }),
  readLoad: operation({
    method: "GET",
    url: "/hires/:id/load",
    tag: "trip",
    summary: "Masses and axles, and the least change that makes it legal",
    access: may("hire.see"),
    params: byId,
    answer: s.loadStateSchema,
  }),
  setLoad: operation({
    method: "PUT",
    url: "/hires/:id/load",
    tag: "trip",
    summary: "What is carried and where",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.loadPlanSchema,
    answer: s.hirePageSchema,
  }),
  readBriefing: operation({
    method: "GET",
    url: "/hires/:id/briefing",
    tag: "trip",
    summary: "Cards for this vehicle and trip, in order",
    access: may("hire.see"),
    params: byId,
    answer: s.briefingStateSchema,
  }),
} as const;
