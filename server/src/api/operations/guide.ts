import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, byPhoto, byToken, may } from "./shared.ts";

const byGuidePhoto = byToken.extend(byPhoto.shape);

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
    summary:
      "Readings of the panel, what was tried when something failed, marks that both missed, answers to the statement",
    access: "link",
    params: byToken,
    body: s.recordBatchSchema,
    answer: s.recordAnswerSchema,
    perMinute: 60,
  }),
  putGuidePhoto: operation({
    method: "PUT",
    url: "/guide/:token/photos/:sha256",
    tag: "guide",
    summary: "A photograph of the hirer's own, under its hash; body image/jpeg, resumable",
    access: "link",
    params: byGuidePhoto,
    answer: s.photoStateSchema,
    bodyLimit: 12_000_000,
    perMinute: 30,
  }),
  readGuidePhoto: operation({
    method: "GET",
    url: "/guide/:token/photos/:sha256",
    tag: "guide",
    summary: "A photograph of this hire for the hirer's own screen (size: small, large)",
    access: "link",
    params: byGuidePhoto,
    query: z.object({ size: z.enum(["small", "large"]).default("large") }),
    perMinute: 240,
  }),
  readHirerAdditions: operation({
    method: "GET",
    url: "/hires/:id/additions",
    tag: "after",
    summary: "Marks that the hirer added from their own phone after the keys, and until when they may",
    access: may("hire.see"),
    params: byId,
    answer: s.hirerAdditionsSchema,
  }),
} as const;
