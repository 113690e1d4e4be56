import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { may } from "./shared.ts";

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
    body: s.putTermsSchema,
    answer: s.termsAnswerSchema,
  }),
} as const;
