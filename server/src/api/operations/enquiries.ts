import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const enquiriesOperations = {
  enquiries: operation({
    method: "GET",
    url: "/enquiries",
    tag: "enquiries",
    summary: "Who waits for a vehicle and could be served now; what was lost or cancelled, and why",
    access: may("customer.see"),
    query: s.enquiriesQuerySchema,
    answer: s.enquiriesSchema,
  }),
  putWaiting: operation({
    method: "PUT",
    url: "/hires/:id/waiting",
    tag: "enquiries",
    summary: "Put an enquiry on the waiting list",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.waitSchemaBody,
    answer: s.hirePageSchema,
  }),
  dropWaiting: operation({
    method: "DELETE",
    url: "/hires/:id/waiting",
    tag: "enquiries",
    summary: "Take an enquiry off the waiting list",
    access: may("hire.write"),
    params: byId,
    answer: s.hirePageSchema,
  }),
  takeHire: operation({
    method: "POST",
    url: "/hires/:id/take",
    tag: "enquiries",
    summary: "Choose the vehicle, quote, accept and book at once, or nothing of it",
    access: may("hire.book"),
    params: byId,
    query: basedOn,
    body: s.takeHireSchema,
    answer: s.hirePageSchema,
  }),
  previewEnding: operation({
    method: "GET",
    url: "/hires/:id/ending",
    tag: "enquiries",
    summary: "What ending the hire today costs, under the scale that it was accepted with",
    access: may("money.see"),
    params: byId,
    answer: s.endingPreviewSchema,
  }),
} as const;
