import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, byPhoto, may } from "./shared.ts";

export const recordsOperations = {
  addRecords: operation({
    method: "POST",
    url: "/records",
    tag: "records",
    summary: "Append records of what happened at a vehicle; sending twice appends once",
    access: may("record.write"),
    body: s.recordBatchSchema,
    answer: s.recordAnswerSchema,
    bodyLimit: 4_000_000,
  }),
  exportRecords: operation({
    method: "GET",
    url: "/hires/:id/records",
    tag: "records",
    summary: "Records and receipts, as `setfair verify` reads them",
    access: may("record.export"),
    params: byId,
    answer: s.recordExportSchema,
  }),
  addCorrection: operation({
    method: "POST",
    url: "/hires/:id/corrections",
    tag: "records",
    summary: "Put a reading, a count or a mark right, as a new record with who and why; the first stays",
    access: may("hire.write"),
    params: byId,
    body: s.correctionSchema,
    answer: s.doneSchema,
  }),
  putPhoto: operation({
    method: "PUT",
    url: "/photos/:sha256",
    tag: "records",
    summary: "The JPEG made on the device, under its hash; body image/jpeg, resumable",
    access: may("photograph.write"),
    params: byPhoto,
    query: z.object({ hire: s.idSchema.optional() }),
    answer: s.photoStateSchema,
    bodyLimit: 12_000_000,
  }),
  readPhoto: operation({
    method: "GET",
    url: "/photos/:sha256",
    tag: "records",
    summary: "A smaller picture for screens (size: small, large), or the original",
    access: may("photograph.see"),
    params: byPhoto,
    query: z.object({ size: z.enum(["small", "large", "original"]).default("large") }),
  }),
  headPhoto: operation({
    method: "HEAD",
    url: "/photos/:sha256",
    tag: "records",
    summary: "Has it arrived?",
    access: may("photograph.see"),
    params: byPhoto,
  }),
} as const;
