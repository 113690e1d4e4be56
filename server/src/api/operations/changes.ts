import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const changesOperations = {
  readChanges: operation({
    method: "GET",
    url: "/hires/:id/changes",
    tag: "changes",
    summary: "What has changed about a hire, and what may",
    access: may("hire.see"),
    params: byId,
    answer: s.hireChangesSchema,
  }),
  lookAtChange: operation({
    method: "POST",
    url: "/hires/:id/changes/look",
    tag: "changes",
    summary: "What a change would void, ask for and cost; nothing is written",
    access: may("hire.write"),
    params: byId,
    body: s.hireChangeSchema,
    answer: s.changeEffectsSchema,
  }),
  confirmChange: operation({
    method: "POST",
    url: "/hires/:id/changes",
    tag: "changes",
    summary: "Make a change as it was seen, all of it or nothing",
    access: may("hire.write"),
    params: byId,
    body: s.confirmChangeSchema,
    answer: s.hirePageSchema,
  }),
  readChangePaper: operation({
    method: "GET",
    url: "/hires/:id/changes/:change/papers/:paper",
    tag: "changes",
    summary: "A paper that answers a notice, as a PDF",
    access: may("customer.see"),
    params: s.changePaperParams,
    perMinute: 60,
  }),
} as const;
