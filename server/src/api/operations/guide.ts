import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, byToken, may } from "./shared.ts";

export const guideOperations = {
  makeHirerLink: operation({
    method: "POST",
    url: "/hires/:id/hirer-link",
    tag: "guide",
    summary: "An unguessable, expiring link for this hire only; the one before stops working",
    access: may("hire.write"),
    params: byId,
    answer: s.hirerLinkSchema,
  }),
  readGuide: operation({
    method: "GET",
    url: "/guide/:token",
    tag: "guide",
    summary: "Everything the hirer's phone needs, once",
    access: "link",
    params: byToken,
    answer: s.guideSchema,
    perMinute: 60,
  }),
  addGuideRecords: operation({
    method: "POST",
    url: "/guide/:token/records",
    tag: "guide",
    summary: "Readings of the panel on this hire, and what was tried when something failed",
    access: "link",
    params: byToken,
    body: s.recordBatchSchema,
    answer: s.recordAnswerSchema,
    perMinute: 60,
  }),
} as const;
