import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const termsOperations = {
  readTerms: operation({
    method: "GET",
    url: "/terms",
    tag: "terms",
    summary: "The hire terms and the insurer's criteria that hold today",
    access: may("terms.see"),
    answer: s.termsAnswerSchema,
  }),
  putTerms: operation({
    method: "PUT",
    url: "/terms",
    tag: "terms",
    summary: "A new version of the hire terms, of the insurer's criteria or of both, from its own day on",
    access: may("terms.write"),
    query: basedOn,
    body: s.putTermsSchema,
    answer: s.termsAnswerSchema,
  }),
  checkTerms: operation({
    method: "POST",
    url: "/terms/check",
    tag: "terms",
    summary: "Gaps and overlaps of a rate card before it is kept, and the prices of a year",
    access: may("terms.see"),
    body: s.checkTermsSchema,
    answer: s.termsPreviewSchema,
  }),
  termsVersions: operation({
    method: "GET",
    url: "/terms/versions",
    tag: "terms",
    summary: "The versions of the hire terms, the newest first",
    access: may("terms.see"),
    answer: s.termsVersionsSchema,
  }),
  termsVersion: operation({
    method: "GET",
    url: "/terms/versions/:id",
    tag: "terms",
    summary: "One version of the hire terms",
    access: may("terms.see"),
    params: byId,
    answer: s.termsVersionSchema,
  }),
} as const;
