import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const abroadOperations = {
  readAbroad: operation({
    method: "GET",
    url: "/hires/:id/abroad",
    tag: "trip",
    summary: "The countries of the route, what must be got for them and by when, and the crossings",
    access: may("hire.see"),
    params: byId,
    answer: s.abroadStateSchema,
  }),
  setAbroad: operation({
    method: "PUT",
    url: "/hires/:id/abroad",
    tag: "trip",
    summary: "Papers, kit, crossings and what has been got for a journey abroad",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.abroadSchema,
    answer: s.hirePageSchema,
  }),
} as const;
